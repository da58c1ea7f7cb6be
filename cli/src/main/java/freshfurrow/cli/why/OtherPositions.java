package freshfurrow.cli.why;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.FieldPositions;
import freshfurrow.solver.why.Position;
import java.util.ArrayList;
import java.util.List;

/** What would happen with a field at other positions: whether any is better, and the parts of the score of the best few. */
final class OtherPositions {
    private final FieldExplanation why;
    private final Figures figures;
    private final WorkWords words;
    private final List<String> lines = new ArrayList<>();

    OtherPositions(FieldExplanation why, Figures figures) {
        this.why = why;
        this.figures = figures;
        this.words = WorkWords.of(why.field().work());
    }

    List<String> lines() {
        FieldPositions positions = why.positions();
        int tried = positions.others().size();
        if (tried == 0) {
            lines.add("There is no other position to try.");
            return lines;
        }
        lines.add((tried == 1 ? "The 1 other position" : "All " + tried + " other positions") + " in the "
                + words.noun() + " order " + (tried == 1 ? "was" : "were") + " tried" + verdict(positions) + ".");
        lines.add("As planned: "
                + ScoreChange.score(why, figures, positions.planned().score()) + ".");
        why.best().forEach(this::alternative);
        return lines;
    }

    private static String verdict(FieldPositions positions) {
        int better = positions.better().size();
        if (better > 0) {
            return " and " + Figures.count(better, "is", "are")
                    + " better. Run `plan` again with more time, or move the" + " field there";
        }
        int asGood = positions.asGood();
        return " and none is better"
                + (asGood > 0 ? ", though " + Figures.count(asGood, "is", "are") + " as good" : "")
                + ". Moving this field alone would not help";
    }

    private void alternative(FieldExplanation.Alternative alternative) {
        lines.add("");
        lines.add(place(why, alternative.position()) + ": " + planted(why, figures, alternative.plan()));
        lines.addAll(ScoreChange.lines(why, figures, alternative));
    }

    /** Where the field stands then. */
    static String place(FieldExplanation why, Position position) {
        List<Integer> list = position.lists().of(position.planter());
        List<String> neighbours = new ArrayList<>();
        if (position.index() > 0) {
            neighbours.add("after " + id(why, list.get(position.index() - 1)));
        }
        if (position.index() + 1 < list.size()) {
            neighbours.add("before " + id(why, list.get(position.index() + 1)));
        }
        return "Position " + (position.index() + 1) + " in "
                + why.season().applicators().get(position.planter()).id() + "'s "
                + WorkWords.of(why.field().work()).noun()
                + " order"
                + (neighbours.isEmpty() ? "" : ", " + String.join(" and ", neighbours));
    }

    private static String id(FieldExplanation why, int field) {
        return why.season().fields().get(field).id();
    }

    /** When another plan has it done. */
    static String planted(FieldExplanation why, Figures figures, Plan plan) {
        WorkWords words = WorkWords.of(why.field().work());
        FieldWork work = WhyReport.workOn(why.field(), why, plan);
        return work.start()
                        .map(start -> words.done() + " "
                                + figures.fromTo(start, work.end().orElse(start)))
                        .orElse(words.undone())
                + (work.lateHaDays() > 0 ? ", late by " + figures.areaDays(work.lateHaDays()) : "");
    }
}

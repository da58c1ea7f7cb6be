package freshfurrow.cli.why;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.goals.Goal;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.plan.Plan;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.FieldPositions;
import freshfurrow.solver.why.Outcome;
import freshfurrow.solver.why.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What would happen with a field at other positions: whether any is better, and the parts of the score of the best few. */
final class OtherPositions {
    private final FieldExplanation why;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    OtherPositions(FieldExplanation why, Figures figures) {
        this.why = why;
        this.figures = figures;
    }

    List<String> lines() {
        FieldPositions positions = why.positions();
        int tried = positions.others().size();
        if (tried == 0) {
            lines.add("There is no other position to try.");
            return lines;
        }
        lines.add((tried == 1 ? "The 1 other position" : "All " + tried + " other positions")
                + " in the planting order " + (tried == 1 ? "was" : "were") + " tried" + verdict(positions) + ".");
        lines.add("As planned: " + score(positions.planned().score()) + ".");
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
        Position position = alternative.position();
        lines.add("");
        lines.add(place(position) + ": " + planted(alternative.plan()));
        for (Goal goal : GoalSet.of(why.season()).goals()) {
            Outcome planned = why.positions().planned();
            double change = goal.amount().applyAsDouble(position.outcome())
                    - goal.amount().applyAsDouble(planned);
            double cost = goal.cost(position.outcome()) - goal.cost(planned);
            if (change != 0) {
                part(goal.name(), amount(goal.unit(), change) + worth(goal, cost));
            }
        }
        List<String> fields = new FieldChanges(why, figures).lines(alternative.plan());
        if (!fields.isEmpty()) {
            part("fields", String.join(", ", fields));
        }
        part("score", score(position.outcome().score()) + ": " + comparison(position.outcome()));
    }

    private void part(String name, String what) {
        lines.add(String.format(Locale.ROOT, "  %-15s%s", name, what));
    }

    private String comparison(Outcome outcome) {
        int order = Outcome.BEST_FIRST.compare(outcome, why.positions().planned());
        return order == 0 ? "as good" : order < 0 ? "better" : "worse";
    }

    private String place(Position position) {
        List<Integer> list = position.lists().of(position.planter());
        List<String> neighbours = new ArrayList<>();
        if (position.index() > 0) {
            neighbours.add("after " + id(list.get(position.index() - 1)));
        }
        if (position.index() + 1 < list.size()) {
            neighbours.add("before " + id(list.get(position.index() + 1)));
        }
        return "Position " + (position.index() + 1) + " in "
                + why.season().applicators().get(position.planter()).id() + "'s planting order"
                + (neighbours.isEmpty() ? "" : ", " + String.join(" and ", neighbours));
    }

    private String id(int field) {
        return why.season().fields().get(field).id();
    }

    private String planted(Plan plan) {
        FieldWork work = WhyReport.workOn(why.field(), why, plan);
        return work.start()
                        .map(start ->
                                "planted " + figures.fromTo(start, work.end().orElse(start)))
                        .orElse("unplanted")
                + (work.lateHaDays() > 0 ? ", late by " + figures.areaDays(work.lateHaDays()) : "");
    }

    private String amount(String unit, double change) {
        String sign = change < 0 ? "-" : "+";
        double size = Math.abs(change);
        return sign
                + switch (unit) {
                    case "ha" -> figures.area(size);
                    case "ha-days" -> figures.areaDays(size);
                    case "kg" -> figures.mass(size);
                    case "min" -> minutes(size);
                    default -> String.format(Locale.ROOT, "%.0f", size);
                };
    }

    /** What the change costs on the level of its goal. */
    private String worth(Goal goal, double cost) {
        String sign = cost < 0 ? "-" : "+";
        return switch (goal.level()) {
            case HARD -> "";
            case MEDIUM -> ", weighted " + sign + figures.areaDays(Math.abs(cost) / 100);
            case SOFT -> ", effort " + sign + minutes(Math.abs(cost));
        };
    }

    private String score(Plan.Score score) {
        return (score.hard() < 0 ? -score.hard() + " rules broken, " : "")
                + weighted(-score.medium() / 100.0) + " late or unplanted; effort score "
                + String.format(Locale.ROOT, "%,d min", -score.soft());
    }

    private String weighted(double areaDays) {
        return figures.areaDays(areaDays).replaceFirst(" ", " weighted ");
    }

    private static String minutes(double minutes) {
        return String.format(Locale.ROOT, "%,.1f min", minutes);
    }
}

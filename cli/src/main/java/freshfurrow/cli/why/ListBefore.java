package freshfurrow.cli.why;

import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.season.Field;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.Position;
import java.util.ArrayList;
import java.util.List;

/** The fields that stand before one in its planter's list, the nearest ones with what is done on them. */
final class ListBefore {
    private static final int MOST_NAMED = 8;

    private final FieldExplanation why;
    private final Position own;
    private final Figures figures;

    ListBefore(FieldExplanation why, Position own) {
        this.why = why;
        this.own = own;
        this.figures = new Figures(why.season().units());
    }

    List<String> lines() {
        if (own.index() == 0) {
            return List.of("none: it is the first");
        }
        List<Field> before = own.lists().of(own.planter()).subList(0, own.index()).stream()
                .map(why.season().fields()::get)
                .toList();
        int unnamed = Math.max(0, before.size() - MOST_NAMED);
        List<String> lines = new ArrayList<>();
        if (unnamed > 0) {
            lines.add("1 to " + unnamed + ": " + Figures.count(unnamed, "field", "fields") + ", "
                    + figures.area(before.subList(0, unnamed).stream()
                            .mapToDouble(Field::areaHa)
                            .sum()));
        }
        for (int i = unnamed; i < before.size(); i++) {
            lines.add((i + 1) + ": " + entry(WhyReport.workOn(before.get(i), why, why.plan())));
        }
        return lines;
    }

    private String entry(FieldWork work) {
        return work.field().id() + ", " + figures.area(work.field().areaHa()) + ", "
                + work.start()
                        .map(start -> figures.fromTo(start, work.end().orElse(start)))
                        .orElse("unplanted")
                + (work.lateHaDays() > 0 ? ", late" : "");
    }
}

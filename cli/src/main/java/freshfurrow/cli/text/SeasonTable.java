package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import java.util.List;

/** A plan day by day, one row a day. */
final class SeasonTable {
    private static final int WIDTH = 110;

    private SeasonTable() {}

    static List<String> lines(Plan plan) {
        Figures figures = new Figures(plan.season().units());
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Day"),
                        Table.Column.right("Fills"),
                        Table.Column.right("Batches"),
                        Table.Column.right("Compost"),
                        Table.Column.right("Water trips"),
                        Table.Column.right("Last " + WorkWords.of(plan).noun()),
                        Table.Column.right("Tightest margin")),
                "Fields");
        for (PlanDay day : PlanDay.of(plan)) {
            table.row(
                    List.of(
                            Figures.day(day.date()),
                            Integer.toString(day.fills()),
                            Integer.toString(day.batches()),
                            figures.mass(day.compostKg()),
                            Integer.toString(day.waterTrips()),
                            day.finish()
                                    .map(finish -> figures.clock(finish, day.date()))
                                    .orElse("-"),
                            day.smallestMargin().map(Figures::span).orElse("-")),
                    day.areaHaByField().entrySet().stream()
                            .map(field -> field.getKey() + " " + figures.area(field.getValue()))
                            .toList());
        }
        return table.lines();
    }
}

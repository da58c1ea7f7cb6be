package freshfurrow.cli.text;

import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.supply.SupplyNeeds;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What compost and water to have, and when, as text. */
public final class SupplyReport {
    private static final int WIDTH = 120;

    private final Season season;
    private final SupplyNeeds needs;
    private final int leadDays;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    private SupplyReport(Season season, SupplyNeeds needs, int leadDays) {
        this.season = season;
        this.needs = needs;
        this.leadDays = leadDays;
        figures = new Figures(season.units());
    }

    /**
     * The report.
     *
     * @param springs what the springs are
     * @param count number of springs
     * @param sure share of springs that it is to be enough for
     * @param leadDays days from the order of a lot to its arrival
     */
    public static List<String> lines(
            Season season, SupplyNeeds needs, String springs, int count, double sure, int leadDays) {
        SupplyReport report = new SupplyReport(season, needs, leadDays);
        report.lines.add(season.name() + ": what is enough in " + String.format(Locale.ROOT, "%.0f %%", sure * 100)
                + " of " + springs);
        report.compost();
        report.water(count);
        report.days();
        return report.lines;
    }

    private void compost() {
        lines.add("");
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Lot"),
                        Table.Column.right("mass"),
                        Table.Column.right("there from"),
                        Table.Column.right("needed by"),
                        Table.Column.right("order by"),
                        Table.Column.right("taken from it")),
                "");
        for (SupplyNeeds.Lot lot : needs.lots()) {
            table.row(
                    List.of(
                            lot.lot().id(),
                            figures.mass(lot.lot().massKg()),
                            Figures.day(lot.lot().from()),
                            lot.neededBy().map(Figures::day).orElse("not needed"),
                            lot.neededBy()
                                    .map(date -> Figures.day(date.minusDays(leadDays)))
                                    .orElse("-"),
                            figures.mass(lot.neededKg())),
                    List.of());
        }
        lines.addAll(table.lines());
        lines.add(needs.stockOut()
                .map(out -> "Compost runs out first on " + Figures.day(out.date()) + ", when "
                        + figures.mass(out.lackKg()) + " lack.")
                .orElse("The lots as they are hold what is needed on every day."));
    }

    private void water(int count) {
        lines.add("");
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Water point"),
                        Table.Column.right("drawn on its heaviest day"),
                        Table.Column.right("limit a day"),
                        Table.Column.right("springs that reach it")),
                "");
        for (SupplyNeeds.Point point : needs.points()) {
            boolean limited = point.limitL().isPresent();
            table.row(
                    List.of(
                            point.id(),
                            figures.volume(point.mostL()),
                            limited ? figures.volume(point.limitL().getAsDouble()) : "none",
                            limited ? point.springsAtLimit() + " of " + count : "-"),
                    List.of());
        }
        lines.addAll(table.lines());
    }

    private void days() {
        lines.add("");
        List<Table.Column> columns = new ArrayList<>(List.of(
                Table.Column.left("Day"),
                Table.Column.right("compost used by then"),
                Table.Column.right("in the lots by then")));
        season.waterPoints().stream()
                .map(WaterPoint::id)
                .forEach(id -> columns.add(Table.Column.right("drawn at " + id)));
        Table table = new Table(WIDTH, columns, "");
        double before = 0;
        for (SupplyNeeds.Day day : needs.days()) {
            boolean idle = day.neededKg() == before && day.waterL().stream().allMatch(litres -> litres == 0);
            before = day.neededKg();
            if (!idle) {
                table.row(row(day), List.of());
            }
        }
        lines.addAll(table.lines());
    }

    private List<String> row(SupplyNeeds.Day day) {
        LocalDate date = day.date();
        List<String> cells =
                new ArrayList<>(List.of(Figures.day(date), figures.mass(day.neededKg()), figures.mass(day.stockKg())));
        day.waterL().forEach(litres -> cells.add(figures.volume(litres)));
        return cells;
    }
}

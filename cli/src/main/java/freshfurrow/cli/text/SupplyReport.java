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
        report.lines.add(season.name() + ": amounts that are enough in " + share(sure) + ": " + springs);
        report.compost();
        report.water(count);
        report.days();
        return report.lines;
    }

    /** As {@code 8 springs out of 10}, or as a percentage where that is not whole. */
    private static String share(double sure) {
        double tenths = sure * 10;
        return Math.abs(tenths - Math.rint(tenths)) < 1e-9
                ? String.format(Locale.ROOT, "%.0f springs out of 10", tenths)
                : String.format(Locale.ROOT, "%.0f %% of springs", sure * 100);
    }

    private void compost() {
        lines.add("");
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Lot"),
                        Table.Column.right("mass"),
                        Table.Column.right("on hand from"),
                        Table.Column.right("needed by"),
                        Table.Column.right("order by"),
                        Table.Column.right("used")),
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
                .map(out -> "Compost first runs short on " + Figures.day(out.date()) + ", by "
                        + figures.mass(out.lackKg()) + ".")
                .orElse("Your lots cover every day."));
        if (season.goals().untreatedDays().isPresent()) {
            lines.add(toTreatAll());
        }
    }

    private String toTreatAll() {
        double lackKg = needs.neededKg() - needs.stockKg();
        return "To plant all with extract takes " + figures.mass(needs.neededKg()) + " of compost"
                + (lackKg > 0 ? ", " + figures.mass(lackKg) + " more than all lots" : "") + "; "
                + figures.mass(needs.usedKg())
                + " are used if your lots stay as they are and planting may go on without.";
    }

    private void water(int count) {
        lines.add("");
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Water point"),
                        Table.Column.right("drawn on the heaviest day"),
                        Table.Column.right("daily limit"),
                        Table.Column.right("springs at the limit")),
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
                Table.Column.right("on hand by then")));
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

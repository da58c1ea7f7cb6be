package freshfurrow.cli.text;

import freshfurrow.model.compare.Chance;
import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.PairedDifference;
import freshfurrow.model.compare.VariantSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Variants side by side as text: figures, differences, and what they mean. */
public final class ComparisonReport {
    private static final int WIDTH = 120;

    private final ComparedSprings compared;
    private final List<VariantSummary> summaries;
    private final MeasureText text;
    private final List<String> lines = new ArrayList<>();

    private ComparisonReport(ComparedSprings compared) {
        this.compared = compared;
        summaries = compared.summaries();
        text = new MeasureText(compared.rules());
    }

    public static List<String> lines(ComparedSprings compared) {
        ComparisonReport report = new ComparisonReport(compared);
        report.write();
        return report.lines;
    }

    private void write() {
        lines.add(compared.rules().season() + ": " + springs(compared));
        lines.add(rule(compared));
        lines.add("");
        spreads();
        for (VariantSummary variant : summaries.subList(1, summaries.size())) {
            differences(variant);
        }
        ReserveReport.of(compared).ifPresent(reserves -> lines.addAll(reserves.lines()));
        lines.add("");
        lines.addAll(ComparisonWords.of(compared));
    }

    /** How many springs, and where they are from. */
    public static String springs(ComparedSprings compared) {
        long recorded = compared.numbers().stream()
                .filter(number -> number <= compared.rules().recorded())
                .count();
        long made = compared.numbers().size() - recorded;
        return Figures.count(compared.numbers().size(), "spring", "springs") + ", " + recorded + " recorded and " + made
                + " generated, from " + compared.rules().weather();
    }

    /** How plans were made for them and run through them. */
    public static String rule(ComparedSprings compared) {
        int forecast = compared.rules().forecastDays();
        int replan = compared.rules().replanDays();
        return "Each plan assumes dry weather; the best of several tries ("
                + String.format(Locale.ROOT, "%,d", compared.rules().steps())
                + " steps, seed " + compared.rules().seed() + ") is kept and then run through every spring with "
                + (forecast == 0 ? "no forecast" : "a " + forecast + "-day forecast")
                + (replan == 0
                        ? ", skipping fields that are too wet."
                        : ", replanning every " + (replan == 1 ? "day." : replan + " days."));
    }

    private void spreads() {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.left("Typical spring (1-in-10 low, 1-in-10 high)"));
        for (VariantSummary variant : summaries) {
            columns.add(Table.Column.right(variant.name()));
        }
        Table table = new Table(WIDTH, columns, "");
        for (Measure measure : compared.rules().measures()) {
            List<String> cells = new ArrayList<>();
            cells.add(text.label(measure));
            summaries.forEach(variant -> cells.add(text.spread(measure, variant.spread(measure))));
            table.row(cells, List.of());
        }
        List<String> chances = new ArrayList<>();
        chances.add("springs with every field " + new WorkWords(compared.rules().works()).done() + " in its window");
        summaries.forEach(variant -> chances.add(chance(variant.insideWindows())));
        table.row(chances, List.of());
        if (summaries.stream().allMatch(variant -> variant.money().isPresent())) {
            List<String> money = new ArrayList<>();
            money.add("cost per season");
            summaries.forEach(variant ->
                    money.add(text.money(variant.money().orElseThrow().season())));
            table.row(money, List.of());
        }
        lines.addAll(table.lines());
    }

    /** A share of springs with its 95 % interval. */
    public static String chance(Chance chance) {
        return percent(chance.share()) + " (" + percent(chance.lower()) + " to " + percent(chance.upper()) + ")";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", share * 100);
    }

    private void differences(VariantSummary variant) {
        if (variant.differences().isEmpty()) {
            return;
        }
        lines.add("");
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left(
                                variant.name() + " minus " + summaries.get(0).name()),
                        Table.Column.right("average"),
                        Table.Column.right("95 % interval"),
                        Table.Column.right("planning noise"),
                        Table.Column.right("springs lower"),
                        Table.Column.right("same"),
                        Table.Column.right("higher")),
                "");
        for (Map.Entry<Measure, PairedDifference> entry : variant.differences().entrySet()) {
            PairedDifference difference = entry.getValue();
            table.row(
                    List.of(
                            text.label(entry.getKey()),
                            text.difference(entry.getKey(), difference.mean()),
                            text.difference(entry.getKey(), difference.lower()) + " to "
                                    + text.difference(entry.getKey(), difference.upper()),
                            text.luck(entry.getKey(), variant.luck().getOrDefault(entry.getKey(), 0.0)),
                            Integer.toString(difference.less()),
                            Integer.toString(difference.same()),
                            Integer.toString(difference.more())),
                    List.of());
        }
        lines.addAll(table.lines());
    }
}

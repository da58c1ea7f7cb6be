package freshfurrow.cli.text;

import freshfurrow.model.compare.Chance;
import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.ComparedVariant.ResourceShare;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.Money;
import freshfurrow.model.compare.PairedDifference;
import freshfurrow.model.compare.VariantSummary;
import freshfurrow.model.plan.Resource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Variants side by side as text: figures, differences, and what they mean in words. */
public final class ComparisonReport {
    private static final int WIDTH = 120;
    private static final int MOST_NAMED = 2;
    private static final double LEAST_NAMED = 0.01;
    private static final double LEAST_WAIT_H = 0.5;

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
        lines.add("");
        lines.addAll(words(compared));
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

    /** By what rule they were lived. */
    public static String rule(ComparedSprings compared) {
        int forecast = compared.rules().forecastDays();
        int replan = compared.rules().replanDays();
        return "Plans are made as if it stayed dry, the one of several that lives best is taken ("
                + String.format(Locale.ROOT, "%,d", compared.rules().steps())
                + " steps, seed " + compared.rules().seed() + ") and lived "
                + (forecast == 0
                        ? "without a forecast"
                        : "with a forecast of " + Figures.count(forecast, "day", "days"))
                + (replan == 0
                        ? ", passing over wet fields."
                        : ", and planned again every " + Figures.count(replan, "day", "days") + ".");
    }

    private void spreads() {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.left("Median (1 spring in 10 is below, above)"));
        for (VariantSummary variant : summaries) {
            columns.add(Table.Column.right(variant.name()));
        }
        Table table = new Table(WIDTH, columns, "");
        for (Measure measure : Measure.values()) {
            List<String> cells = new ArrayList<>();
            cells.add(text.label(measure));
            summaries.forEach(variant -> cells.add(text.spread(measure, variant.spread(measure))));
            table.row(cells, List.of());
        }
        List<String> chances = new ArrayList<>();
        chances.add("all planted inside the windows");
        summaries.forEach(variant -> chances.add(chance(variant.insideWindows())));
        table.row(chances, List.of());
        if (summaries.stream().allMatch(variant -> variant.money().isPresent())) {
            List<String> money = new ArrayList<>();
            money.add("money a season");
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
                                variant.name() + " less " + summaries.get(0).name()),
                        Table.Column.right("mean"),
                        Table.Column.right("95 % interval"),
                        Table.Column.right("luck of plans"),
                        Table.Column.right("springs with less"),
                        Table.Column.right("the same"),
                        Table.Column.right("more")),
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

    /** What the figures mean, a sentence or two a line. */
    public static List<String> words(ComparedSprings compared) {
        ComparisonReport report = new ComparisonReport(compared);
        List<String> words = new ArrayList<>();
        for (int i = 0; i < report.summaries.size(); i++) {
            if (i > 0) {
                words.add(report.against(report.summaries.get(i)));
                report.summaries.get(i).money().ifPresent(money -> report.pays(words, money));
            }
        }
        for (int i = 0; i < report.summaries.size(); i++) {
            heldBack(words, compared.variants().get(i), report.summaries.get(i));
            report.foreseen(words, compared.variants().get(i));
        }
        return words;
    }

    private String against(VariantSummary variant) {
        if (variant.differences().isEmpty()) {
            return variant.name() + ": one spring tells nothing; live more of them.";
        }
        String told = named(variant, true);
        String untold = named(variant, false);
        if (told.isEmpty()) {
            return "The springs do not tell " + variant.name() + " and "
                    + summaries.get(0).name() + " apart.";
        }
        return variant.name() + " against " + summaries.get(0).name() + ", in the mean: " + told + "."
                + (untold.isEmpty() ? "" : " Not told apart: " + untold + ".");
    }

    private String named(VariantSummary variant, boolean toldApart) {
        return String.join(
                "; ",
                variant.differences().entrySet().stream()
                        .filter(entry -> variant.toldApart(entry.getKey()) == toldApart)
                        .map(entry -> text.label(entry.getKey())
                                + (toldApart
                                        ? " "
                                                + text.difference(
                                                        entry.getKey(),
                                                        entry.getValue().mean())
                                        : ""))
                        .toList());
    }

    private void pays(List<String> words, Money money) {
        money.breakEven().ifPresent(breakEven -> {
            String may = breakEven.mean() > 0
                    ? "It saves " + text.money(breakEven.mean()) + " a season in running costs ("
                            + text.money(breakEven.lower()) + " to " + text.money(breakEven.upper())
                            + "): what it may cost more a year and still pay."
                    : "It saves nothing in running costs: they are " + text.money(-breakEven.mean()) + " higher ("
                            + text.money(-breakEven.upper()) + " to " + text.money(-breakEven.lower()) + ").";
            String verdict = breakEven.lower() > money.yearlyExtra()
                    ? " Its machines cost " + text.money(money.yearlyExtra()) + " more a year, so it pays."
                    : breakEven.upper() < money.yearlyExtra()
                            ? " Its machines cost " + text.money(money.yearlyExtra())
                                    + " more a year, so it does not pay."
                            : " Its machines cost " + text.money(money.yearlyExtra())
                                    + " more a year: the springs do not tell whether it pays.";
            words.add(may + verdict);
        });
    }

    private static void heldBack(List<String> words, ComparedVariant variant, VariantSummary summary) {
        if (variant.limits().isEmpty()) {
            return;
        }
        boolean late = summary.spread(Measure.LATE).mean() > 0
                || summary.spread(Measure.UNSERVED).mean() > 0;
        boolean waits = summary.spread(Measure.WAIT).mean() >= LEAST_WAIT_H;
        List<String> parts = new ArrayList<>();
        if (late) {
            parts.add("of what is late or not planted, " + shares(variant.limits(), ResourceShare::ofLate));
        }
        if (waits) {
            parts.add("of its planters' waiting, " + shares(variant.limits(), ResourceShare::ofWait));
        }
        words.add(variant.lived().name() + ": "
                + (parts.isEmpty() ? "nothing holds it back in these springs." : String.join("; ", parts) + "."));
    }

    private void foreseen(List<String> words, ComparedVariant variant) {
        variant.foresight()
                .ifPresent(foresight -> words.add(variant.lived().name()
                        + ", perfect foresight (a bound, nobody can have it), mean of the first " + foresight.springs()
                        + " springs: "
                        + text.label(Measure.LATE) + " " + text.value(Measure.LATE, foresight.lateHaDays())
                        + " where " + text.value(Measure.LATE, foresight.livedLateHaDays()) + " were lived; "
                        + text.label(Measure.UNSERVED) + " "
                        + text.value(Measure.UNSERVED, foresight.unservedHa())
                        + " where " + text.value(Measure.UNSERVED, foresight.livedUnservedHa()) + " were left."));
    }

    private static String shares(List<ResourceShare> limits, ToDoubleFunction<ResourceShare> share) {
        List<String> named = limits.stream()
                .filter(limit -> share.applyAsDouble(limit) >= LEAST_NAMED)
                .sorted(Comparator.comparingDouble(share).reversed())
                .limit(MOST_NAMED)
                .map(limit ->
                        Figures.percent(share.applyAsDouble(limit)) + " goes away when " + condition(limit.resource()))
                .toList();
        return named.isEmpty() ? "no one thing made free takes any of it away" : String.join(", ", named);
    }

    private static String condition(Resource free) {
        return HeldBack.condition(free);
    }
}

package freshfurrow.cli.text;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.ComparedVariant.ResourceShare;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.Money;
import freshfurrow.model.compare.VariantSummary;
import freshfurrow.model.plan.Resource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What the figures of variants mean, in sentences. */
public final class ComparisonWords {
    private static final int MOST_NAMED = 2;
    private static final double LEAST_NAMED = 0.01;
    private static final double LEAST_WAIT_H = 0.5;

    private final List<VariantSummary> summaries;
    private final MeasureText text;

    private ComparisonWords(ComparedSprings compared) {
        summaries = compared.summaries();
        text = new MeasureText(compared.rules());
    }

    /** What the figures mean, a sentence or two a line. */
    public static List<String> of(ComparedSprings compared) {
        ComparisonWords report = new ComparisonWords(compared);
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

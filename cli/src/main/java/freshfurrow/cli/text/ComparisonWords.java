package freshfurrow.cli.text;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.ComparedVariant.ResourceShare;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.Money;
import freshfurrow.model.compare.VariantSummary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What the figures of variants mean, in sentences. */
public final class ComparisonWords {
    private static final int MOST_NAMED = 2;
    private static final double LEAST_NAMED = 0.01;
    private static final double LEAST_WAIT_H = 0.5;

    private final List<VariantSummary> summaries;
    private final MeasureText text;
    private final WorkWords work;

    private ComparisonWords(ComparedSprings compared) {
        summaries = compared.summaries();
        text = new MeasureText(compared.rules());
        work = new WorkWords(compared.rules().works());
    }

    /**
     * What the figures mean, a sentence or two a line. Reserves are held against one another by the sums of {@link ReserveReport}: the base has
     * another reserve, and perhaps times that do not vary.
     */
    public static List<String> of(ComparedSprings compared) {
        ComparisonWords report = new ComparisonWords(compared);
        List<String> words = new ArrayList<>();
        for (int i = 0; i < report.summaries.size(); i++) {
            if (i > 0 && compared.variants().get(i).reserve().isEmpty()) {
                words.add(report.against(report.summaries.get(i)));
                report.summaries.get(i).money().ifPresent(money -> report.pays(words, money));
            }
        }
        for (int i = 0; i < report.summaries.size(); i++) {
            if (compared.variants().get(i).reserve().isEmpty()) {
                report.heldBack(words, compared.variants().get(i), report.summaries.get(i));
            }
            report.foreseen(words, compared.variants().get(i));
        }
        return words;
    }

    private String against(VariantSummary variant) {
        if (variant.differences().isEmpty()) {
            return variant.name() + ": one spring shows no difference; use more springs.";
        }
        String clear = changes(variant);
        String unclear = unclear(variant);
        if (clear.isEmpty()) {
            return "No clear difference between " + variant.name() + " and "
                    + summaries.get(0).name() + " in these springs.";
        }
        return "With " + variant.name() + ", on average " + clear + "."
                + (unclear.isEmpty() ? "" : " No clear difference: " + unclear + ".");
    }

    private String changes(VariantSummary variant) {
        return variant.differences().entrySet().stream()
                .filter(entry -> variant.toldApart(entry.getKey()))
                .map(entry -> text.change(entry.getKey(), entry.getValue().mean()))
                .collect(Collectors.joining(", "));
    }

    private String unclear(VariantSummary variant) {
        return variant.differences().keySet().stream()
                .filter(measure -> !variant.toldApart(measure))
                .map(text::label)
                .collect(Collectors.joining(", "));
    }

    private void pays(List<String> words, Money money) {
        money.breakEven().ifPresent(breakEven -> {
            String running = breakEven.mean() > 0
                    ? "It costs " + text.money(breakEven.mean()) + " a season less to run (95 % interval "
                            + text.money(breakEven.lower()) + " to " + text.money(breakEven.upper()) + ")"
                    : "It costs " + text.money(-breakEven.mean()) + " a season more to run (95 % interval "
                            + text.money(-breakEven.upper()) + " to " + text.money(-breakEven.lower()) + ")";
            String verdict = breakEven.lower() > money.yearlyExtra()
                    ? " On these prices and springs it pays."
                    : breakEven.upper() < money.yearlyExtra()
                            ? " On these prices and springs it does not pay."
                            : " These springs do not show whether it pays.";
            words.add(running + owning(money.yearlyExtra()) + "." + verdict);
        });
    }

    private String owning(double yearlyExtra) {
        if (yearlyExtra == 0) {
            return " and no more a year to own";
        }
        return " and " + text.money(Math.abs(yearlyExtra)) + " a year " + (yearlyExtra > 0 ? "more" : "less")
                + " to own";
    }

    private void heldBack(List<String> words, ComparedVariant variant, VariantSummary summary) {
        if (variant.limits().isEmpty()) {
            return;
        }
        boolean late = summary.spread(Measure.LATE).mean() > 0
                || summary.spread(Measure.UNSERVED).mean() > 0;
        boolean without = summary.spreads().containsKey(Measure.TREATED)
                && summary.spread(Measure.TREATED).mean() < 1;
        boolean waits = summary.spread(Measure.WAIT).mean() >= LEAST_WAIT_H;
        List<String> parts = new ArrayList<>();
        if (late || without) {
            parts.add(work.lateArea(late, without) + shares(variant.limits(), ResourceShare::ofLate));
        }
        if (waits) {
            parts.add("waiting" + shares(variant.limits(), ResourceShare::ofWait));
        }
        words.add(variant.lived().name() + ": "
                + (parts.isEmpty() ? "no bottleneck in these springs." : String.join("; ", parts) + "."));
    }

    private void foreseen(List<String> words, ComparedVariant variant) {
        variant.foresight()
                .ifPresent(foresight -> words.add(variant.lived().name()
                        + " with perfect foresight (a bound that nobody can reach), average of the first "
                        + foresight.springs() + " springs: "
                        + instead(Measure.LATE, foresight.lateHaDays(), foresight.livedLateHaDays()) + ", "
                        + instead(Measure.UNSERVED, foresight.unservedHa(), foresight.livedUnservedHa()) + "."));
    }

    private String instead(Measure measure, double foreseen, double lived) {
        String figure = text.value(measure, foreseen);
        String other = text.value(measure, lived);
        return figure + " " + text.label(measure) + (figure.equals(other) ? " either way" : " instead of " + other);
    }

    private String shares(List<ResourceShare> limits, ToDoubleFunction<ResourceShare> share) {
        List<String> named = limits.stream()
                .filter(limit -> share.applyAsDouble(limit) >= LEAST_NAMED)
                .sorted(Comparator.comparingDouble(share).reversed())
                .limit(MOST_NAMED)
                .map(limit -> "by " + Figures.percent(share.applyAsDouble(limit)) + " if "
                        + HeldBack.condition(limit.resource(), work))
                .toList();
        return named.isEmpty()
                ? ": lifting any one limit by itself would not help"
                : " would shrink " + String.join(", ", named);
    }
}

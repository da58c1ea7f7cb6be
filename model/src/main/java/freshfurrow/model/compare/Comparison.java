package freshfurrow.model.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Variants side by side; the first is the base that the others are held against. */
public final class Comparison {
    private Comparison() {}

    /**
     * A summary of each variant, in their order.
     *
     * @param variants all lived through the same springs
     * @param measures by which they are compared
     * @throws IllegalArgumentException when they have not the same number of springs
     */
    public static List<VariantSummary> of(List<LivedVariant> variants, List<Measure> measures) {
        LivedVariant base = variants.get(0);
        List<VariantSummary> summaries = new ArrayList<>();
        for (int i = 0; i < variants.size(); i++) {
            boolean compared = i > 0 && base.springs().size() > 1;
            summaries.add(summary(variants.get(i), base, measures, compared));
        }
        return summaries;
    }

    private static VariantSummary summary(
            LivedVariant variant, LivedVariant base, List<Measure> measures, boolean compared) {
        Map<Measure, Spread> spreads = new EnumMap<>(Measure.class);
        Map<Measure, PairedDifference> differences = new EnumMap<>(Measure.class);
        Map<Measure, Double> luck = new EnumMap<>(Measure.class);
        for (Measure measure : measures) {
            double[] figures = variant.figures(measure);
            luck.put(measure, 2 * variant.luck().getOrDefault(measure, 0.0));
            spreads.put(measure, Spread.of(figures));
            if (compared) {
                differences.put(measure, PairedDifference.of(base.figures(measure), figures));
            }
        }
        int inside = (int)
                variant.springs().stream().filter(SpringFigures::insideWindows).count();
        return new VariantSummary(
                variant.name(),
                Chance.of(inside, variant.springs().size()),
                spreads,
                differences,
                luck,
                variant.hasCosts() && base.hasCosts() ? Optional.of(money(variant, base, compared)) : Optional.empty());
    }

    private static Money money(LivedVariant variant, LivedVariant base, boolean compared) {
        Optional<PairedDifference> all = Optional.empty();
        Optional<Money.BreakEven> breakEven = Optional.empty();
        if (compared) {
            all = Optional.of(PairedDifference.of(base.costs(), variant.costs()));
            breakEven =
                    Optional.of(Money.BreakEven.of(PairedDifference.of(base.runningCosts(), variant.runningCosts())));
        }
        return new Money(
                Spread.of(variant.costs()),
                all,
                breakEven,
                variant.yearlyCost().orElseThrow() - base.yearlyCost().orElseThrow());
    }
}

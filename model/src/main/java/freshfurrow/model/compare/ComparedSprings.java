package freshfurrow.model.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Variants that lived through the same springs, and the rules by which they did.
 *
 * @param rules by which the springs were lived; only springs lived by the same rules can be joined
 * @param numbers of the springs, from 1, ascending
 * @param variants the base first; each has a row for each of the springs
 */
public record ComparedSprings(LivingRules rules, List<Integer> numbers, List<ComparedVariant> variants) {
    public ComparedSprings {
        numbers = List.copyOf(numbers);
        variants = List.copyOf(variants);
        if (variants.isEmpty()) {
            throw new IllegalArgumentException("nothing to compare");
        }
        for (int i = 1; i < numbers.size(); i++) {
            if (numbers.get(i) <= numbers.get(i - 1)) {
                throw new IllegalArgumentException("spring " + numbers.get(i) + " after " + numbers.get(i - 1));
            }
        }
        for (ComparedVariant variant : variants) {
            if (variant.lived().springs().size() != numbers.size()) {
                throw new IllegalArgumentException(variant.lived().name() + " has "
                        + variant.lived().springs().size() + " springs of " + numbers.size());
            }
        }
    }

    /** A summary of each variant, in their order. */
    public List<VariantSummary> summaries() {
        return Comparison.of(variants.stream().map(ComparedVariant::lived).toList(), rules.measures());
    }

    /**
     * The springs of this and of another slice together, as if lived in one go.
     *
     * @throws IllegalArgumentException when they do not belong together, with the reason in a sentence
     */
    public ComparedSprings join(ComparedSprings other) {
        if (!rules.equals(other.rules)) {
            throw new IllegalArgumentException("they have different rules");
        }
        if (variants.size() != other.variants.size()) {
            throw new IllegalArgumentException("they compare different variants");
        }
        List<ComparedVariant> joined = new ArrayList<>();
        TreeMap<Integer, SpringFigures> rows = new TreeMap<>();
        for (int v = 0; v < variants.size(); v++) {
            ComparedVariant one = variants.get(v);
            ComparedVariant two = other.variants.get(v);
            if (!one.sameBut(two)) {
                throw new IllegalArgumentException("variant " + one.lived().name() + " is not the same in both");
            }
            rows = one.rows(numbers);
            for (var row : two.rows(other.numbers).entrySet()) {
                if (rows.put(row.getKey(), row.getValue()) != null) {
                    throw new IllegalArgumentException("spring " + row.getKey() + " is in both");
                }
            }
            joined.add(one.withSprings(List.copyOf(rows.values())));
        }
        return new ComparedSprings(rules, List.copyOf(rows.keySet()), joined);
    }
}

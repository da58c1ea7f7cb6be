package freshfurrow.model.compare;

import freshfurrow.model.plan.Resource;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A variant with its springs, and what it was.
 *
 * @param sha256 of all files it was read from, lower-case hex
 * @param limits what each resource holds back over a sample of springs; empty when it was not worked out
 * @param foresight what might come of that sample if its weather were known beforehand, where that was asked for
 * @param reserve for a variant that tries one of the season as it is
 */
public record ComparedVariant(
        LivedVariant lived,
        String sha256,
        List<ResourceShare> limits,
        Optional<Foresight> foresight,
        Optional<TriedReserve> reserve) {
    public ComparedVariant {
        limits = List.copyOf(limits);
    }

    /** Whether the other is the same variant, lived through other springs. */
    boolean sameBut(ComparedVariant other) {
        return equals(other.withSprings(lived.springs()));
    }

    ComparedVariant withSprings(List<SpringFigures> springs) {
        return new ComparedVariant(
                new LivedVariant(lived.name(), lived.yearlyCost(), lived.luck(), springs),
                sha256,
                limits,
                foresight,
                reserve);
    }

    TreeMap<Integer, SpringFigures> rows(List<Integer> numbers) {
        TreeMap<Integer, SpringFigures> rows = new TreeMap<>();
        for (int i = 0; i < numbers.size(); i++) {
            rows.put(numbers.get(i), lived.springs().get(i));
        }
        return rows;
    }

    /**
     * What one resource holds back: springs lived once more with it made free.
     *
     * @param ofLate share of late area-days that goes away, area not planted counted as late by all days of the season, 0 to 1
     * @param ofWait share of the planters' waiting that goes away, 0 to 1
     */
    public record ResourceShare(Resource resource, double ofLate, double ofWait) {}
}

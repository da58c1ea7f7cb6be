package freshfurrow.solver.relaxation;

import freshfurrow.model.timeline.CompiledSeason;
import java.util.BitSet;
import java.util.List;

/**
 * Fields that differ in nothing but area and window as far as the relaxation looks: the same planters, soil, recipe
 * and late weight.
 *
 * @param planters that may plant them, or more
 * @param soil which ground they have, as far as grounds are told apart
 * @param samples of each ground that they have, one of the fields
 * @param weight what a late day counts, in thousandths, or less
 */
public record FieldGroup(
        CompiledSeason season,
        List<Integer> fields,
        BitSet planters,
        int soil,
        List<Integer> samples,
        int recipe,
        long weight) {
    public FieldGroup {
        fields = List.copyOf(fields);
        samples = List.copyOf(samples);
    }

    /** Area in whole, dm2. */
    public long area() {
        return fields.stream().mapToLong(season::areaDm2).sum();
    }

    /** Area of the fields whose windows have opened on a day, dm2. */
    long opened(int day) {
        return fields.stream()
                .filter(field -> season.windowFirstDay(field) <= day)
                .mapToLong(season::areaDm2)
                .sum();
    }

    /** Area of the fields whose windows have closed by the end of a day, dm2. */
    long due(int day) {
        return fields.stream()
                .filter(field -> season.windowLastDay(field) <= day)
                .mapToLong(season::areaDm2)
                .sum();
    }

    /** What planting without extract counts, in thousandths: the least of its fields. */
    public long extractWeight() {
        return fields.stream().mapToLong(season::extractWeightThousandths).min().orElse(0);
    }

    int firstOpening() {
        return fields.stream().mapToInt(season::windowFirstDay).min().orElseThrow();
    }

    /** The first day after whose end some of it may be late. */
    int firstClosing() {
        return fields.stream().mapToInt(season::windowLastDay).min().orElseThrow();
    }
}

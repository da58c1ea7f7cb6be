package freshfurrow.solver.relaxation;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.linear.LinearProgram;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What each dm2 of a field takes, in a row of the relaxation, beside what any of its recipe takes.
 *
 * <p>Proof that the row holds for groups. Of field f, of area A(f), the area x(f) is planted on some days, of its group X. With C the largest cost c(f) of
 * the fields of the group that may be planted by then, the sum of c(f) x(f) is C X less the sum of (C - c(f)) x(f), and x(f) &lt;= A(f). So it is
 * at least C X less the sum of (C - c(f)) A(f), which is added to the room of the row. Costs may be capped: that only eases
 * the row, and where few of the fields can be planted on the days less is spared so.
 */
final class FieldCosts {
    private final CompiledSeason season;
    private final double[] perDm2;

    /** @param perDm2 by field, 0 or more */
    FieldCosts(CompiledSeason season, double[] perDm2) {
        this.season = season;
        this.perDm2 = perDm2;
    }

    double largestPerDm2() {
        return Arrays.stream(perDm2).max().orElse(0);
    }

    double largestOfField() {
        return IntStream.range(0, perDm2.length)
                .mapToDouble(field -> perDm2[field] * season.areaDm2(field))
                .max()
                .orElse(0);
    }

    /** Adds what is planted of a group on some days to the sum, and returns what the row's room grows by. */
    double addPlanted(
            Relaxation relaxation,
            LinearProgram.Sum planted,
            double ofTreated,
            double ofUntreated,
            int group,
            DaySpans.Span span) {
        double largest = largest(relaxation, group, span);
        relaxation.addPlantedFromTo(
                planted, ofTreated + largest, ofUntreated + largest, group, span.first(), span.last());
        return spared(relaxation, group, span, largest);
    }

    /** The same of what is treated of it. */
    double addTreated(Relaxation relaxation, LinearProgram.Sum treated, double factor, int group, DaySpans.Span span) {
        double largest = largest(relaxation, group, span);
        relaxation.addTreatedFromTo(treated, factor + largest, group, span.first(), span.last());
        return spared(relaxation, group, span, largest);
    }

    private double largest(Relaxation relaxation, int group, DaySpans.Span span) {
        return open(relaxation, group, span)
                .mapToDouble(field -> perDm2[field])
                .max()
                .orElse(0);
    }

    private double spared(Relaxation relaxation, int group, DaySpans.Span span, double largest) {
        return open(relaxation, group, span)
                .mapToDouble(field -> (largest - perDm2[field]) * season.areaDm2(field))
                .sum();
    }

    private IntStream open(Relaxation relaxation, int group, DaySpans.Span span) {
        return relaxation.groups().get(group).fields().stream()
                .mapToInt(field -> field)
                .filter(field -> season.windowFirstDay(field) <= span.last());
    }
}

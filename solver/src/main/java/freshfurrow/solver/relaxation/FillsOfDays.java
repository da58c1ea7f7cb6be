package freshfurrow.solver.relaxation;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.linear.LinearProgram;
import java.util.stream.IntStream;

/**
 * What fills some days take of planters that are alike.
 *
 * <p>Proof. With L(r) the largest load, s(r) the time to plant a dm2 and to pump over its mix and u that of a setup, a planter takes x(r) / L(r) loads at the least for what it treats,
 * and what it plants on a day, s(r) x(r), lies with the setups in its hours H by {@link PlanterDays}; a load that it may begin the day with adds its fill to H.
 *
 * <p>Where all that it plants on a day comes of whole loads filled on it, let y be the sum of x(r) / L(r), n the number of loads, S the least of s(r) L(r),
 * and m the most loads of S + u that fit H. Then n >= y and S y + u n <= H. So n <= m, or n >= m + 1 and y <= Y = (H - (m + 1) u) / S. With Y > m, of which it then is (Y - m) n >= (Y - m) m + y - m
 * in both cases:
 *
 * <ul>
 *   <li>n <= m: y - m <= n - m, which is not above 0, and Y - m <= 1, as m + 1 loads do not fit;
 *   <li>n >= m + 1: y - m <= Y - m <= (Y - m) (n - m).
 * </ul>
 *
 * With Y <= m it is y <= m. The sums of such days, planters and recipes keep to the sums of the rows, with the largest Y - m of them, 1 at the most.
 */
final class FillsOfDays {
    private static final double ROUNDING = 1 + 1e-9;
    /** A steeper row says no more that counts. */
    private static final double LEAST_PART = 0.02;

    private final CompiledSeason season;
    private final LargestLoads largest;
    private final PlanterDays days;
    private final LoadTimes times;

    FillsOfDays(CompiledSeason season, LargestLoads largest, PlanterDays days) {
        this.season = season;
        this.largest = largest;
        this.days = days;
        times = new LoadTimes(season, largest);
    }

    /** The most that such planters treat of a recipe. */
    double mostDm2(AlikePlanters kind, DaySpans.Span span, int recipe) {
        return kind.count() * hoursS(kind, span) / times.treatingS(kind.first(), recipe) * ROUNDING;
    }

    private double hoursS(AlikePlanters kind, DaySpans.Span span) {
        return days(span).mapToDouble(day -> hoursS(kind.first(), day)).sum();
    }

    private double hoursS(int planter, int day) {
        double hoursS = days.hoursS(planter, day);
        return hoursS == 0 || !days.mayBeginLoaded(planter, day) ? hoursS : hoursS + longestFillS(planter);
    }

    private double longestFillS(int planter) {
        return times.setupS(planter)
                + IntStream.range(0, season.season().recipes().size())
                        .mapToDouble(recipe -> largest.dm2(planter, recipe) * times.pumpingS(planter, recipe))
                        .max()
                        .orElse(0);
    }

    private static IntStream days(DaySpans.Span span) {
        return IntStream.rangeClosed(span.first(), span.last());
    }

    /**
     * Rows and costs of what they treat on some days.
     *
     * @param treated the variable of each recipe, dm2; -1 where nothing of it can be
     * @param unitDm2 by which costs and fills are multiplied
     */
    void addRows(
            LinearProgram program,
            AlikePlanters kind,
            DaySpans.Span span,
            int[] treated,
            double perFill,
            double unitDm2) {
        int[] recipes = IntStream.range(0, treated.length)
                .filter(recipe -> treated[recipe] >= 0)
                .toArray();
        if (recipes.length == 0) {
            return;
        }
        int planter = kind.first();
        double hoursS = hoursS(kind, span) * kind.count();
        double mostLoads = IntStream.of(recipes)
                .mapToDouble(recipe -> mostDm2(kind, span, recipe) / largest.dm2(planter, recipe))
                .sum();
        // more fills than these loads are counted as these
        double mostFills = 2 * mostLoads + 2.0 * kind.count() * (span.last() - span.first() + 1);
        int fills = program.variable(mostFills * unitDm2);
        program.addCost(fills, perFill);
        double unitS = times.treatingS(planter, recipes[0]);
        LinearProgram.Sum time = new LinearProgram.Sum().plus(times.setupS(planter) / unitS / unitDm2, fills);
        for (int recipe : recipes) {
            time.plus(times.treatingS(planter, recipe) / unitS, treated[recipe]);
        }
        program.atMost(time, hoursS / unitS * ROUNDING);
        program.atLeast(fillsLessLoads(planter, recipes, treated, fills, 1, unitDm2), 0);
        if (days(span).allMatch(day -> days.isOfWholeLoads(planter, day))) {
            addWholeLoads(program, kind, span, recipes, treated, fills, unitDm2);
        }
    }

    private void addWholeLoads(
            LinearProgram program,
            AlikePlanters kind,
            DaySpans.Span span,
            int[] recipes,
            int[] treated,
            int fills,
            double unitDm2) {
        int planter = kind.first();
        double loadS = IntStream.of(recipes)
                .mapToDouble(recipe -> times.treatingS(planter, recipe) * largest.dm2(planter, recipe))
                .min()
                .orElseThrow();
        double setupS = times.setupS(planter);
        double whole = 0;
        double largestPart = 0;
        for (int day = span.first(); day <= span.last(); day++) {
            double hoursS = days.hoursS(planter, day) * ROUNDING;
            double loads = Math.floor(hoursS / (loadS + setupS));
            whole += loads;
            if (hoursS > 0) {
                largestPart = Math.max(largestPart, (hoursS - (loads + 1) * setupS) / loadS * ROUNDING - loads);
            }
        }
        double part = Math.max(LEAST_PART, Math.min(1, largestPart));
        if (part < 1) {
            double least = kind.count() * whole * (1 - 1 / part) * unitDm2;
            program.atLeast(
                    fillsLessLoads(planter, recipes, treated, fills, 1 / part, unitDm2), least - 1e-6 * unitDm2);
        }
    }

    private LinearProgram.Sum fillsLessLoads(
            int planter, int[] recipes, int[] treated, int fills, double factor, double unitDm2) {
        LinearProgram.Sum sum = new LinearProgram.Sum().plus(1, fills);
        for (int recipe : recipes) {
            sum.plus(-factor * unitDm2 / largest.dm2(planter, recipe), treated[recipe]);
        }
        return sum;
    }
}

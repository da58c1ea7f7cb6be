package freshfurrow.cli.compare;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.compare.ComparedVariant;
import freshfurrow.model.compare.ComparedVariant.ResourceShare;
import freshfurrow.model.compare.Foresight;
import freshfurrow.model.compare.LivedVariant;
import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/** Forty invented springs of two variants: the second waits 5 h less in each, and all else is the same. */
public final class ComparedExample {
    private ComparedExample() {}

    /** The springs of some numbers from 1 on. */
    public static ComparedSprings springs(int first, int last) {
        return springsIn(DisplayUnits.US, first, last);
    }

    /** The same for people of those units and clocks. */
    public static ComparedSprings springsIn(DisplayUnits units, int first, int last) {
        return springs(units, first, last, false, false, Set.of(Work.PLANT));
    }

    /** The same, where some of the planted area may go without extract. */
    public static ComparedSprings springs(int first, int last, boolean untreated) {
        return springs(first, last, untreated, Set.of(Work.PLANT));
    }

    /** The same where times vary. */
    public static ComparedSprings springsOfVaryingTimes(int first, int last) {
        return springs(DisplayUnits.US, first, last, false, true, Set.of(Work.PLANT));
    }

    /** The same with machines of those works. */
    public static ComparedSprings springs(int first, int last, boolean untreated, Set<Work> works) {
        return springs(DisplayUnits.US, first, last, untreated, false, works);
    }

    private static ComparedSprings springs(
            DisplayUnits units, int first, int last, boolean untreated, boolean timesVary, Set<Work> works) {
        LivingRules rules = new LivingRules(
                "<i>Spring</i> & all",
                "season.yaml",
                LocalDate.of(2027, 4, 19),
                LocalDate.of(2027, 6, 5),
                units,
                Optional.of("EUR"),
                "station.csv (invented)",
                30,
                1,
                1_000,
                0,
                7,
                untreated,
                timesVary,
                works);
        List<Integer> numbers = IntStream.rangeClosed(first, last).boxed().toList();
        return new ComparedSprings(
                rules,
                numbers,
                List.of(
                        variant("<b>base</b>", 5_000, numbers, 25, 900, untreated, timesVary),
                        variant("two-rigs", 5_400, numbers, 20, 400, false, timesVary)));
    }

    private static ComparedVariant variant(
            String name,
            double yearly,
            List<Integer> numbers,
            double waitH,
            double running,
            boolean untreated,
            boolean timesVary) {
        List<SpringFigures> springs = new ArrayList<>();
        for (int i : numbers) {
            springs.add(new SpringFigures(
                    86_400 * (20 + i % 9),
                    i % 4 * 100.125,
                    0,
                    130 + i % 5,
                    60,
                    waitH + i % 7,
                    0.1 + 0.2,
                    i % 3,
                    2_700,
                    580,
                    1_300,
                    untreated ? 20 : 0,
                    untreated ? 0.75 + i % 5 * 0.05 : 1,
                    timesVary ? i % 4 : 0,
                    OptionalDouble.of(running + i % 3)));
        }
        return new ComparedVariant(
                new LivedVariant(
                        name, OptionalDouble.of(yearly), Map.of(Measure.WAIT, 0.5, Measure.LATE, 1 / 3.0), springs),
                "0".repeat(64),
                List.of(new ResourceShare(Resource.RIG, 0.25, 0.875), new ResourceShare(Resource.WEATHER, 1, 0)),
                Optional.of(new Foresight(10, 40.468564224, 0, 80.937128448, 1 / 3.0)),
                Optional.empty());
    }
}

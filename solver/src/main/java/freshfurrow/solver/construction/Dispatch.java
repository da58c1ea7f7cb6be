package freshfurrow.solver.construction;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Gives out fields one by one: whichever planter is free first, by an estimate, takes the one that its rule presses for. */
final class Dispatch {
    private static final int NONE = -1;

    private final CompiledSeason season;
    private final SeasonEstimate estimate;
    private final double slowness;
    private final StopSignal stop;

    /**
     * @param slowness how many times as long as without a stop planting takes, 1 or more
     * @param stop once set, no lists are made
     */
    Dispatch(CompiledSeason season, SeasonEstimate estimate, double slowness, StopSignal stop) {
        this.season = season;
        this.estimate = estimate;
        this.slowness = slowness;
        this.stop = stop;
    }

    Optional<FieldLists> lists(NextField rule, Fleet fleet) {
        int planters = season.planterCount();
        List<List<Integer>> lists = new ArrayList<>();
        for (int planter = 0; planter < planters; planter++) {
            lists.add(new ArrayList<>());
        }
        double[] clockS =
                IntStream.range(0, planters).mapToDouble(estimate::clockAtStart).toArray();
        int[] at = new int[planters];
        Arrays.fill(at, SeasonEstimate.START);
        boolean[] done = new boolean[planters];
        FieldsLeft left = new FieldsLeft(season, estimate, slowness, fleet);

        for (int planter = firstFree(clockS, done); planter != NONE; planter = firstFree(clockS, done)) {
            if (stop.isSet()) {
                return Optional.empty();
            }
            OptionalInt next = left.take(rule, planter, at[planter], clockS[planter]);
            if (next.isEmpty()) {
                done[planter] = true;
                continue;
            }
            int field = next.getAsInt();
            lists.get(planter).add(field);
            double arrivalS = clockS[planter] + estimate.moveS(planter, at[planter], field);
            clockS[planter] = Math.max(arrivalS, estimate.clockAtStartOf(estimate.opens(field), planter))
                    + estimate.plantS(planter, field) * slowness;
            at[planter] = field;
        }
        return Optional.of(new FieldLists(lists));
    }

    private static int firstFree(double[] clockS, boolean[] done) {
        int first = NONE;
        for (int planter = 0; planter < clockS.length; planter++) {
            if (!done[planter] && (first == NONE || clockS[planter] < clockS[first])) {
                first = planter;
            }
        }
        return first;
    }
}

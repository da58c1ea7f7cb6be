package freshfurrow.solver.construction;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Gives out fields one by one as the season is played: whichever planter is done first on the timeline takes, of the fields on which it
 * can begin on the soonest day, the one that its rule presses for. So queues for rigs tear no convoy apart, and nobody waits at a wet
 * field while another is dry.
 */
final class PlayedDispatch {
    /**
     * Planters that are done within an hour get their fields together, before the season is played on. Measured with 400 and 1,000
     * fields: a third of the time of one by one, and lists as good.
     */
    private static final int TOGETHER_S = 3_600;

    /** What is left of a day has to have so much time for a field to begin on it. */
    private static final int LEAST_S = 3_600;

    /** How long a field may take, against planting without a stop, so that one after it can keep its day. */
    private static final double SLOWNESS = 2.2;

    /** More than any rule presses for a field. */
    private static final double A_DAY_LATER = 1e9;

    private final CompiledSeason season;
    private final SeasonEstimate estimate;
    private final StopSignal stop;

    /** @param stop once set, no lists are made */
    PlayedDispatch(CompiledSeason season, SeasonEstimate estimate, StopSignal stop) {
        this.season = season;
        this.estimate = estimate;
        this.stop = stop;
    }

    Optional<FieldLists> lists(NextField rule, Fleet fleet) {
        ListPlayer player = new ListPlayer(season);
        FieldsLeft left = new FieldsLeft(season, estimate, SLOWNESS, fleet);
        List<List<Integer>> lists = new ArrayList<>();
        for (int planter = 0; planter < season.planterCount(); planter++) {
            lists.add(new ArrayList<>());
        }
        boolean[] mayTake = new boolean[season.planterCount()];
        Arrays.fill(mayTake, true);
        while (true) {
            FieldLists soFar = new FieldLists(lists);
            List<Integer> next = doneSoonest(player, soFar, mayTake);
            if (next.isEmpty()) {
                return Optional.of(soFar);
            }
            if (stop.isSet()) {
                return Optional.empty();
            }
            for (int planter : next) {
                OptionalInt field = take(left, rule, planter, last(lists.get(planter)), doneS(player, planter));
                field.ifPresent(lists.get(planter)::add);
                mayTake[planter] = field.isPresent();
            }
        }
    }

    /** The planter that is done first when the lists are played, and those that are soon after it, in that order. */
    private List<Integer> doneSoonest(ListPlayer player, FieldLists lists, boolean[] mayTake) {
        player.scoreFromChange(lists);
        player.stepTaken(Long.MAX_VALUE);
        List<Integer> planters = IntStream.range(0, mayTake.length)
                .filter(planter -> mayTake[planter])
                .boxed()
                .sorted((one, other) -> Integer.compare(doneS(player, one), doneS(player, other)))
                .toList();
        return planters.stream()
                .takeWhile(planter -> doneS(player, planter) <= doneS(player, planters.get(0)) + TOGETHER_S)
                .toList();
    }

    private int doneS(ListPlayer player, int planter) {
        return Math.max(season.beginsOnDay() * DAY_S, player.doneS(planter));
    }

    private static int last(List<Integer> list) {
        return list.isEmpty() ? SeasonEstimate.START : list.get(list.size() - 1);
    }

    private OptionalInt take(FieldsLeft left, NextField rule, int planter, int from, int doneS) {
        int today = doneS / DAY_S;
        double clockS = estimate.clockAtStartOf(today, planter) + season.workS(planter, today * DAY_S, doneS);
        int[] dryDays = new int[season.groundCount()];
        Arrays.fill(dryDays, -1);
        NextField soonest = (taker, at, field, clock) -> {
            int ground = season.ground(field);
            if (dryDays[ground] < 0) {
                dryDays[ground] = dryDay(taker, field, doneS);
            }
            int day = Math.max(estimate.opens(field), dryDays[ground]);
            return rule.pressure(taker, at, field, clock) - A_DAY_LATER * day;
        };
        return left.take(soonest, planter, from, clockS);
    }

    /** The first day on which there is time to plant on the field's ground; one after the season when there is none. */
    private int dryDay(int planter, int field, int fromS) {
        int day = fromS / DAY_S;
        while (day < season.days()
                && season.plantableS(planter, field, Math.max(fromS, day * DAY_S), (day + 1) * DAY_S) < LEAST_S) {
            day++;
        }
        return day;
    }
}

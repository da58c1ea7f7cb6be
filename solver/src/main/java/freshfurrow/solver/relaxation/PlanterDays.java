package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import java.util.List;

/**
 * What a planter has of each day for fills and for what it plants out of them.
 *
 * <p>Proof. What a planter plants on a day, and the fills for it, lie in its hours up to the last moment at which it may plant anything. Where no load
 * that was filled before the day is still fresh then, it begins with a fill; and where no batch made before the day is still fresh either, that is no sooner
 * than a rig has made its shortest batch in the rig's own hours of the day. Only a load filled before the day began may be missing there, and there is at most one such.
 */
final class PlanterDays {
    private static final int HALVINGS = 18;

    private final CompiledSeason season;
    private final WorkingTime time;
    private final OvernightLoads overnight;
    private final List<Integer> grounds;

    PlanterDays(CompiledSeason season, List<FieldGroup> groups) {
        this.season = season;
        time = new WorkingTime(season);
        overnight = new OvernightLoads(season, time);
        grounds = groups.stream()
                .flatMap(group -> group.samples().stream())
                .distinct()
                .toList();
    }

    /** Whether a planter may begin a day with a load in its tank. */
    boolean mayBeginLoaded(int planter, int day) {
        return overnight.mayBeKept(planter, day);
    }

    /** Whether all that is planted on a day comes of whole loads filled on it. */
    boolean isOfWholeLoads(int planter, int day) {
        return !mayBeginLoaded(planter, day) && !mayBeginLoaded(planter, day + 1);
    }

    /** Working time of a day between the moment from which a planter may be filled and the last at which it may plant anything, s. */
    int hoursS(int planter, int day) {
        int start = day * DAY_S;
        int until = grounds.stream()
                .mapToInt(field -> time.plantableUntil(planter, field, day))
                .max()
                .orElse(start);
        return mayBeginLoaded(planter, day)
                ? time.planterS(planter, start, until)
                : time.planterS(planter, Math.max(start, firstMix(planter, day)), until);
    }

    private int firstMix(int planter, int day) {
        int from = time.planterFrom(planter, day * DAY_S);
        int first = Integer.MAX_VALUE;
        for (int rig = 0; rig < season.season().rigs().size(); rig++) {
            if (isServedBy(planter, rig)) {
                first = Math.min(first, firstBatch(rig, from, (day + 1) * DAY_S));
            }
        }
        return first;
    }

    private boolean isServedBy(int planter, int rig) {
        String id = season.season().rigs().get(rig).id();
        return season.season().applicators().get(planter).on().stream().allMatch(id::equals);
    }

    /** When a rig can have made a batch at the soonest that is still fresh at a moment or later. */
    private int firstBatch(int rig, int freshAt, int end) {
        Rig itself = season.season().rigs().get(rig);
        int batchS = Math.min(itself.leastBatchTimeS(), itself.batchTimeS());
        int from = Math.max(0, freshAt - season.season().longestHoldS() - batchS);
        if (from == 0 && season.season().standing().isPresent()) {
            return 0;
        }
        int tooSoon = from;
        int madeBy = end;
        for (int step = 0; step < HALVINGS && tooSoon < madeBy; step++) {
            int middle = (tooSoon + madeBy) >>> 1;
            if (time.rigS(rig, from, middle) >= batchS) {
                madeBy = middle;
            } else {
                tooSoon = middle + 1;
            }
        }
        return tooSoon;
    }
}

package freshfurrow.model.timeline.actual;

import freshfurrow.model.season.Machine;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.List;

/**
 * How long things take as they turn out in one simulated season. They follow from its number, the machine's id, the day and when they begin: whatever
 * else differs between two seasons of one number, the same machine is as fast in both, and breaks down at the same times.
 */
public final class ActualTimes {
    private final Variation[] rigBatch;
    private final Variation[] rigTransfer;
    private final Variation[] rigDrive;
    private final Variation[] planterDrive;
    private final Variation[] planting;
    private final DownTimes[] rigDown;
    private final DownTimes[] planterDown;

    /** What varies, each with random numbers of its own. */
    private enum Kind {
        BATCH(1),
        TRANSFER(2),
        DRIVE(3),
        PLANTING(4),
        DOWN(5);

        private final int key;

        Kind(int key) {
            this.key = key;
        }
    }

    /** Times of a season whose times vary as {@code spread} says, by the number of a simulated season. */
    public ActualTimes(SeasonTables tables, TimeSpread spread, long number) {
        int days = tables.season().days();
        List<? extends Machine> rigs = tables.season().rigs();
        List<? extends Machine> planters = tables.season().applicators();
        rigBatch = variations(rigs, spread.batch(), Kind.BATCH, number, days);
        rigTransfer = variations(rigs, spread.transfer(), Kind.TRANSFER, number, days);
        rigDrive = variations(rigs, spread.drive(), Kind.DRIVE, number, days);
        planterDrive = variations(planters, spread.drive(), Kind.DRIVE, number, days);
        planting = variations(planters, spread.planting(), Kind.PLANTING, number, days);
        rigDown = new DownTimes[rigs.size()];
        for (int r = 0; r < rigDown.length; r++) {
            long key = key(number, rigs.get(r), Kind.DOWN);
            rigDown[r] = DownTimes.of(spread.breakdowns(), tables.rigs().hours(r), key, days);
        }
        planterDown = new DownTimes[planters.size()];
        for (int p = 0; p < planterDown.length; p++) {
            long key = key(number, planters.get(p), Kind.DOWN);
            planterDown[p] = DownTimes.of(spread.breakdowns(), tables.planters().hours(p), key, days);
        }
    }

    private static Variation[] variations(
            List<? extends Machine> machines, double spread, Kind kind, long number, int days) {
        return machines.stream()
                .map(machine -> new Variation(spread, key(number, machine, kind), days))
                .toArray(Variation[]::new);
    }

    private static long key(long number, Machine machine, Kind kind) {
        return KeyedRandom.key(KeyedRandom.key(number, machine.id().hashCode()), kind.key);
    }

    /** When a batch is done that begins at {@code s} and by the season takes {@code plannedS}. */
    public int batchEnd(int rig, int s, int plannedS) {
        return rigDown[rig].end(s, times(rigBatch[rig], s, plannedS));
    }

    /** When a transfer is done that begins at {@code s}. */
    public int transferEnd(int rig, int s, int plannedS) {
        return rigDown[rig].end(s, times(rigTransfer[rig], s, plannedS));
    }

    /** When a drive of a rig ends that begins at {@code s}. */
    public int rigDriveEnd(int rig, int s, int plannedS) {
        return rigDown[rig].end(s, times(rigDrive[rig], s, plannedS));
    }

    /** When other work of a rig is done that begins at {@code s}; only breakdowns make it longer. */
    public int rigWorkEnd(int rig, int s, int plannedS) {
        return rigDown[rig].end(s, plannedS);
    }

    /** The first moment at or after {@code s} at which a rig is not down. */
    public int rigUpFrom(int rig, int s) {
        return rigDown[rig].upFrom(s);
    }

    /** When a drive of a planter ends that begins at {@code s}. */
    public int planterDriveEnd(int planter, int s, int plannedS) {
        return planterDown[planter].end(s, times(planterDrive[planter], s, plannedS));
    }

    /** By what its field capacity is to be multiplied for all that it plants out of a load that it has from {@code s} on. */
    public double pace(int planter, int s) {
        return 1 / planting[planter].factor(s / Calendars.DAY_S, s);
    }

    /** The first moment at or after {@code s} at which a planter is not down. */
    public int planterUpFrom(int planter, int s) {
        return planterDown[planter].upFrom(s);
    }

    /** When a planter that works at {@code s} breaks down next; {@link Calendar#NEVER} when it does not. */
    public int planterDownNext(int planter, int s) {
        return planterDown[planter].nextDown(s);
    }

    private static int times(Variation variation, int s, int plannedS) {
        return (int) Math.ceil(variation.factor(s / Calendars.DAY_S, s) * plannedS);
    }
}

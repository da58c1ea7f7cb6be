package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.calendar.MachineHours;
import freshfurrow.model.timeline.calendar.Overtime;
import java.util.Arrays;
import java.util.List;

/** Planters: how fast they plant and drive, what their tanks hold, when and where they may plant. By index in the season's order. */
public final class PlanterTable {
    private static final int OWN = -1;

    private final FieldTable fields;
    /** By planter, the rig that it is mounted on. */
    private final int[] on;

    private final double[] capacityDm2PerS;
    private final double[] leastFill;
    private final int[] fillSetupS;
    private final int[] moveTimeS;
    private final int[] flushS;
    private final int[] longestWaitS;
    private final double[] sPerM;
    private final MachineHours[] machineHours;
    private final Calendar[] hours;
    /** By planter and ground: few, so that they stay in the cache. */
    private final Calendar[][] plantable;

    /** The same in hours in which it may not spray, too. */
    private final Calendar[][] dry;

    /** By planter and ground. */
    private final Overtime[][] overtime;

    private final boolean[][] allowed;
    /** By planter and recipe. */
    private final long[][] tankDm2;

    PlanterTable(Season season, Calendars calendars, FieldTable fields, RecipeTable recipes) {
        this.fields = fields;
        List<Applicator> planters = season.applicators();
        capacityDm2PerS = planters.stream()
                .mapToDouble(planter -> planter.fieldCapacityM2PerS() * 100)
                .toArray();
        leastFill = planters.stream().mapToDouble(Applicator::leastFill).toArray();
        fillSetupS = planters.stream().mapToInt(Applicator::fillSetupS).toArray();
        flushS = planters.stream().mapToInt(Applicator::flushS).toArray();
        moveTimeS = planters.stream().mapToInt(Applicator::moveTimeS).toArray();
        longestWaitS = planters.stream()
                .mapToInt(planter -> planter.longestWaitS().orElse(Integer.MAX_VALUE))
                .toArray();
        sPerM = planters.stream()
                .mapToDouble(planter -> 1 / planter.roadSpeedMPerS())
                .toArray();
        on = planters.stream().mapToInt(planter -> on(season, planter)).toArray();
        machineHours = new MachineHours[planters.size()];
        for (int p = 0; p < machineHours.length; p++) {
            machineHours[p] = on[p] == OWN
                    ? calendars.machine(planters.get(p))
                    : calendars.mounted(planters.get(p), season.rigs().get(on[p]));
        }
        hours = Arrays.stream(machineHours).map(MachineHours::work).toArray(Calendar[]::new);
        plantable = new Calendar[planters.size()][fields.groundCount()];
        dry = new Calendar[planters.size()][fields.groundCount()];
        overtime = new Overtime[planters.size()][fields.groundCount()];
        allowed = new boolean[planters.size()][fields.count()];
        tankDm2 = new long[planters.size()][recipes.count()];
        for (int p = 0; p < planters.size(); p++) {
            Applicator planter = planters.get(p);
            for (int g = 0; g < fields.groundCount(); g++) {
                dry[p][g] = calendars.planting(hours[p], WorkHours.ALWAYS, fields.groundOf(g));
                plantable[p][g] = calendars.planting(hours[p], planter.applyHours(), fields.groundOf(g));
                overtime[p][g] = calendars.overtime(planter, plantable[p][g], fields.groundOf(g));
            }
            for (int f = 0; f < fields.count(); f++) {
                allowed[p][f] = season.fields().get(f).allows(planter);
            }
            for (int r = 0; r < recipes.count(); r++) {
                tankDm2[p][r] = recipes.areaOfMix(Scale.ml(planter.tankL()), r);
            }
        }
    }

    private static int on(Season season, Applicator planter) {
        return planter.on().map(id -> season.rigs().indexOf(season.rig(id))).orElse(OWN);
    }

    /** Whether it is mounted on a rig: then it is that rig. */
    public boolean isMounted(int planter) {
        return on[planter] != OWN;
    }

    /** The rig that it is mounted on; meaningless when it is not. */
    public int rig(int planter) {
        return on[planter];
    }

    /** Whether a rig may serve it. */
    public boolean isServedBy(int planter, int rig) {
        return on[planter] == OWN || on[planter] == rig;
    }

    public int count() {
        return hours.length;
    }

    /** Field capacity. */
    public double capacityDm2PerS(int planter) {
        return capacityDm2PerS[planter];
    }

    /** Share of its tank below which a fill has to finish something. */
    double leastFill(int planter) {
        return leastFill[planter];
    }

    /** For each fill besides the pumping, s. */
    public int fillSetupS(int planter) {
        return fillSetupS[planter];
    }

    /** How long it waits for a rig before it goes on without extract, s of its working time. */
    public int longestWaitS(int planter) {
        return longestWaitS[planter];
    }

    /** To flush its lines, s. */
    public int flushS(int planter) {
        return flushS[planter];
    }

    /** Move time and the drive of a way, s. */
    public int moveS(int planter, int metres) {
        return moveTimeS[planter] + driveS(planter, metres);
    }

    /** s. */
    public int driveS(int planter, int metres) {
        return (int) Math.ceil(metres * sPerM[planter]);
    }

    /** When it works, without what its days end with. */
    public Calendar hours(int planter) {
        return hours[planter];
    }

    /** The same, and when it is there. */
    public MachineHours machineHours(int planter) {
        return machineHours[planter];
    }

    /** When it may plant a field, window apart. */
    public Calendar plantable(int planter, int field) {
        return plantable[planter][fields.ground(field)];
    }

    /** Whether a field is dry enough at a moment of its hours, window and spray hours apart. */
    public boolean isDry(int planter, int field, int s) {
        return dry[planter][fields.ground(field)].holds(s);
    }

    /** How long it may go on planting a field past its hours. */
    public Overtime overtime(int planter, int field) {
        return overtime[planter][fields.ground(field)];
    }

    /** Whether it may plant a field. */
    public boolean allows(int planter, int field) {
        return allowed[planter][field];
    }

    /** The largest area whose mix its tank holds. */
    public long tankDm2(int planter, int recipe) {
        return tankDm2[planter][recipe];
    }
}

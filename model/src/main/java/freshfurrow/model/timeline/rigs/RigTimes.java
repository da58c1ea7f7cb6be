package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.RecipeTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** When rigs get where, and when they and planters have time for one another. */
public final class RigTimes {
    private final RecipeTable recipes;
    private final FieldTable fields;
    private final PlaceTable places;
    private final PlanterTable planters;
    private final RigTable rigs;
    private final RigStates states;

    public RigTimes(SeasonTables tables, RigStates states) {
        this.recipes = tables.recipes();
        this.fields = tables.fields();
        this.places = tables.places();
        this.planters = tables.planters();
        this.rigs = tables.rigs();
        this.states = states;
    }

    /** When a rig may begin to get ready for a load asked for at a time, s. */
    public int freeS(int rig, int needS) {
        return Math.max(states.freeS(rig), rigs.readyFromS(rig, needS));
    }

    public int driveS(int rig, int from, int to) {
        return rigs.driveS(rig, places.metres(from, to));
    }

    /** When a rig is at a place if it sets off at {@code t} or as soon after as its hours and the ground there allow. */
    public int arrival(int rig, int from, int to, int t) {
        return from == to ? t : arrivalAfter(rig, driveS(rig, from, to), to, t);
    }

    /** The same of a drive that takes so long. */
    int arrivalAfter(int rig, int driveS, int to, int t) {
        return fields.setOff(rigs.hours(rig), to, t, driveS) + driveS;
    }

    /** When a rig may be at a place at the latest, by {@code t}, after a drive that takes so long. */
    int latestArrival(int rig, int driveS, int to, int t) {
        return fields.latestArrival(rigs.hours(rig), to, t, driveS);
    }

    /** To let out the mix on board, s: at the rate of a transfer. */
    int dumpS(int rig) {
        return rigs.pumpS(rig, recipes.mixMl(states.mixDm2(rig), states.mixRecipe(rig)));
    }

    /** Setup and pumping of a load, s; a machine that is mounted on the rig takes no pumping. */
    public int transferS(int planter, int rig, int recipe, long dm2) {
        int pumpS = planters.isMounted(planter) ? 0 : rigs.pumpS(rig, recipes.mixMl(dm2, recipe));
        return planters.fillSetupS(planter) + pumpS;
    }

    /** The first moment at or after {@code t} at which a transfer of {@code duration} fits both machines' hours. */
    public int fitTransfer(int planter, int rig, int t, int duration) {
        Calendar planterHours = planters.hours(planter);
        Calendar rigHours = rigs.hours(rig);
        int s = planterHours.earliest(t, duration);
        while (planterHours != rigHours && s < NEVER) {
            int later = rigHours.earliest(s, duration);
            if (later == s) {
                return s;
            }
            s = planterHours.earliest(later, duration);
            if (later == s) {
                return s;
            }
        }
        return s;
    }
}

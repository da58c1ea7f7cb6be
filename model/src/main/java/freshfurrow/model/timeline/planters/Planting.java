package freshfurrow.model.timeline.planters;

import freshfurrow.model.timeline.actual.ActualTimes;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.state.Tally;
import freshfurrow.model.timeline.tables.Beginning;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Plants out of loads for real. */
public final class Planting {
    private final SeasonTables tables;
    private final State state;
    private final Walk walk;
    private final Flushing flushing;
    private final Foreseen foreseen;

    public Planting(SeasonTables tables, State state, Walk walk, Flushing flushing, Foreseen foreseen) {
        this.tables = tables;
        this.state = state;
        this.walk = walk;
        this.flushing = flushing;
        this.foreseen = foreseen;
    }

    /**
     * Plants out of a load that is in the tank from {@code t} on, and returns the area planted.
     *
     * @param plantBy nothing is planted after this, s
     * @param useBy when the hold time is over, s
     */
    public long plant(int planter, int t, int recipe, long loadDm2, int plantBy, int useBy) {
        ActualTimes actual = state.actual();
        if (actual != null) {
            plantActually(actual, planter, t, recipe, loadDm2, useBy);
        } else if (state.isTold() || !walk.isOf(t, loadDm2, plantBy)) {
            if (state.isTold()) {
                walk.tell(state.journal());
            }
            walk.begin(planter, state.planters().place(planter), t);
            walk.plant(planter, recipe, loadDm2, plantBy);
            walk.tellNobody();
        }
        takeOver(planter, true);
        long planted = walk.tally().plantedDm2();
        if (planted > 0) {
            flushing.applied(planter, recipe, walk.steps().lastPlantedS());
            state.tally().margin(tables.clock().between(walk.timeS(), useBy));
        }
        return planted;
    }

    /** Plants at the pace that it turns out to have, and uses the reserve up if need be. */
    private void plantActually(ActualTimes actual, int planter, int t, int recipe, long loadDm2, int useBy) {
        int place = state.planters().place(planter);
        walk.begin(planter, place, t);
        walk.turnsOut(planter, actual, false);
        walk.plant(planter, recipe, loadDm2, useBy);
        int wouldBeDone = walk.timeS();
        foreseen.heard(planter);
        boolean breaksDown = actual.planterUpFrom(planter, t) > t || actual.planterDownNext(planter, t) < wouldBeDone;
        if (breaksDown) {
            int down = actual.planterUpFrom(planter, t) > t ? t : actual.planterDownNext(planter, t);
            foreseen.brokeDown(planter, down, wouldBeDone);
        }
        if (breaksDown || state.isTold()) {
            if (state.isTold()) {
                walk.tell(state.journal());
            }
            walk.begin(planter, place, t);
            walk.turnsOut(planter, actual, true);
            walk.plant(planter, recipe, loadDm2, useBy);
            walk.tellNobody();
        }
    }

    /** What of the next field {@link #plantWithout} would plant for a planter that stands at a place, dm2. */
    public long dm2Without(int planter, int place, int t, int untilS) {
        walk.begin(planter, place, t);
        return walk.plantWithout(planter, untilS);
    }

    /** Plants what is left of the next field, from one time to another at the latest, without extract. */
    public void plantWithout(int planter, int t, int untilS) {
        if (state.isTold()) {
            walk.tell(state.journal());
        }
        ActualTimes actual = state.actual();
        int from = actual == null ? t : Math.max(t, state.planters().timeS(planter));
        walk.begin(planter, state.planters().place(planter), from);
        if (actual != null) {
            walk.turnsOut(planter, actual, true);
        }
        boolean any = walk.plantWithout(planter, untilS) > 0;
        walk.tellNobody();
        walk.forget();
        takeOver(planter, false);
        if (!any) {
            int seasonEnd = tables.season().days() * Calendars.DAY_S;
            int tried = Math.max(state.planters().timeS(planter), Math.min(untilS, seasonEnd));
            state.planters().stand(planter, walk.place(), tried);
        }
    }

    private void takeOver(int planter, boolean applies) {
        ActualTimes actual = state.actual();
        int free = actual == null ? walk.timeS() : actual.planterUpFrom(planter, walk.timeS());
        state.planters().stand(planter, walk.place(), free);
        state.planters().next(planter, walk.index(), walk.leftDm2());
        walk.tally().addTo(state.tally());
        walk.steps().tell(planter, state.days(), state.hours(), applies);
    }

    /** Plants what is in a planter's tank to begin with; what would be too old, or is of no use, is let out. */
    void plantTank(int planter) {
        Beginning tank = tables.beginning();
        int recipe = tank.tankRecipe(planter);
        long dm2 = tank.tankDm2(planter);
        int useBy = tank.tankDeadlineS(planter);
        if (state.isTold()) {
            state.journal().carried(planter, recipe, tables.recipes().mixMl(dm2, recipe), useBy);
        }
        walk.forget();
        long planted = plant(planter, tank.planterFreeS(planter), recipe, dm2, useBy, useBy);
        if (planted < dm2) {
            long leftMl = tables.recipes().mixMl(dm2, recipe) - tables.recipes().mixMl(planted, recipe);
            state.tally().add(Tally.DUMPED_ML, leftMl);
            state.tally().add(Tally.DUMPED_MG, tables.recipes().compostMg(dm2 - planted, recipe));
        }
    }
}

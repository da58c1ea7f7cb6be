package freshfurrow.solver.estimate;

import freshfurrow.model.goals.Counters;

/**
 * Counters of which an estimate does not know some. Each counter of a plan is either left for an estimate to answer or is one of those here, so
 * that whoever adds a counter has to say which.
 */
interface KnownInPart extends Counters {
    /** What is said of counters that are not known. */
    int unknown();

    /** How often rigs go for water depends on when they are where. */
    @Override
    default int waterTrips() {
        return unknown();
    }

    /** How often rigs fetch compost does, too. */
    @Override
    default int compostTrips() {
        return unknown();
    }

    /** Taken for the same whatever the lists. */
    @Override
    default long waitS() {
        return unknown();
    }

    /** On which days a field is planted is guessed, not played out. */
    @Override
    default int scraps() {
        return unknown();
    }

    /** When machines set off is not looked at. */
    @Override
    default int callOuts() {
        return unknown();
    }

    /** When planting ends on a day is not looked at. */
    @Override
    default long overtimeS() {
        return unknown();
    }

    /** How loads end is not looked at. */
    @Override
    default long dumpedMg() {
        return unknown();
    }

    /** How batches are made is not looked at. */
    @Override
    default long compostMg() {
        return unknown();
    }

    /** Nor how much rigs draw. */
    @Override
    default long drawnMl() {
        return unknown();
    }

    /** What rigs drive is not known. */
    @Override
    default long driveM() {
        return unknown();
    }

    /** When days begin and end is not looked at. */
    @Override
    default long workS() {
        return unknown();
    }
}

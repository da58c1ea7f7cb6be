package freshfurrow.model.compare;

/** What variants are compared by. Of all but the rigs' use, less is better. */
public enum Measure {
    FINISH,
    LATE,
    UNSERVED,
    FILLS,
    WATER_TRIPS,
    WAIT,
    RIG_USE,
    DUMPED,
    WORK,
    DRIVE;

    /** The figure of a spring, in the unit that {@link SpringFigures} gives. */
    public double of(SpringFigures spring) {
        return switch (this) {
            case FINISH -> spring.finishS();
            case LATE -> spring.lateHaDays();
            case UNSERVED -> spring.unservedHa();
            case FILLS -> spring.fills();
            case WATER_TRIPS -> spring.waterTrips();
            case WAIT -> spring.waitH();
            case RIG_USE -> spring.rigUse();
            case DUMPED -> spring.dumpedKg();
            case WORK -> spring.workH();
            case DRIVE -> spring.driveKm();
        };
    }

    /** Whether less of it is better; of the others neither is. */
    public boolean lessIsBetter() {
        return this != RIG_USE;
    }
}

package freshfurrow.model.compare;

import java.util.Arrays;
import java.util.List;

/** What variants are compared by. */
public enum Measure {
    FINISH,
    LATE,
    UNSERVED,
    TREATED,
    FILLS,
    WATER_TRIPS,
    WAIT,
    RIG_USE,
    STALE,
    DUMPED,
    WORK,
    DRIVE;

    /** The figure of a spring, in the unit that {@link SpringFigures} gives. */
    public double of(SpringFigures spring) {
        return switch (this) {
            case FINISH -> spring.finishS();
            case LATE -> spring.lateHaDays();
            case UNSERVED -> spring.unservedHa();
            case TREATED -> spring.treatedShare();
            case FILLS -> spring.fills();
            case WATER_TRIPS -> spring.waterTrips();
            case WAIT -> spring.waitH();
            case RIG_USE -> spring.rigUse();
            case STALE -> spring.staleLoads();
            case DUMPED -> spring.dumpedKg();
            case WORK -> spring.workH();
            case DRIVE -> spring.driveKm();
        };
    }

    /** Those that tell something: some do only where any variant may plant without extract, or where times vary. */
    public static List<Measure> of(boolean untreated, boolean timesVary) {
        return Arrays.stream(values())
                .filter(measure -> (untreated || measure != TREATED) && (timesVary || measure != STALE))
                .toList();
    }
}

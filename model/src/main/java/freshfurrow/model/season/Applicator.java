package freshfurrow.model.season;

import java.util.Optional;
import java.util.OptionalInt;

/** A machine that puts finished mix on fields, out of a tank that a rig fills. */
public sealed interface Applicator extends Machine permits Planter, Sprayer {
    /** Share of the tank below which a fill has to finish something, where nothing is said: ours, no source. */
    double USUAL_LEAST_FILL = 0.1;

    /** What it does to fields. */
    Work work();

    /** What its tank takes, L, above 0. */
    double tankL();

    /** No smaller part of its tank is filled but to finish something, 0 to 1. */
    double leastFill();

    /** To stop, couple and uncouple for a fill, s, 0 or more. */
    int fillSetupS();

    /** To fold, unfold and pass gates, once per change of field, s, 0 or more. */
    int moveTimeS();

    /**
     * How long past the end of a day's last hours it may plant where that finishes the field or uses up the load, s, 0 or more; never past
     * midnight.
     */
    int overtimeS();

    /** To flush its lines after the last mix of a day and before mix of another recipe, s, 0 or more. */
    int flushS();

    /**
     * How long it waits for a rig, s of its working time, 0 or more, before it goes on without extract where that is allowed; empty when for
     * as long as it takes.
     */
    OptionalInt longestWaitS();

    /** Effective field capacity, m2/s, above 0. */
    double fieldCapacityM2PerS();

    /** When, in its hours, mix may be put on fields. */
    WorkHours applyHours();

    /** Id of the rig that it is mounted on, so that it is that rig; empty when it is a machine of its own. */
    Optional<String> on();

    /** This one with other hours. */
    Applicator withHours(WorkHours other);

    /** This one without setup, moves and flushes, working and driving at a speed of so many m/s, above 0. */
    Applicator withoutDelay(double mPerS);
}

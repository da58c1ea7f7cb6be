package freshfurrow.solver.lived;

import freshfurrow.model.season.GroundRecord;

/** The springs to live through. Safe for several threads at once; the same number always gives the same spring. */
@FunctionalInterface
public interface SpringSource {
    /** What the weather of a spring does to the ground. */
    GroundRecord spring(int number);

    /** By which number the times of a spring are drawn, where they vary: for all variants the same. */
    default long times(int number) {
        return number;
    }
}

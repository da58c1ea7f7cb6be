package freshfurrow.model.plan;

import java.time.LocalDateTime;

/** Is shown everything in a plan that can be checked by itself, with its place in the plan file. */
interface PlanVisitor {
    /** Where something stands in the file, such as {@code loads[3].litres}; worked out only when it is asked for. */
    @FunctionalInterface
    interface Where {
        String path();

        default Where then(String key) {
            return () -> path() + key;
        }
    }

    /** What an id stands for. */
    enum Named {
        FIELD("field"),
        LEFT_FIELD("field"),
        PLACE("place"),
        WATER_POINT("water point"),
        RECIPE("recipe"),
        LOT("compost lot"),
        PLANTER("planter"),
        RIG("rig"),
        MACHINE("planter or rig"),
        LOAD("load"),
        BATCH("batch");

        private final String noun;

        Named(String noun) {
            this.noun = noun;
        }

        String noun() {
            return noun;
        }
    }

    /** An id of something that has to be there. */
    default void name(Named kind, String id, Where where) throws PlanFileException {}

    /** An amount, 0 or more. */
    default void figure(double figure, Where where) throws PlanFileException {}

    /** What a tank, a vehicle or a bucket holds, above 0. */
    default void size(double size, Where where) throws PlanFileException {}

    /** A time of the season that was planned. */
    default void time(LocalDateTime time, Where where) throws PlanFileException {}

    /** What a planter or a rig does. */
    default void activity(Activity activity, Named machine, Where where) throws PlanFileException {}
}

package freshfurrow.model.plan;

import freshfurrow.model.plan.PlanVisitor.Named;

/**
 * Is told what an activity has besides its times; of what it does not ask for it hears nothing.
 *
 * @param <X> what it throws when a part is wrong
 */
public interface ActivityParts<X extends Exception> {
    /** The name of something of the season or of the plan. */
    default void name(Name part, String id) throws X {}

    /** How much, in the unit of the part. */
    default void amount(Amount part, double amount) throws X {}

    default void why(WaitReason why) throws X {}

    /** A part of an activity. */
    sealed interface Part permits Name, Amount, Why {
        /** Its key in a plan file. */
        String key();
    }

    /** A part that names something. */
    enum Name implements Part {
        FROM("from", Named.PLACE),
        TO("to", Named.PLACE),
        AT("at", Named.PLACE),
        WATER_POINT("at", Named.WATER_POINT),
        FIELD("field", Named.LEFT_FIELD),
        LOAD("load", Named.LOAD),
        LOT("lot", Named.LOT),
        BATCH("batch", Named.BATCH);

        private final String key;
        private final Named named;

        Name(String key, Named named) {
            this.key = key;
            this.named = named;
        }

        @Override
        public String key() {
            return key;
        }

        Named named() {
            return named;
        }
    }

    /** A part that is a figure, 0 or more. */
    enum Amount implements Part {
        KM("km"),
        LITRES("litres"),
        KG("kg"),
        AREA_HA("areaHa");

        private final String key;

        Amount(String key) {
            this.key = key;
        }

        @Override
        public String key() {
            return key;
        }
    }

    /** The reason of a wait. */
    enum Why implements Part {
        WHY;

        @Override
        public String key() {
            return "why";
        }
    }
}

package freshfurrow.model.season;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import java.util.OptionalInt;

/**
 * How much goes into the furrow and how long it stays worth applying.
 *
 * @param mixLPerHa finished mix per area, L/ha, above 0
 * @param compostKgPerHa compost per area, kg/ha, above 0
 * @param holdS seconds from the end of a batch's extraction to its last drop, above 0
 * @param reserve of that, what is kept in hand when a load is planned, s, 0 or more; empty for a tenth of the hold time, at most half an hour
 */
public record Recipe(String id, double mixLPerHa, double compostKgPerHa, int holdS, OptionalInt reserve) {
    /** Ours, no source. */
    private static final int USUAL_PART_OF_HOLD = 10;

    private static final int MOST_USUAL_RESERVE_S = 30 * MINUTE_S;

    public Recipe {
        if (!(mixLPerHa > 0 && compostKgPerHa > 0 && holdS > 0) || reserve.orElse(0) < 0) {
            throw new IllegalArgumentException("recipe " + id
                    + " needs a mix rate, a compost rate and a hold time above 0, and a reserve that is not below 0");
        }
    }

    /** A load is planned so that its last drop is in the ground so long before its hold time is over, s; less than the hold time. */
    public int reserveS() {
        return Math.min(holdS - 1, reserve.orElse(Math.min(MOST_USUAL_RESERVE_S, holdS / USUAL_PART_OF_HOLD)));
    }

    /** This recipe with another hold time. */
    public Recipe withHoldS(int other) {
        return new Recipe(id, mixLPerHa, compostKgPerHa, other, reserve);
    }

    /** This recipe with a reserve of its own, s. */
    public Recipe withReserveS(int other) {
        return new Recipe(id, mixLPerHa, compostKgPerHa, holdS, OptionalInt.of(other));
    }
}

package freshfurrow.model.season;

/**
 * How much goes into the furrow and how long it stays worth applying.
 *
 * @param mixLPerHa finished mix per area, L/ha, above 0
 * @param compostKgPerHa compost per area, kg/ha, above 0
 * @param holdS seconds from the end of a batch's extraction to its last drop, above 0
 */
public record Recipe(String id, double mixLPerHa, double compostKgPerHa, int holdS) {
    public Recipe {
        if (!(mixLPerHa > 0 && compostKgPerHa > 0 && holdS > 0)) {
            throw new IllegalArgumentException(
                    "recipe " + id + " needs a mix rate, a compost rate and a hold time above 0");
        }
    }

    /** This recipe with another hold time. */
    public Recipe withHoldS(int other) {
        return new Recipe(id, mixLPerHa, compostKgPerHa, other);
    }
}

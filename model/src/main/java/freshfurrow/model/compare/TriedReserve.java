package freshfurrow.model.compare;

/**
 * A reserve that was tried for all recipes of a season.
 *
 * @param reserveS kept in hand of each load's hold time, 0 or more, s
 * @param compostKgPerHa what the season's fields need on average, above 0, kg/ha
 */
public record TriedReserve(int reserveS, double compostKgPerHa) {
    public TriedReserve {
        if (reserveS < 0 || !(compostKgPerHa > 0)) {
            throw new IllegalArgumentException("a reserve is 0 or more, and compost per area above 0");
        }
    }
}

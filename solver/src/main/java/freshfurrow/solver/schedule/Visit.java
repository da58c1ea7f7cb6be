package freshfurrow.solver.schedule;

/**
 * The planting of one field, with extract or without, to be put into one planter's list or none.
 *
 * @param entry by which it stands in the lists of a timeline
 * @param field its index in the season's fields
 */
public record Visit(int entry, int field) {
    public boolean isWithoutExtract() {
        return entry != field;
    }
}

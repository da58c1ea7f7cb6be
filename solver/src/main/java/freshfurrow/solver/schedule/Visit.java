package freshfurrow.solver.schedule;

/**
 * The planting of one field, to be put into one planter's list or none.
 *
 * @param field its index in the season's fields
 */
public record Visit(int field) {}

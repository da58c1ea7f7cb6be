package freshfurrow.solver.why;

import freshfurrow.solver.schedule.FieldLists;

/**
 * A place for one field in the lists, and how the season plays out with the field there.
 *
 * @param planter its index in the season's planters
 * @param index how many fields stand before it in that planter's list, 0 or more
 * @param lists with the field at that place, all other fields in their order
 */
public record Position(int planter, int index, FieldLists lists, Outcome outcome) {}

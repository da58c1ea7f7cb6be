package freshfurrow.model.timeline.journal;

import freshfurrow.model.timeline.state.Shortfall;

/**
 * What is left of a field that is not planted in whole.
 *
 * @param dm2 area, dm2
 * @param why what stood against it when the season was played out
 * @param sinceS from when on, s since the season's first midnight
 */
public record Left(int field, long dm2, Shortfall why, int sinceS) {}

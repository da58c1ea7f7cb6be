package freshfurrow.desk;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;

/**
 * A desk to be opened.
 *
 * @param port 0 for any that is free
 * @param shared whether others on the farm's own network may open it too, with a link of theirs
 */
public record DeskOrder(GivenSeason season, SeasonClock clock, int port, boolean shared) {}

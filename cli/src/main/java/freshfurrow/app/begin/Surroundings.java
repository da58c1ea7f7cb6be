package freshfurrow.app.begin;

import java.time.LocalDate;
import java.time.ZoneId;

/** When and where a season is begun, of which defaults are made. */
public record Surroundings(LocalDate today, ZoneId zone) {}

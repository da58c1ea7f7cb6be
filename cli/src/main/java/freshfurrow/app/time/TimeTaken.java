package freshfurrow.app.time;

import java.time.Duration;
import java.util.Map;

/**
 * What planning took by the clock.
 *
 * @param stages each that there was, in the order of work
 */
public record TimeTaken(Duration all, Map<Stage, Duration> stages) {}

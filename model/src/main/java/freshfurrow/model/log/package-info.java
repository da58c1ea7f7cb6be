/**
 * What was done in a season, as a log of facts, and what the facts add up to. No rule of how a season plays out belongs here,
 * and no file.
 */
@NullMarked
package freshfurrow.model.log;

import org.jspecify.annotations.NullMarked;

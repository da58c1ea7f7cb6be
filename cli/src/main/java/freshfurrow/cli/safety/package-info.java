/**
 * What can hurt someone in a day's work, told from a plan, with the published figures behind it. Facts in SI only: their
 * words are those of the text, and what to do about them is for local codes, makers' manuals and licensed practice.
 */
@NullMarked
package freshfurrow.cli.safety;

import org.jspecify.annotations.NullMarked;

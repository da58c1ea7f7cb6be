/**
 * What the application layer answers, in the words of a command line: results, and refusals with the option that helps. Prints
 * nothing, decides nothing.
 */
@NullMarked
package freshfurrow.cli.words;

import org.jspecify.annotations.NullMarked;

/** What a plan that was made again changes against the one before, and what to do in the next hours. All figures are the plans'. */
@NullMarked
package freshfurrow.cli.changes;

import org.jspecify.annotations.NullMarked;

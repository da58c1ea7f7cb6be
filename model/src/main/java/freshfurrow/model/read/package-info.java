/**
 * Files into a season, or into the list of all their problems. The only place that knows the season file's syntax.
 */
@NullMarked
package freshfurrow.model.read;

import org.jspecify.annotations.NullMarked;

/**
 * Files into a season or its log, or into the list of all their problems. The only place that knows the syntax of season file and log.
 */
@NullMarked
package freshfurrow.model.read;

import org.jspecify.annotations.NullMarked;

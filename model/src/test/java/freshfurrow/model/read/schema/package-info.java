/** The published schema of the season file held against the reader. */
@NullMarked
package freshfurrow.model.read.schema;

import org.jspecify.annotations.NullMarked;

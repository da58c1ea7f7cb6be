/**
 * A weather station's file into a record, or into all its problems, one for each kind of mistake. What the record means for a
 * season does not belong here.
 */
@NullMarked
package freshfurrow.model.read.station;

import org.jspecify.annotations.NullMarked;

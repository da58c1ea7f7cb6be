/**
 * What planters do: their lists of fields, the loads they ask for, the way through their fields out of one load. Who brings the load does
 * not belong here.
 */
@NullMarked
package freshfurrow.model.timeline.planters;

import org.jspecify.annotations.NullMarked;

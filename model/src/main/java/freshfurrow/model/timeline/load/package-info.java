/**
 * Serves one request for a fill: which rig brings how large a load. Only the service is seen from outside.
 */
@NullMarked
package freshfurrow.model.timeline.load;

import org.jspecify.annotations.NullMarked;

/**
 * What one rig does for a load, and when: driving, water, batches, transfer. First it is worked out, then it is done for real. Where the
 * mix comes from, which rig it is and how large the load is do not belong here.
 */
@NullMarked
package freshfurrow.model.timeline.rigs;

import org.jspecify.annotations.NullMarked;

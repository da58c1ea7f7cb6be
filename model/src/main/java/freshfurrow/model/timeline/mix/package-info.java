/**
 * Where the mix of a load comes from, made anew or on board, and what one rig answers when it is asked for a load of a size. The choice of
 * rig and size does not belong here.
 */
@NullMarked
package freshfurrow.model.timeline.mix;

import org.jspecify.annotations.NullMarked;

/**
 * The desk on the farm's own network: the links and codes by which phones open it, and the secret that lets a crew in day after day.
 */
@NullMarked
package freshfurrow.desk.share;

import org.jspecify.annotations.NullMarked;

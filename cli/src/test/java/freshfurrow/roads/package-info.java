/** Ways on small invented maps, worked by hand. */
@NullMarked
package freshfurrow.roads;

import org.jspecify.annotations.NullMarked;

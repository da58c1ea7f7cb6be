/**
 * What compost and water a season takes in so many springs of a hundred, and when. Springs are lived elsewhere; here they are only
 * counted.
 */
@NullMarked
package freshfurrow.model.supply;

import org.jspecify.annotations.NullMarked;

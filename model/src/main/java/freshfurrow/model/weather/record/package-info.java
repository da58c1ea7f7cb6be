/** Daily weather as it was written down or made: complete, or with days missing and short gaps filled. */
@NullMarked
package freshfurrow.model.weather.record;

import org.jspecify.annotations.NullMarked;

/** Where plans and what is made of them are written, whole or not at all. */
@NullMarked
package freshfurrow.app.output;

import org.jspecify.annotations.NullMarked;

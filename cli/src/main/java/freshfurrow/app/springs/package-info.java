/** A season in the springs of its weather record: its variants compared, what it uses. */
@NullMarked
package freshfurrow.app.springs;

import org.jspecify.annotations.NullMarked;

/** The season, the plan and the time that are meant, read and held against each other. */
@NullMarked
package freshfurrow.app.input;

import org.jspecify.annotations.NullMarked;

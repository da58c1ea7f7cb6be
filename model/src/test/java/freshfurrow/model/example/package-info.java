/** Seasons to try things on, and what is known of them for sure. Tests of other modules use it too; no tests live here. */
@NullMarked
package freshfurrow.model.example;

import org.jspecify.annotations.NullMarked;

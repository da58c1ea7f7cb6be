/**
 * What a season's log teaches of the figures in its season file: how long work took against how long the file lets it take, and how soon
 * ground bore machines after rain. Only what was logged counts, never what was planned.
 */
@NullMarked
package freshfurrow.model.learn;

import org.jspecify.annotations.NullMarked;

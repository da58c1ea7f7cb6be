/** Pages and sheets in a real browser, opened from a file with the network off. Runs in the verify phase. */
@NullMarked
package freshfurrow.cli.browser;

import org.jspecify.annotations.NullMarked;

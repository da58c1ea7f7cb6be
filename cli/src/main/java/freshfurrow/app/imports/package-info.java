/**
 * Fields read in from files that other programs wrote: maps of several formats, and tables with other headings. It says what it took
 * for what, and guesses nothing that it does not say. What a season is begun with is for {@code app/begin}.
 */
@NullMarked
package freshfurrow.app.imports;

import org.jspecify.annotations.NullMarked;

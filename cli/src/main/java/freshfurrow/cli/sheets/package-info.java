/**
 * Sheets that crews take along on paper: a page a day and machine, as one HTML file without script or network. Shows what the
 * plan says; figures and words are those of the text, and nothing here reads or writes files.
 */
@NullMarked
package freshfurrow.cli.sheets;

import org.jspecify.annotations.NullMarked;

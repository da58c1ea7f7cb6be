/**
 * What text of others must not do to those who read it: one place says which characters are never shown, one what a spreadsheet would
 * run. Nothing of seasons, plans or files belongs here.
 */
@NullMarked
package freshfurrow.model.text;

import org.jspecify.annotations.NullMarked;

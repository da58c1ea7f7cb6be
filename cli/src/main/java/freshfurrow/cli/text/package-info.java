/**
 * Plans and seasons as plain text in their people's units. Says what the records hold; times, sizes and sums of a season
 * are worked out elsewhere, and nothing here reads or writes files.
 */
@NullMarked
package freshfurrow.cli.text;

import org.jspecify.annotations.NullMarked;

/**
 * Changes of the files that people wrote, by position in their text: what an edit does not concern stays byte for byte, comments,
 * order, layout, quotes and line ends among it. Every changed text is read again, and given out only if it says what was meant;
 * otherwise the edit is refused. Nothing is read from or written to a disk here, and what a key may hold is for {@code read} to judge.
 */
@NullMarked
package freshfurrow.model.edit;

import org.jspecify.annotations.NullMarked;

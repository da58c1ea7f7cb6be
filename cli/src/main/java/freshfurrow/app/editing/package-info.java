/**
 * A season changed in its own files by those who work on it, with undo and redo: nothing that another window, editor or command wrote
 * meanwhile is lost. How an edit changes a text is for {@code model/edit}.
 */
@NullMarked
package freshfurrow.app.editing;

import org.jspecify.annotations.NullMarked;

/**
 * The commands: each reads its arguments, calls the model or the solver, and prints. No text layout and no rule of the
 * season belongs here.
 */
@NullMarked
package freshfurrow.cli.command;

import org.jspecify.annotations.NullMarked;

/**
 * The commands: each reads its arguments, asks the application layer, and prints. No text layout, no reading or writing of files and no
 * rule of the season belongs here.
 */
@NullMarked
package freshfurrow.cli.command;

import org.jspecify.annotations.NullMarked;

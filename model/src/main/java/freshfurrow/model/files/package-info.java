/**
 * The one place that writes files, for every command: nothing else makes, moves or deletes any, which {@code BordersTest} of the
 * command line holds. The rule, told to users in {@code docs/written-files.md}:
 *
 * <ul>
 *   <li>A file that is there is replaced only when its writer was asked to; a new one is made only where there is none, even when
 *       another program makes it at the same moment. A writer that saw what is there may ask that nothing else is replaced.
 *   <li>One writer of a folder at a time; the others wait.
 *   <li>What is replaced keeps its mode, and its owner and group where the system lets it.
 *   <li>Links are not followed, and only ordinary files are written: no device, pipe or folder.
 *   <li>All files of one command or none, each whole: written beside, forced to the disk, then renamed; when a rename fails, those
 *       before it are taken back.
 *   <li>Nothing is left behind: no lock, no temporary file, no empty folder. What a killed writer left, the next one sweeps away.
 * </ul>
 *
 * What the files say, and what to tell when they cannot be written, is for others.
 */
@NullMarked
package freshfurrow.model.files;

import org.jspecify.annotations.NullMarked;

/**
 * Facts into the file of a season's log: whole lines or none, one writer at a time. What a line may say is for the reader to judge.
 */
@NullMarked
package freshfurrow.model.write;

import org.jspecify.annotations.NullMarked;

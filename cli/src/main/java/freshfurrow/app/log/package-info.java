/** What was done in a season: written into its log, listed, and followed from compost to field. What an entry may say is for the reader. */
@NullMarked
package freshfurrow.app.log;

import org.jspecify.annotations.NullMarked;

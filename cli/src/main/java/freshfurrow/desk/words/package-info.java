/**
 * What the application layer refuses, in words for people who see a page and no command line.
 */
@NullMarked
package freshfurrow.desk.words;

import org.jspecify.annotations.NullMarked;

/** What can be done with a season, whichever door is asked: a command line, a page in a browser. Nothing here knows the doors. */
@NullMarked
package freshfurrow.app;

import org.jspecify.annotations.NullMarked;

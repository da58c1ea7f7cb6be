/**
 * The desk: a season worked on in a browser. A second door to the application layer, beside the command line. This package puts its
 * parts together, opens it and ends it.
 *
 * <p>No rule of a season, no figure that is worked out here, and no file that is read or written but through the application layer.
 */
@NullMarked
package freshfurrow.desk;

import org.jspecify.annotations.NullMarked;

/** The documents that come with the program, held to what they link and show. What commands print is held by {@code e2e}, as that needs the jar. */
@NullMarked
package freshfurrow.cli.documents;

import org.jspecify.annotations.NullMarked;

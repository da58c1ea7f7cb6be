/** A small season and a plan of it, worked out by hand, for the tests of what people see. */
@NullMarked
package freshfurrow.cli.example;

import org.jspecify.annotations.NullMarked;

/** The program's entry. Commands, and what people see of a plan, have packages of their own below. */
@NullMarked
package freshfurrow.cli;

import org.jspecify.annotations.NullMarked;

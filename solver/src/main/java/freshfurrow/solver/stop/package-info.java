/** When work ends before it is done: for a limit by the clock, or because someone said so. What is then handed out is for the work to say. */
@NullMarked
package freshfurrow.solver.stop;

import org.jspecify.annotations.NullMarked;

/** Work on several threads whose outcome does not depend on which thread is first. Knows nothing of seasons. */
@NullMarked
package freshfurrow.solver.threads;

import org.jspecify.annotations.NullMarked;

/**
 * Rough figures about a season that guide the search and never decide: how far, about how long, about which day, what is
 * near what. What people see never comes from here.
 */
@NullMarked
package freshfurrow.solver.estimate;

import org.jspecify.annotations.NullMarked;

/**
 * A plan as one page for a browser, with everything it needs in it. Hands over what the plan and its season hold; the
 * scripts among the resources draw it and add up, but work out no time, amount or rule of the season.
 */
@NullMarked
package freshfurrow.cli.page;

import org.jspecify.annotations.NullMarked;

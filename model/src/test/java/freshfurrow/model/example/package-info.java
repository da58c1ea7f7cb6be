/**
 * Invented seasons to try things on, and what is known of them for sure, for the tests of all modules. Checks of single rules
 * belong beside the rule.
 */
@NullMarked
package freshfurrow.model.example;

import org.jspecify.annotations.NullMarked;

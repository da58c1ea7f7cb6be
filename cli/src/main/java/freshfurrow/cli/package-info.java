/** The freshfurrow command: what people type and what they see. Parse, call, print; no rule of a season belongs here. */
@NullMarked
package freshfurrow.cli;

import org.jspecify.annotations.NullMarked;

/**
 * Cards to work by at the drum and at the planter: figures with the arithmetic that leads to them, in units of the trade. What is
 * worked out comes from the model; nothing here reads files or knows commands.
 */
@NullMarked
package freshfurrow.cli.card;

import org.jspecify.annotations.NullMarked;

/**
 * From a station's daily weather to the days on which the ground bears a planter: a daily budget of topsoil water, and the springs
 * of a record or made like it. Pure arithmetic in SI; how files are written is the business of {@code read}, and what closed
 * ground means for a plan that of {@code timeline}.
 */
@NullMarked
package freshfurrow.model.weather;

import org.jspecify.annotations.NullMarked;

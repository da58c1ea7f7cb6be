package freshfurrow.app.season;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Recipe;

/**
 * The largest load of a planter and a recipe that tank and hold time allow.
 *
 * @param areaHa that it plants, ha
 */
public record LargestLoad(Applicator planter, Recipe recipe, double areaHa) {}

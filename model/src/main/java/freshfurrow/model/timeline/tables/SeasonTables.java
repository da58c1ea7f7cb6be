package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendars;

/**
 * A season as tables of whole numbers, each made once, as those to come are made of those before. Fields, planters, rigs, water points
 * and recipes are indices in the season's order; areas are dm2, volumes mL, masses mg, times seconds since the season's first midnight,
 * distances m.
 *
 * @param clock changes of the clock that times of the season may cross
 */
public record SeasonTables(
        Season season,
        ClockChanges clock,
        PlaceTable places,
        RecipeTable recipes,
        FieldTable fields,
        PlanterTable planters,
        WaterTable water,
        RigTable rigs,
        CompostTable compost,
        LoadLimits loadLimits,
        Beginning beginning,
        Promised promised) {

    public static SeasonTables of(Season season) {
        Calendars calendars = new Calendars(season);
        PlaceTable places = new PlaceTable(season);
        RecipeTable recipes = new RecipeTable(season);
        FieldTable fields = new FieldTable(season, calendars, recipes);
        PlanterTable planters = new PlanterTable(season, calendars, fields, recipes);
        WaterTable water = new WaterTable(season, calendars, places);
        CompostTable compost = new CompostTable(season, places);
        RigTable rigs = new RigTable(season, calendars, recipes, water);
        Beginning beginning = new Beginning(season, places);
        return new SeasonTables(
                season,
                season.clockChanges(),
                places,
                recipes,
                fields,
                planters,
                water,
                rigs,
                compost,
                new LoadLimits(recipes, planters, rigs, beginning),
                beginning,
                new Promised(season));
    }

    /** Compost for all fields, less what is in mix that is made already, mg. */
    public long compostNeededMg() {
        long mg = 0;
        for (int field = 0; field < fields.count(); field++) {
            mg += recipes.compostMg(fields.areaDm2(field), fields.recipe(field));
        }
        for (int planter = 0; planter < planters.count(); planter++) {
            mg -= recipes.compostMg(beginning.tankDm2(planter), beginning.tankRecipe(planter));
        }
        for (int rig = 0; rig < rigs.count(); rig++) {
            mg -= recipes.compostMg(beginning.mixDm2(rig), beginning.mixRecipe(rig));
        }
        return mg;
    }
}

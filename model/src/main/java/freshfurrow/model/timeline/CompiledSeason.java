package freshfurrow.model.timeline;

import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Season;

/**
 * A season as tables of whole numbers, made once and shared by any number of timelines and threads. Fields, planters, rigs,
 * water points and recipes are indices in the season's order; areas are dm2, volumes mL, masses mg, times seconds since the
 * season's first midnight, distances m.
 */
public final class CompiledSeason {
    private final Season season;
    final int days;
    final ClockChanges clock;
    /** What a fill, a draw and a minute of waiting weigh. */
    final Goals goals;

    final PlaceTable places;
    final RecipeTable recipes;
    final FieldTable fields;
    final PlanterTable planters;
    final WaterTable water;
    final RigTable rigs;
    final CompostTable compost;
    final LoadLimits loadLimits;
    final Beginning beginning;
    final Promised promised;

    public static CompiledSeason of(Season season) {
        return new CompiledSeason(season);
    }

    private CompiledSeason(Season season) {
        this.season = season;
        days = season.days();
        clock = season.clockChanges();
        goals = season.goals();
        Calendars calendars = new Calendars(season);
        places = new PlaceTable(season);
        recipes = new RecipeTable(season);
        fields = new FieldTable(season, calendars, recipes);
        planters = new PlanterTable(season, calendars, fields, recipes);
        water = new WaterTable(season, calendars, places);
        rigs = new RigTable(season, calendars, recipes, water);
        compost = new CompostTable(season);
        beginning = new Beginning(season, places);
        loadLimits = new LoadLimits(recipes, planters, rigs, beginning);
        promised = new Promised(season);
    }

    public Season season() {
        return season;
    }

    public int fieldCount() {
        return fields.count();
    }

    public int planterCount() {
        return planters.count();
    }

    /** Whether the planter may plant the field. */
    public boolean allows(int planter, int field) {
        return planters.allows(planter, field);
    }

    /** All distances by road as they are played, in whole metres, without measuring any of them again. */
    public Distances roads() {
        return places.roads();
    }

    /** Distance by road between two fields, m, rounded up. */
    public int metresBetweenFields(int a, int b) {
        return places.metres(a, b);
    }

    /** Distance by road from where a planter stands to begin with to a field, m, rounded up. */
    public int metresFromStart(int planter, int field) {
        return places.metres(beginning.planterPlace[planter], field);
    }

    /** Days from the season's first day to the last day of the field's window; may lie outside the season. */
    public int windowLastDay(int field) {
        return fields.lastDay(field);
    }

    /** Days from the season's first day to the day the field's window opens, 0 or more. */
    public int windowFirstDay(int field) {
        return fields.openS(field) / Calendars.DAY_S;
    }

    /** Index of the field's recipe. */
    public int recipeIndex(int field) {
        return fields.recipe(field);
    }

    /** Days of the season. */
    public int days() {
        return days;
    }

    /** A planter's working time between two times, s. */
    public int workS(int planter, int fromS, int untilS) {
        return planters.hours(planter).work(fromS, untilS);
    }

    /** A planter's working time between two times in which a field, its window apart, may be planted, s. */
    public int plantableS(int planter, int field, int fromS, int untilS) {
        return planters.plantable(planter, field).work(fromS, untilS);
    }

    /** Whether a field was promised for the days ahead otherwise than to be begun by that planter on that day. */
    public boolean breaksPromise(int planter, int field, int day) {
        return promised.isBrokenBy(planter, field, day * Calendars.DAY_S);
    }

    /** The planter that a field was promised to for the days ahead; -1 when it was promised to none of the season. */
    public int promisedPlanter(int field) {
        return promised.planter(field);
    }

    /** Late weight of a field, thousandths. */
    public int lateWeightThousandths(int field) {
        return fields.lateWeight(field);
    }

    /** Area of a field, dm2. */
    public long areaDm2(int field) {
        return fields.areaDm2(field);
    }

    /**
     * The largest area that a planter can plant out of one load of a recipe, dm2: no more than its tank holds the mix for, and
     * no more than it plants in the hold time less its fill setup and the pumping at the fastest rig's rate. Batches older
     * than the transfer, moves and breaks make loads smaller.
     */
    public long largestLoadDm2(int planter, int recipe) {
        return loadLimits.byTank(planter, recipe);
    }

    /** No load is larger, dm2: {@link #largestLoadDm2} with a tank that lets in a thousandth more where that saves a fill. */
    public long mostOfALoadDm2(int planter, int recipe) {
        return loadLimits.withLeeway(planter, recipe);
    }

    /** The day on which the season begins to be played out, counted from its first: 0, unless it is already under way. */
    public int beginsOnDay() {
        return beginning.nowS / Calendars.DAY_S;
    }

    /** Area for which a planter has mix in its tank to begin with, dm2; 0 for none. */
    public long tankDm2(int planter) {
        return beginning.tankDm2[planter];
    }

    /** Recipe of the mix in a planter's tank to begin with; meaningless when there is none. */
    public int tankRecipe(int planter) {
        return beginning.tankRecipe[planter];
    }

    /** When the hold time of the mix in a planter's tank is over, s since the season's first midnight. */
    public int tankDeadlineS(int planter) {
        return beginning.tankDeadlineS[planter];
    }

    /** Area for which a rig has mix to begin with, dm2; 0 for none. */
    public long rigMixDm2(int rig) {
        return beginning.mixDm2[rig];
    }

    /** Recipe of the mix that a rig has to begin with; meaningless when it has none. */
    public int rigMixRecipe(int rig) {
        return beginning.mixRecipe[rig];
    }

    /** Water that is not in a mix on board a rig to begin with, mL. */
    public long rigWaterMl(int rig) {
        return beginning.waterMl[rig];
    }
}

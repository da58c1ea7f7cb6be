package freshfurrow.model.timeline;

import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.OptionalInt;

/**
 * A season as tables of whole numbers, made once and shared by any number of timelines and threads. Fields, planters, rigs,
 * water points and recipes are indices in the season's order; areas are dm2, volumes mL, masses mg, times seconds since the
 * season's first midnight, distances m.
 */
public final class CompiledSeason {
    private final SeasonTables tables;

    private CompiledSeason(Season season) {
        tables = SeasonTables.of(season);
    }

    public static CompiledSeason of(Season season) {
        return new CompiledSeason(season);
    }

    SeasonTables tables() {
        return tables;
    }

    public Season season() {
        return tables.season();
    }

    public int fieldCount() {
        return tables.fields().count();
    }

    /** Whether fields may be planted without extract. */
    public boolean mayGoWithout() {
        return tables.fields().mayGoWithout();
    }

    /** Whether a field may be planted without extract. */
    public boolean mayGoWithout(int field) {
        return tables.fields().mayGoWithout(field);
    }

    /** Whether all compost there is, or will be, in lots and on board, is less than all fields need beyond the mix that is made. */
    public boolean isShortOfCompost() {
        return tables.compost().totalMg() + tables.beginning().compostMg() < tables.compostNeededMg();
    }

    /** The entry of a list by which a field is to be planted without extract; else the field itself is its entry. */
    public int without(int field) {
        return tables.fields().without(field);
    }

    /** The field that an entry of a list names. */
    public int named(int entry) {
        return tables.fields().named(entry);
    }

    /** Whether the field of an entry of a list is to be planted without extract. */
    public boolean isWithout(int entry) {
        return tables.fields().isWithout(entry);
    }

    /** What it counts to plant a field without extract, thousandths. */
    public int extractWeightThousandths(int field) {
        return tables.fields().extractWeight(field);
    }

    public int planterCount() {
        return tables.planters().count();
    }

    /** Whether the planter may plant the field. */
    public boolean allows(int planter, int field) {
        return tables.planters().allows(planter, field);
    }

    /** All distances by road as they are played, in whole metres, without measuring any of them again. */
    public Distances roads() {
        return tables.places().roads();
    }

    /** Distance by road between two fields, m, rounded up. */
    public int metresBetweenFields(int a, int b) {
        return tables.places().metres(a, b);
    }

    /** Distance by road from where a planter stands to begin with to a field, m, rounded up. */
    public int metresFromStart(int planter, int field) {
        return tables.places().metres(tables.beginning().planterPlace(planter), field);
    }

    /** What a planter drives a way of so many metres in, without what a move takes besides, s. */
    public int driveS(int planter, int metres) {
        return tables.planters().driveS(planter, metres);
    }

    /** Days from the season's first day to the last day of the field's window; may lie outside the season. */
    public int windowLastDay(int field) {
        return tables.fields().lastDay(field);
    }

    /** Days from the season's first day to the day the field's window opens, 0 or more. */
    public int windowFirstDay(int field) {
        return tables.fields().openS(field) / Calendars.DAY_S;
    }

    /** Index of the field's recipe. */
    public int recipeIndex(int field) {
        return tables.fields().recipe(field);
    }

    /** Days of the season. */
    public int days() {
        return tables.season().days();
    }

    /** A planter's working time between two times, s. */
    public int workS(int planter, int fromS, int untilS) {
        return tables.planters().hours(planter).work(fromS, untilS);
    }

    /** A planter's working time between two times in which a field, its window apart, may be planted, s. */
    public int plantableS(int planter, int field, int fromS, int untilS) {
        return tables.planters().plantable(planter, field).work(fromS, untilS);
    }

    /** Whether a field that is begun on a day is begun on the one that it is fixed to. */
    public boolean isFixedTo(int field, int day) {
        return tables.fields().isFixedTo(field, day * Calendars.DAY_S);
    }

    /** The day that a field is fixed to be begun on, counted from the season's first; empty when that is not so. */
    public OptionalInt fixedDay(int field) {
        return tables.fields().fixedDay(field);
    }

    /** How many fields are fixed to a day. */
    public int fixedDays() {
        return tables.fields().fixedDays();
    }

    /** Index of a field's ground: the same for fields that are always too wet at the same times. */
    public int ground(int field) {
        return tables.fields().ground(field);
    }

    /** How many grounds differ. */
    public int groundCount() {
        return tables.fields().groundCount();
    }

    /** Whether a field was promised for the days ahead otherwise than to be begun by that planter on that day. */
    public boolean breaksPromise(int planter, int field, int day) {
        return tables.promised().isBrokenBy(planter, field, day * Calendars.DAY_S);
    }

    /** The planter that a field was promised to for the days ahead; -1 when it was promised to none of the season. */
    public int promisedPlanter(int field) {
        return tables.promised().planter(field);
    }

    /** Late weight of a field, thousandths. */
    public int lateWeightThousandths(int field) {
        return tables.fields().lateWeight(field);
    }

    /** Area of a field, dm2. */
    public long areaDm2(int field) {
        return tables.fields().areaDm2(field);
    }

    /**
     * The largest area that a planter can plant out of one load of a recipe, dm2: no more than its tank holds the mix for, and
     * no more than it plants in the hold time less its fill setup and the pumping at the fastest rig's rate. Batches older
     * than the transfer, moves and breaks make loads smaller.
     */
    public long largestLoadDm2(int planter, int recipe) {
        return tables.loadLimits().byTank(planter, recipe);
    }

    /** No load is larger, dm2: {@link #largestLoadDm2} with a tank that lets in a thousandth more where that saves a fill. */
    public long mostOfALoadDm2(int planter, int recipe) {
        return tables.loadLimits().withLeeway(planter, recipe);
    }

    /** The day on which the season begins to be played out, counted from its first: 0, unless it is already under way. */
    public int beginsOnDay() {
        return tables.beginning().day();
    }

    /** Area for which a planter has mix in its tank to begin with, dm2; 0 for none. */
    public long tankDm2(int planter) {
        return tables.beginning().tankDm2(planter);
    }

    /** Recipe of the mix in a planter's tank to begin with; meaningless when there is none. */
    public int tankRecipe(int planter) {
        return tables.beginning().tankRecipe(planter);
    }

    /** When the hold time of the mix in a planter's tank is over, s since the season's first midnight. */
    public int tankDeadlineS(int planter) {
        return tables.beginning().tankDeadlineS(planter);
    }

    /** Area for which a rig has mix to begin with, dm2; 0 for none. */
    public long rigMixDm2(int rig) {
        return tables.beginning().mixDm2(rig);
    }

    /** Recipe of the mix that a rig has to begin with; meaningless when it has none. */
    public int rigMixRecipe(int rig) {
        return tables.beginning().mixRecipe(rig);
    }

    /** Whether rigs fetch compost where it lies. */
    public boolean fetchesCompost() {
        return tables.compost().isFetched();
    }

    /** Compost on board a rig to begin with, where rigs fetch it, mg. */
    public long rigCompostMg(int rig) {
        return tables.beginning().compostMg(rig);
    }

    /** Water that is not in a mix on board a rig to begin with, mL. */
    public long rigWaterMl(int rig) {
        return tables.beginning().waterMl(rig);
    }
}

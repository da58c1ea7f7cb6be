package freshfurrow.solver.estimate;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A season as a planter would know it that never waits for a rig or for dry soil. Fields and planters are indices in the
 * season's order, days count from the season's first day, and a planter's clock is in seconds of its working hours since
 * then.
 */
public final class SeasonEstimate {
    /** In place of a field: where a planter stands to begin with. */
    public static final int START = -1;

    private final CompiledSeason season;
    private final List<Applicator> planters;
    private final double[] lateWeights;
    private final int[] workDays;
    private final double[] workPerDayS;

    public SeasonEstimate(CompiledSeason season) {
        this.season = season;
        Season given = season.season();
        planters = given.applicators();
        lateWeights = given.fields().stream().mapToDouble(Field::lateWeight).toArray();
        workDays = IntStream.range(0, given.days())
                .filter(day -> !given.closed().contains(given.first().plusDays(day)))
                .toArray();
        workPerDayS = planters.stream()
                .mapToDouble(planter -> planter.hours().without(planter.kept()).orElseThrow().spans().stream()
                        .mapToInt(SeasonEstimate::lengthS)
                        .sum())
                .toArray();
    }

    public int fieldCount() {
        return season.fieldCount();
    }

    public int planterCount() {
        return season.planterCount();
    }

    /** Metres by road between two fields. */
    public int metres(int from, int to) {
        return season.metresBetweenFields(from, to);
    }

    /** Day on which the field's window opens, 0 or more. */
    public int opens(int field) {
        return season.windowFirstDay(field);
    }

    /** Last day of the field's window; may lie outside the season. */
    public int closes(int field) {
        return season.windowLastDay(field);
    }

    /** Index of the field's recipe. */
    public int recipe(int field) {
        return season.recipeIndex(field);
    }

    public Drainage drainage(int field) {
        return season.season().fields().get(field).drainage();
    }

    /** Index of the field's ground: the same for fields that are always too wet at the same times. */
    public int ground(int field) {
        return season.ground(field);
    }

    /** Working seconds of a planter's day. */
    public double workPerDayS(int planter) {
        return workPerDayS[planter];
    }

    /** What a late day of the field counts, 0 or more. */
    public double lateWeight(int field) {
        return lateWeights[field];
    }

    /** Seconds to go from one field, or from {@link #START}, to another, folding and gates included. */
    public double moveS(int planter, int from, int to) {
        return planters.get(planter).moveTimeS() + driveS(planter, from, to);
    }

    /** Seconds to drive from one field, or from {@link #START}, to another. */
    public double driveS(int planter, int from, int to) {
        int metres = from == START ? season.metresFromStart(planter, to) : season.metresBetweenFields(from, to);
        return metres / planters.get(planter).roadSpeedMPerS();
    }

    /** Seconds to plant the field without a stop. */
    public double plantS(int planter, int field) {
        return season.areaDm2(field) / 100.0 / planters.get(planter).fieldCapacityM2PerS();
    }

    /** Reading of the planter's clock when a day begins. */
    public double clockAtStartOf(int day, int planter) {
        int at = Arrays.binarySearch(workDays, day);
        return workPerDayS[planter] * (at >= 0 ? at : -at - 1);
    }

    /** Reading of the planter's clock when the season begins to be played out, at the start of that day. */
    public double clockAtStart(int planter) {
        return clockAtStartOf(season.beginsOnDay(), planter);
    }

    private static int lengthS(DaySpan span) {
        return span.endS() - span.startS();
    }
}

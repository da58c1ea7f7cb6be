package freshfurrow.solver.estimate;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.List;

/**
 * A season as a planter would know it that never waits for a rig or for dry soil. Fields and planters are indices in the
 * season's order, days count from the season's first day, and a planter's clock is in seconds of its working hours since
 * then.
 */
public final class SeasonEstimate {
    /** In place of a field: where a planter stands to begin with. */
    public static final int START = -1;

    private final CompiledSeason season;
    private final int planterCount;
    private final double[] lateWeights;
    private final double[] workPerDayS;

    // by planter, as they are asked for millions of times
    private final int[] moveTimeS;
    private final double[] roadSpeedMPerS;
    private final double[] fieldCapacityM2PerS;

    /** Working days before each day of the season, and before what follows it. */
    private final int[] workDaysBefore;

    public SeasonEstimate(CompiledSeason season) {
        this.season = season;
        Season given = season.season();
        List<Applicator> planters = given.applicators();
        planterCount = planters.size();
        lateWeights = given.fields().stream().mapToDouble(Field::lateWeight).toArray();
        workDaysBefore = new int[given.days() + 1];
        for (int day = 0; day < given.days(); day++) {
            boolean closed = given.closed().contains(given.first().plusDays(day));
            workDaysBefore[day + 1] = workDaysBefore[day] + (closed ? 0 : 1);
        }
        moveTimeS = planters.stream().mapToInt(Applicator::moveTimeS).toArray();
        roadSpeedMPerS =
                planters.stream().mapToDouble(Applicator::roadSpeedMPerS).toArray();
        fieldCapacityM2PerS =
                planters.stream().mapToDouble(Applicator::fieldCapacityM2PerS).toArray();
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
        return planterCount;
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
        return moveTimeS[planter] + driveS(planter, from, to);
    }

    /** Seconds to drive from one field, or from {@link #START}, to another. */
    public double driveS(int planter, int from, int to) {
        int metres = from == START ? season.metresFromStart(planter, to) : season.metresBetweenFields(from, to);
        return metres / roadSpeedMPerS[planter];
    }

    /** Seconds to plant the field without a stop. */
    public double plantS(int planter, int field) {
        return season.areaDm2(field) / 100.0 / fieldCapacityM2PerS[planter];
    }

    /** Reading of the planter's clock when a day begins. */
    public double clockAtStartOf(int day, int planter) {
        return workPerDayS[planter] * workDaysBefore[Math.max(0, Math.min(day, workDaysBefore.length - 1))];
    }

    /** Reading of the planter's clock when the season begins to be played out, at the start of that day. */
    public double clockAtStart(int planter) {
        return clockAtStartOf(season.beginsOnDay(), planter);
    }

    private static int lengthS(DaySpan span) {
        return span.endS() - span.startS();
    }
}

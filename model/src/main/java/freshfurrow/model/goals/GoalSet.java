package freshfurrow.model.goals;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;
import static freshfurrow.model.quantity.Factors.MG_PER_KG;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The goals of a season, and the score as their sum. To add a goal, add it to the list in {@link #of}. */
public final class GoalSet {
    /** Noise of adding doubles, a tenth of the least late area and weight that are counted. */
    private static final double NOISE = 1e-8;

    /** Of the currency, in which a bill is scored: fine enough that prices ten times as high put plans in the same order. */
    private static final double MILLIONTHS = 1e6;

    /** More than any bill; as much again can be added to it. */
    private static final double MOST = 1e18;

    private final List<Goal> goals;
    private final Goal[] hard;
    private final Goal[] medium;
    private final Goal[] soft;

    private GoalSet(List<Goal> goals) {
        this.goals = goals;
        this.hard = onLevel(Level.HARD);
        this.medium = onLevel(Level.MEDIUM);
        this.soft = onLevel(Level.SOFT);
    }

    /** The goals of a season with the weights of its {@link Season#goals()}. */
    public static GoalSet of(Season season) {
        Goals weights = season.goals();
        List<Goal> all = new ArrayList<>(rules());
        all.addAll(weights.byMoney().map(GoalSet::bill).orElseGet(() -> lateness(season)));
        all.addAll(effort(weights));
        return new GoalSet(List.copyOf(all));
    }

    private static List<Goal> rules() {
        return List.of(
                new Goal(
                        "forbidden",
                        Level.HARD,
                        "fields",
                        "Fields in the planting order of a planter that may not plant them.",
                        Counters::forbiddenFields,
                        1),
                new Goal(
                        "fixed",
                        Level.HARD,
                        "fields",
                        "Fields fixed to a day that are started on another one, or never.",
                        Counters::brokenPromises,
                        1));
    }

    private static List<Goal> lateness(Season season) {
        double untreatedDays = season.goals().untreatedDays().orElse(0);
        return List.of(
                new Goal(
                        "unplanted",
                        Level.MEDIUM,
                        "ha",
                        "Area unplanted at the end of the season; costs more than its latest planting would.",
                        counters -> counters.unservedDm2() / DM2_PER_HA,
                        100 * (unservedHaDaysPerHa(season) + untreatedDays * largestExtractWeight(season))),
                new Goal(
                        "untreated",
                        Level.MEDIUM,
                        "ha",
                        "Area planted without extract, times the extract weight of the field.",
                        counters -> counters.untreatedMilliDm2() / 1e9,
                        100 * untreatedDays),
                new Goal(
                        "late",
                        Level.MEDIUM,
                        "ha-days",
                        "Area planted after its window, times the days after it and the late weight of the field.",
                        counters -> counters.lateMilliDm2Days() / 1e9,
                        100));
    }

    private static List<Goal> bill(Costs prices) {
        return Arrays.stream(CostItem.values())
                .map(item -> new Goal(
                        name(item),
                        Level.MEDIUM,
                        item.unit(),
                        sentence(item),
                        counters -> counters.amount(item),
                        MILLIONTHS * prices.price(item)))
                .toList();
    }

    /** As a bill has it; but overtime is a name of effort already. */
    private static String name(CostItem item) {
        return switch (item) {
            case WORK -> "hours";
            case ROAD -> "roads";
            case OVERTIME -> "overtime pay";
            case COMPOST, LATE, UNPLANTED, UNTREATED, WATER -> item.key();
        };
    }

    private static String sentence(CostItem item) {
        return switch (item) {
            case WORK -> "Hours at work of all machines, from the first deed of a day to the last.";
            case ROAD -> "Driving of planters and rigs.";
            case COMPOST -> "Compost that goes into batches.";
            case LATE -> "Area planted after its window, times the days after it.";
            case UNPLANTED -> "Area unplanted at the end of the season.";
            case UNTREATED -> "Area planted without extract.";
            case WATER -> "Water drawn by rigs.";
            case OVERTIME -> "Time planted past the last hours of a day.";
        };
    }

    private static List<Goal> effort(Goals weights) {
        return List.of(
                new Goal("fills", Level.SOFT, "fills", "Fills of the planters.", Counters::fills, weights.refillMin()),
                new Goal(
                        "water trips",
                        Level.SOFT,
                        "draws",
                        "Draws of water by the rigs, one a trip.",
                        Counters::waterTrips,
                        weights.waterTripMin()),
                new Goal(
                        "compost trips",
                        Level.SOFT,
                        "loadings",
                        "Loadings of compost by the rigs where it lies, one a trip.",
                        Counters::compostTrips,
                        weights.compostTripMin()),
                new Goal(
                        "waiting",
                        Level.SOFT,
                        "min",
                        "Working time that planters wait for a rig, water or compost.",
                        counters -> (double) counters.waitS() / MINUTE_S,
                        weights.waitMinPerMin()),
                new Goal(
                        "idle",
                        Level.SOFT,
                        "min",
                        "Working time that planters stand for closed fields while one could be planted that they plant later.",
                        counters -> (double) counters.idleS() / MINUTE_S,
                        weights.idleMinPerMin()),
                new Goal(
                        "driving",
                        Level.SOFT,
                        "min",
                        "Driving time of planters and rigs.",
                        counters -> (double) counters.driveS() / MINUTE_S,
                        weights.driveMinPerMin()),
                new Goal(
                        "dumped compost",
                        Level.SOFT,
                        "kg",
                        "Compost in mix that grew too old and was dumped.",
                        counters -> counters.dumpedMg() / MG_PER_KG,
                        weights.dumpMinPerKg()),
                new Goal(
                        "moved fields",
                        Level.SOFT,
                        "fields",
                        "Fields promised for the days ahead that get another planter or start on another day.",
                        Counters::movedFields,
                        weights.movedMin()),
                new Goal(
                        "scraps",
                        Level.SOFT,
                        "scraps",
                        "Days on which a planter plants no more than a scrap of a larger field.",
                        Counters::scraps,
                        weights.scrapMin()),
                new Goal(
                        "call-outs",
                        Level.SOFT,
                        "machine days",
                        "Days on which a machine is called out and no load goes into a planter or out of it there.",
                        Counters::callOuts,
                        weights.callOutMin()),
                new Goal(
                        "overtime",
                        Level.SOFT,
                        "min",
                        "Time planted past the last hours of a day.",
                        counters -> (double) counters.overtimeS() / MINUTE_S,
                        weights.overtimeMinPerMin()),
                new Goal(
                        "early",
                        Level.SOFT,
                        "ha-days",
                        "Area planted, times the days since the season started: between plans that are otherwise alike, the one that plants earlier wins.",
                        counters -> counters.earlyDm2Days() / DM2_PER_HA,
                        weights.earlyMinPerHaDay()));
    }

    /** All goals, from the gravest level to the least. */
    public List<Goal> goals() {
        return goals;
    }

    /** Broken rules, negated: 0 or less. */
    public long hard(Counters counters) {
        return -Math.round(cost(hard, counters));
    }

    /** Late and unserved area, hundredths of weighted ha-days, or by money the bill in millionths, rounded up and negated: 0 or less. */
    public long medium(Counters counters) {
        return -(long) Math.ceil(Math.min(MOST, cost(medium, counters)) - NOISE);
    }

    /** Effort, minutes, rounded once and negated: 0 or less. */
    public long soft(Counters counters) {
        return -Math.round(cost(soft, counters));
    }

    private static double cost(Goal[] goals, Counters counters) {
        double cost = 0;
        for (Goal goal : goals) {
            cost += goal.cost(counters);
        }
        return cost;
    }

    /** More than the days by which a field could be late at the most, at the largest late weight. */
    private static double unservedHaDaysPerHa(Season season) {
        double largestWeight =
                season.fields().stream().mapToDouble(Field::lateWeight).max().orElse(0);
        return (season.days() + 1) * Math.max(1, largestWeight);
    }

    private static double largestExtractWeight(Season season) {
        return season.fields().stream().mapToDouble(Field::extractWeight).max().orElse(0);
    }

    private Goal[] onLevel(Level level) {
        return goals.stream().filter(goal -> goal.level() == level).toArray(Goal[]::new);
    }
}

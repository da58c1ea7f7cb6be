package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.Limit;
import freshfurrow.model.plan.Resource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The bottlenecks of a season, in sentences: by which share what is late, unplanted or waited for would shrink without each. */
public final class HeldBack {
    private static final int MOST_NAMED = 3;
    private static final double LEAST_NAMED = 0.01;
    private static final double LEAST_WAIT_MIN = 1;

    private HeldBack() {}

    /** Begins with an empty line; nothing at all when the plan's limits were not worked out. */
    public static List<String> lines(Plan plan) {
        List<String> lines = new ArrayList<>();
        if (plan.limits().isEmpty()) {
            return lines;
        }
        lines.add("");
        WorkWords words = WorkWords.of(plan);
        if (!isHeldBack(plan)) {
            if (isLateForNothing(plan)) {
                lines.add("No bottleneck: what is late, " + words.undoneOrWithoutExtract() + " has no price, and no "
                        + words.machine() + " waits.");
                return lines;
            }
            lines.add("No bottleneck: every field is " + words.done() + " in its window and no " + words.machine()
                    + " waits.");
            return lines;
        }
        lines.add("Bottlenecks");
        if (isLate(plan)) {
            lines.add("  " + lateArea(plan, words) + shares(plan.limits(), Limit::shareOfLate, words));
        }
        if (waits(plan)) {
            lines.add("  Waiting" + shares(plan.limits(), Limit::shareOfWait, words));
        }
        lines.add(
                "  Each figure comes from a short replan with that one limit lifted. The figures overlap, and a longer search");
        lines.add("  may find more.");
        return lines;
    }

    /** Whether any area is late or unplanted, or planters wait for a minute or more. */
    public static boolean isHeldBack(Plan plan) {
        return isLate(plan) || waits(plan);
    }

    private static boolean isLate(Plan plan) {
        return plan.harm() > 0;
    }

    /** By money, where nothing that late and unplanted area does harm to has a price. */
    private static boolean isLateForNothing(Plan plan) {
        Plan.Totals totals = plan.totals();
        return !isLate(plan) && totals.lateHaDays() + totals.unservedHa() + totals.untreatedHa() > 0;
    }

    /** What of it there is: area that is late, unplanted or without extract. */
    private static String lateArea(Plan plan, WorkWords words) {
        boolean late = plan.totals().lateHaDays() > 0 || plan.totals().unservedHa() > 0;
        return WorkWords.capital(words.lateArea(late, plan.totals().untreatedHa() > 0));
    }

    private static boolean waits(Plan plan) {
        return plan.totals().waitMin() >= LEAST_WAIT_MIN;
    }

    /** The tightest bottleneck, in one sentence without a stop. */
    public static String most(Plan plan) {
        if (!isHeldBack(plan)) {
            return "No bottleneck";
        }
        boolean late = isLate(plan);
        ToDoubleFunction<Limit> share = late ? Limit::shareOfLate : Limit::shareOfWait;
        return plan.limits().stream()
                .max(Comparator.comparingDouble(share))
                .filter(limit -> share.applyAsDouble(limit) >= LEAST_NAMED)
                .map(limit -> (late ? lateArea(plan, WorkWords.of(plan)) : "No field is late; waiting")
                        + " would shrink "
                        + by(limit, share, WorkWords.of(plan)))
                .orElse("No single bottleneck");
    }

    private static String shares(List<Limit> limits, ToDoubleFunction<Limit> share, WorkWords words) {
        List<String> named = limits.stream()
                .filter(limit -> share.applyAsDouble(limit) >= LEAST_NAMED)
                .sorted(Comparator.comparingDouble(share).reversed())
                .limit(MOST_NAMED)
                .map(limit -> by(limit, share, words))
                .toList();
        if (named.isEmpty()) {
            return ": lifting any one limit by itself would not help";
        }
        return " would shrink " + String.join(", ", named);
    }

    private static String by(Limit limit, ToDoubleFunction<Limit> share, WorkWords words) {
        return "by " + Figures.percent(share.applyAsDouble(limit)) + " if " + condition(limit.resource(), words);
    }

    /** What would be so if that resource were no limit, as it stands after 'if'. */
    public static String condition(Resource free, WorkWords words) {
        return switch (free) {
            case PLANTER -> words.noun() + " took no time";
            case RIG -> "rig work took no time";
            case HOSE -> "drawing water took no time";
            case WATER_LIMIT -> "there were no daily water limits";
            case COMPOST -> "compost was unlimited from day one";
            case WEATHER -> "it never rained";
            case WINDOWS -> "every window opened on day one";
        };
    }
}

package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.Limit;
import freshfurrow.model.plan.Resource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What holds a season back, in sentences: of what is late, left or waited for, the share that goes with each resource. */
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
        boolean late = plan.score().medium() < 0;
        boolean waits = plan.totals().waitMin() >= LEAST_WAIT_MIN;
        lines.add("");
        if (!late && !waits) {
            lines.add("Nothing holds the season back: all is planted within its window, and planters wait less than a"
                    + " minute.");
            return lines;
        }
        lines.add("What holds the season back");
        if (late) {
            lines.add("  late or not planted: " + shares(plan.limits(), Limit::shareOfLate));
        }
        if (waits) {
            lines.add("  waiting: " + shares(plan.limits(), Limit::shareOfWait));
        }
        lines.add(
                "  Each share was found by a short search from this plan with that one thing made free, next to one as");
        lines.add("  short with nothing free: shares overlap, and longer searches may gain more.");
        return lines;
    }

    /** The resource that holds the season back most, in one sentence without a stop. */
    public static String most(Plan plan) {
        boolean late = plan.score().medium() < 0;
        ToDoubleFunction<Limit> share = late ? Limit::shareOfLate : Limit::shareOfWait;
        if (!late && plan.totals().waitMin() < LEAST_WAIT_MIN) {
            return "Nothing holds the season back";
        }
        return plan.limits().stream()
                .max(Comparator.comparingDouble(share))
                .filter(limit -> share.applyAsDouble(limit) >= LEAST_NAMED)
                .map(limit -> (late ? "Of what is late or not planted " : "Nothing is late; of the planters' waiting ")
                        + Figures.percent(share.applyAsDouble(limit)) + " goes away when "
                        + condition(limit.resource()))
                .orElse("No one thing holds the season back");
    }

    private static String shares(List<Limit> limits, ToDoubleFunction<Limit> share) {
        List<String> named = limits.stream()
                .filter(limit -> share.applyAsDouble(limit) >= LEAST_NAMED)
                .sorted(Comparator.comparingDouble(share).reversed())
                .limit(MOST_NAMED)
                .map(limit ->
                        Figures.percent(share.applyAsDouble(limit)) + " goes away when " + condition(limit.resource()))
                .toList();
        if (named.isEmpty()) {
            return "no one thing made free takes any of it away";
        }
        return String.join(", ", named);
    }

    /** With which it would be as if there were enough of that resource. */
    public static String condition(Resource free) {
        return switch (free) {
            case PLANTER -> "planters work in no time";
            case RIG -> "rigs work in no time";
            case HOSE -> "every rig has a hose and water comes at once";
            case WATER_LIMIT -> "water has no daily limit";
            case COMPOST -> "there is enough compost from the first day on";
            case WEATHER -> "it never rains";
            case WINDOWS -> "all windows open on the first day";
        };
    }
}

package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.WorkingTime;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;

/** What limits the season, with its evidence: what would change with one thing made free, and where working hours went. */
final class LimitsData {
    private final Plan plan;
    private final Figures figures;

    private LimitsData(Season season, Plan plan) {
        this.plan = plan;
        this.figures = new Figures(season.units());
    }

    static void write(ObjectNode data, Season season, Plan plan) {
        LimitsData limits = new LimitsData(season, plan);
        data.put("limiting", limits.headline());
        limits.evidence(data.putArray("limits"));
        ArrayNode hours = data.putArray("hours");
        for (WorkingTime time : WorkingTime.of(season, plan)) {
            hours.addObject()
                    .put("what", time.what())
                    .put("minutes", time.howLong().toMinutes())
                    .put("text", Figures.span(time.howLong()));
        }
    }

    private String headline() {
        if (plan.limits().isEmpty()) {
            return "Where the planters' working hours go";
        }
        boolean late = plan.totals().lateHaDays() > 0 || plan.totals().unservedHa() > 0;
        Optional<Plan.Limit> most = plan.limits().stream()
                .max(Comparator.comparingDouble(limit -> late ? limit.shareOfLate() : limit.shareOfWait()))
                .filter(limit -> (late ? limit.shareOfLate() : limit.shareOfWait()) > 0);
        return most.map(limit -> (late ? "Late fields: " : "Nothing is late; waiting: ") + name(limit.resource())
                        + " holds the season back most")
                .orElse(late ? "No single thing holds the season back" : "Nothing holds the season back");
    }

    private void evidence(ArrayNode limits) {
        plan.limits().stream()
                .sorted(Comparator.comparingDouble(Plan.Limit::shareOfLate)
                        .thenComparingDouble(Plan.Limit::shareOfWait)
                        .reversed())
                .forEach(limit -> limits.addObject()
                        .put("resource", name(limit.resource()))
                        .put("late", figures.areaDays(limit.lateHaDays()))
                        .put("left", figures.area(limit.unservedHa()))
                        .put("wait", Figures.span(Duration.ofSeconds(Math.round(limit.waitMin() * 60))))
                        .put("shareOfLate", Numbers.rounded(limit.shareOfLate()))
                        .put("shareOfWait", Numbers.rounded(limit.shareOfWait())));
    }

    private static String name(Resource resource) {
        return switch (resource) {
            case PLANTER -> "planter capacity";
            case RIG -> "the rig";
            case HOSE -> "the number of hoses";
            case WATER_LIMIT -> "the daily water limit";
            case COMPOST -> "compost";
            case WEATHER -> "the weather";
            case WINDOWS -> "when windows open";
        };
    }
}

package freshfurrow.cli.page;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.HeldBack;
import freshfurrow.cli.text.TimeSpent;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.Comparator;

/** The bottlenecks, with their evidence: what would change with one limit lifted, and where working hours went. */
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
        for (TimeSpent time : TimeSpent.of(season, plan)) {
            hours.addObject()
                    .put("what", time.what())
                    .put("minutes", time.howLong().toMinutes())
                    .put("text", Figures.span(time.howLong()));
        }
    }

    private String headline() {
        return plan.limits().isEmpty()
                ? "Where the " + WorkWords.of(plan).machines() + "' working hours go"
                : HeldBack.most(plan);
    }

    /** None when nothing is late and nobody waits: then there is nothing that a limit could have cost. */
    private void evidence(ArrayNode limits) {
        if (!HeldBack.isHeldBack(plan)) {
            return;
        }
        plan.limits().stream()
                .sorted(Comparator.comparingDouble(Plan.Limit::shareOfLate)
                        .thenComparingDouble(Plan.Limit::shareOfWait)
                        .reversed())
                .forEach(limit -> limits.addObject()
                        .put("condition", HeldBack.condition(limit.resource(), WorkWords.of(plan)))
                        .put("late", figures.areaDays(limit.lateHaDays()))
                        .put("left", figures.area(limit.unservedHa()))
                        .put("wait", Figures.span(Duration.ofSeconds(Math.round(limit.waitMin() * MINUTE_S))))
                        .put("shareOfLate", Numbers.rounded(limit.shareOfLate()))
                        .put("shareOfWait", Numbers.rounded(limit.shareOfWait())));
    }
}

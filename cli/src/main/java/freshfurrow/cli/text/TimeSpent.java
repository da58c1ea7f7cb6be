package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the working hours of all planters went from the season's first day to the end of planting.
 *
 * @param what planting, fills, moves or a reason to wait
 */
public record TimeSpent(String what, Duration howLong) {

    /** The longest first; without what took less than a minute. */
    public static List<TimeSpent> of(Season season, Plan plan) {
        Map<String, Duration> sums = new LinkedHashMap<>();
        if (plan.totals().areaHa() > 0) {
            DateWindow planting =
                    new DateWindow(season.first(), plan.totals().finish().toLocalDate());
            for (Applicator planter : season.applicators()) {
                Plan.PlanterPlan planned = plan.planters().get(planter.id());
                if (planned != null) {
                    TimeUse.of(planned, planting, planter.hours(), season.closed())
                            .parts()
                            .forEach(part -> sums.merge(part.what(), part.howLong(), Duration::plus));
                }
            }
        }
        return sums.entrySet().stream()
                .filter(sum -> sum.getValue().toMinutes() > 0)
                .map(sum -> new TimeSpent(sum.getKey(), sum.getValue()))
                .sorted(Comparator.comparing(TimeSpent::howLong).reversed())
                .toList();
    }
}

package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/** How much water and mix a rig has on board: what it drew less what it passed on or let out. */
public final class NurseTank {
    private final List<Activity> activities;

    /**
     * The tank of a rig, which begins the season empty.
     *
     * @param activities all of the rig's season, in time order
     */
    public NurseTank(List<Activity> activities) {
        this.activities = List.copyOf(activities);
    }

    /** Litres on board at a moment, by all that has ended by then. */
    public double litresAt(LocalDateTime moment) {
        return activities.stream()
                .filter(activity -> !activity.end().isAfter(moment))
                .mapToDouble(Activity::onRigL)
                .sum();
    }

    /** The most litres on board at any time of a date. */
    public double mostLitresOn(LocalDate date) {
        double litres = litresAt(date.atStartOfDay());
        double most = litres;
        for (Activity activity : activities) {
            if (activity.end().isAfter(date.atStartOfDay())
                    && !activity.end().isAfter(date.plusDays(1).atStartOfDay())) {
                litres += activity.onRigL();
                most = Math.max(most, litres);
            }
        }
        return most;
    }
}

package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.WaitReason;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** Gaps in a machine's activities, in which it stands where the last of them ended. */
final class Idle {
    /** A shorter gap is told by the times around it. */
    private static final Duration LEAST = Duration.ofMinutes(30);

    private Idle() {}

    /**
     * The activities with waits in their gaps, and one behind the last.
     *
     * @param until end of that
     */
    static List<Activity> filled(List<Activity> activities, LocalDateTime until) {
        List<Activity> all = new ArrayList<>();
        for (int i = 0; i < activities.size(); i++) {
            Activity activity = activities.get(i);
            all.add(activity);
            LocalDateTime next =
                    i + 1 < activities.size() ? activities.get(i + 1).start() : until;
            if (Duration.between(activity.end(), next).compareTo(LEAST) >= 0) {
                all.add(new Activity.Wait(activity.end(), next, activity.endsAt(), WaitReason.HOURS));
            }
        }
        return all;
    }
}

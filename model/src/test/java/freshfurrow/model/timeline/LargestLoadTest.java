package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * The size of a load against a plain search: a planter with a smaller tank that gets it full shows a size that fits, and the load
 * of the larger tank may fall short of it by half a hundredth of its tank at most.
 */
class LargestLoadTest {
    private static final double TANK_L = 1000;
    private static final double SHORTFALL_L = TANK_L * 0.005;

    /** So that no scrap of a field is left, a load may leave out a hundred square metres: 2 L at 200 L/ha. */
    private static final double SCRAP_L = 2;

    private static final List<String> RIG_HOURS =
            List.of("06:00/20:00", "07:00/12:00 13:00/20:00", "04:00/07:30 08:00/21:00");
    private static final List<String> PLANTER_HOURS =
            List.of("07:00/19:00", "07:00/09:00 09:30/12:00", "07:00/08:30", "06:30/24:00");

    @Property(tries = 100)
    void noLoadThatFitsAsEarlyIsLarger(@ForAll long seed) {
        WorkedPlan plan = plan(seed, TANK_L);
        for (int share = 2; share <= 100; share += 2) {
            double tank = TANK_L * share / 100;
            WorkedPlan full = plan(seed, tank);
            if (full.load(1).litres() == tank
                    && isUsedUpInOneGo(full)
                    && isFilledBeforeTheBreak(full, plan)
                    && !usedUp(full).isAfter(usedUp(plan))) {
                assertThat(plan.load(1).litres())
                        .as("where %s L fit", tank)
                        .isGreaterThanOrEqualTo(tank - SHORTFALL_L - SCRAP_L);
            }
        }
    }

    /** A load that comes before a break of the planter is not held back until after it for being larger. */
    private static boolean isFilledBeforeTheBreak(WorkedPlan full, WorkedPlan plan) {
        List<Activity> activities = plan.plan().planters().get("P1").activities();
        for (int i = fill(activities); i + 1 < activities.size(); i++) {
            if (!activities.get(i + 1).start().equals(activities.get(i).end())) {
                return !fillStart(full).isAfter(activities.get(i).end());
            }
        }
        return true;
    }

    private static LocalDateTime fillStart(WorkedPlan plan) {
        List<Activity> activities = plan.plan().planters().get("P1").activities();
        return activities.get(fill(activities)).start();
    }

    private static int fill(List<Activity> activities) {
        int i = 0;
        while (!(activities.get(i) instanceof Activity.Fill)) {
            i++;
        }
        return i;
    }

    private static LocalDate usedUp(WorkedPlan plan) {
        return plan.load(1).lastDrop().toLocalDate();
    }

    /** Its planting and moves follow one another without a break. */
    private static boolean isUsedUpInOneGo(WorkedPlan plan) {
        List<Activity> activities = plan.plan().planters().get("P1").activities();
        int i = fill(activities);
        while (activities.get(i).end().isBefore(plan.load(1).lastDrop())) {
            if (!activities.get(i + 1).start().equals(activities.get(i).end())) {
                return false;
            }
            i++;
        }
        return true;
    }

    private static WorkedPlan plan(long seed, double tankL) {
        Random random = new Random(seed);
        int holdS = 900 + random.nextInt(random.nextBoolean() ? 6000 : 90_000);
        String rigHours = RIG_HOURS.get(random.nextInt(RIG_HOURS.size()));
        String planterHours = PLANTER_HOURS.get(random.nextInt(PLANTER_HOURS.size()));
        double batchKg = 5 * (1 + random.nextInt(10));
        WorkedSeason season = new WorkedSeason()
                .days(4)
                .hold(holdS)
                .planter("P1", planter -> planter.tank(tankL).hours(planterHours.split(" ", -1)))
                .rig("R1", rig -> rig.batchCompost(batchKg).hours(rigHours.split(" ", -1)));
        if (random.nextBoolean()) {
            season.rain(1, "0" + (6 + random.nextInt(4)) + ":40", 10);
        }
        return season.field("A", 1 + random.nextInt(3))
                .field("B", 6, field -> random.nextBoolean() ? field : field.window(2, 4))
                .plan("A B");
    }
}

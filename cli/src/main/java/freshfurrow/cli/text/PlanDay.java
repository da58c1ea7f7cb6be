package freshfurrow.cli.text;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One day of a plan in figures. Work counts on the date on which it starts, a load's margin on the date of its last drop.
 *
 * @param areaHaByField planted on this day, in order of planting, ha
 * @param batches begun on this day, by this plan
 * @param compostKg in those
 * @param finish end of the day's last planting
 * @param smallestMargin least time between a last drop and its deadline
 */
record PlanDay(
        LocalDate date,
        Map<String, Double> areaHaByField,
        int fills,
        int batches,
        double compostKg,
        int waterTrips,
        int compostTrips,
        Optional<LocalDateTime> finish,
        Optional<Duration> smallestMargin) {

    /** The days of a plan on which something is planted, filled, extracted, drawn or loaded, in order. */
    static List<PlanDay> of(Plan plan) {
        SortedMap<LocalDate, Sums> days = new TreeMap<>();
        List<Activity.Planting> plantings = new ArrayList<>();
        for (Plan.PlanterPlan planter : plan.planters().values()) {
            for (Activity activity : planter.activities()) {
                if (activity instanceof Activity.Planting planting) {
                    plantings.add(planting);
                } else if (activity instanceof Activity.Fill) {
                    on(days, activity.start()).fills++;
                }
            }
        }
        plantings.sort(Comparator.comparing(Activity.Planting::start));
        plantings.forEach(planting -> on(days, planting.start()).add(planting));
        for (Plan.RigPlan rig : plan.rigs().values()) {
            for (Activity activity : rig.activities()) {
                if (activity instanceof Activity.Draw) {
                    on(days, activity.start()).waterTrips++;
                } else if (activity instanceof Activity.LoadCompost) {
                    on(days, activity.start()).compostTrips++;
                }
            }
        }
        Set<String> madeBefore = plan.start().stream()
                .flatMap(start -> start.batches().stream().map(Plan.Batch::id))
                .collect(Collectors.toSet());
        for (Plan.Batch batch : plan.batches()) {
            if (madeBefore.contains(batch.id())) {
                continue;
            }
            Sums day = on(days, batch.start());
            day.batches++;
            day.compostKg += batch.compostKg();
        }
        for (Plan.Load load : plan.loads()) {
            on(days, load.lastDrop()).add(plan.margin(load));
        }
        return days.entrySet().stream()
                .map(day -> day.getValue().on(day.getKey()))
                .toList();
    }

    private static Sums on(Map<LocalDate, Sums> days, LocalDateTime time) {
        return days.computeIfAbsent(time.toLocalDate(), date -> new Sums());
    }

    private static final class Sums {
        private final Map<String, Double> areaHaByField = new LinkedHashMap<>();
        private int fills;
        private int batches;
        private double compostKg;
        private int waterTrips;
        private int compostTrips;
        private Optional<LocalDateTime> finish = Optional.empty();
        private Optional<Duration> smallestMargin = Optional.empty();

        void add(Activity.Planting planting) {
            areaHaByField.merge(planting.field(), planting.areaHa(), Double::sum);
            finish = finish.filter(planting.end()::isBefore).or(() -> Optional.of(planting.end()));
        }

        void add(Duration margin) {
            smallestMargin =
                    smallestMargin.filter(least -> least.compareTo(margin) <= 0).or(() -> Optional.of(margin));
        }

        PlanDay on(LocalDate date) {
            return new PlanDay(
                    date, areaHaByField, fills, batches, compostKg, waterTrips, compostTrips, finish, smallestMargin);
        }
    }
}

package freshfurrow.model.timeline;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The score counted anew from what a plan says that the machines do. */
final class ScoreFromActivities {
    private static final Set<WaitReason> COUNTED = EnumSet.of(WaitReason.RIG, WaitReason.WATER, WaitReason.COMPOST);

    private final Season season;
    private final Plan plan;

    ScoreFromActivities(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
    }

    int forbiddenFields() {
        int count = 0;
        for (Applicator planter : season.applicators()) {
            for (String id : plan.planters().get(planter.id()).fields()) {
                count += field(id).allows(planter) ? 0 : 1;
            }
        }
        return count;
    }

    /** Weighted late, untreated and unserved area, hundredths of ha-days, not rounded. */
    double lateUntreatedAndUnserved() {
        double late = 0;
        for (Applicator planter : season.applicators()) {
            for (Activity.Planting plant : of(planter, Activity.Planting.class).toList()) {
                Field field = field(plant.field());
                LocalDate date = plant.start().toLocalDate();
                long days = Math.max(0, ChronoUnit.DAYS.between(field.window().last(), date));
                late += plant.areaHa() * days * field.lateWeight();
            }
        }
        double untreatedDays = season.goals().untreatedDays().orElse(0);
        double untreated = season.applicators().stream()
                .flatMap(planter -> of(planter, Activity.PlantWithout.class))
                .mapToDouble(plant -> plant.areaHa() * field(plant.field()).extractWeight())
                .sum();
        double largestExtractWeight =
                season.fields().stream().mapToDouble(Field::extractWeight).max().orElse(0);
        double largestWeight =
                season.fields().stream().mapToDouble(Field::lateWeight).max().orElse(0);
        double unserved =
                plan.unserved().stream().mapToDouble(Plan.Unserved::areaHa).sum();
        return 100
                * (late
                        + untreated * untreatedDays
                        + unserved
                                * ((season.days() + 1) * Math.max(1, largestWeight)
                                        + untreatedDays * largestExtractWeight));
    }

    /** Minutes, not rounded but for idle time, which the audit works out from the waits. */
    double effort() {
        Goals goals = season.goals();
        double minutes = plan.loads().size() * goals.refillMin();
        minutes += plan.totals().idleMin() * goals.idleMinPerMin();
        for (Applicator planter : season.applicators()) {
            minutes += waitS(planter) / 60.0 * goals.waitMinPerMin();
            minutes += of(planter, Activity.Move.class)
                            .mapToLong(move -> seconds(move) - planter.moveTimeS())
                            .sum()
                    / 60.0
                    * goals.driveMinPerMin();
            minutes += of(planter, Activity.Planting.class)
                            .mapToDouble(plant -> plant.areaHa()
                                    * ChronoUnit.DAYS.between(
                                            season.first(), plant.start().toLocalDate()))
                            .sum()
                    * goals.earlyMinPerHaDay();
            minutes += of(planter, Activity.Planting.class)
                            .mapToLong(plant -> seconds(plant) - working(planter, plant.start(), plant.end()))
                            .sum()
                    / 60.0
                    * goals.overtimeMinPerMin();
        }
        for (Plan.RigPlan rig : plan.rigs().values()) {
            for (Activity activity : rig.activities()) {
                if (activity instanceof Activity.Draw) {
                    minutes += goals.waterTripMin();
                } else if (activity instanceof Activity.LoadCompost) {
                    minutes += goals.compostTripMin();
                } else if (activity instanceof Activity.Move) {
                    minutes += seconds(activity) / 60.0 * goals.driveMinPerMin();
                }
            }
        }
        return minutes
                + dumpedKg() * goals.dumpMinPerKg()
                + scraps() * goals.scrapMin()
                + callOuts() * goals.callOutMin();
    }

    private long scraps() {
        long least = Math.round(season.goals().leastPieceHa() * 1e6);
        long scraps = 0;
        for (Applicator planter : season.applicators()) {
            Map<String, Long> dm2 = of(planter, Activity.Planting.class)
                    .filter(plant -> Math.round(field(plant.field()).areaHa() * 1e6) > least)
                    .collect(Collectors.groupingBy(
                            plant -> plant.field() + " on " + plant.start().toLocalDate(),
                            Collectors.summingLong(plant -> Math.round(plant.areaHa() * 1e6))));
            scraps += dm2.values().stream().filter(area -> area < least).count();
        }
        return scraps;
    }

    private long callOuts() {
        return Stream.concat(
                        plan.planters().values().stream().map(Plan.PlanterPlan::activities),
                        plan.rigs().values().stream().map(Plan.RigPlan::activities))
                .mapToLong(ScoreFromActivities::callOuts)
                .sum();
    }

    private static long callOuts(List<Activity> activities) {
        Set<LocalDate> useful = activities.stream()
                .filter(activity -> activity instanceof Activity.Fill
                        || activity instanceof Activity.Planting
                        || activity instanceof Activity.Transfer)
                .map(activity -> activity.start().toLocalDate())
                .collect(Collectors.toSet());
        return activities.stream()
                .filter(Activity.Move.class::isInstance)
                .map(activity -> activity.start().toLocalDate())
                .filter(date -> !useful.contains(date))
                .distinct()
                .count();
    }

    private double waitS(Applicator planter) {
        return of(planter, Activity.Wait.class)
                .filter(wait -> COUNTED.contains(wait.why()))
                .mapToLong(wait -> working(planter, wait.start(), wait.end()))
                .sum();
    }

    /** Seconds of a planter's working time between two moments: nothing of what is kept for the flush at the end of each day. */
    private long working(Applicator planter, LocalDateTime from, LocalDateTime to) {
        WorkHours hours = planter.hours();
        long seconds = 0;
        for (LocalDate date = from.toLocalDate().minusDays(1);
                !date.isAfter(to.toLocalDate());
                date = date.plusDays(1)) {
            List<int[]> day = new ArrayList<>();
            for (int shift : new int[] {0, 1}) {
                LocalDate its = date.plusDays(shift);
                boolean open =
                        !season.closed().contains(its) && !its.isBefore(season.first()) && !its.isAfter(season.last());
                for (var span : open ? hours.spans() : List.<DaySpan>of()) {
                    if (span.startS() < hours.dayStartS() == (shift == 1)) {
                        add(day, span.startS() + shift * DAY_S, span.endS() + shift * DAY_S);
                    }
                }
            }
            long midnight = Duration.between(from, date.atStartOfDay()).toSeconds();
            long until = Duration.between(from, to).toSeconds();
            for (int[] left : planter.kept().leaves(day)) {
                seconds += Math.max(0, Math.min(until, midnight + left[1]) - Math.max(0, midnight + left[0]));
            }
        }
        return seconds;
    }

    private static void add(List<int[]> day, int start, int end) {
        int last = day.size() - 1;
        if (last >= 0 && day.get(last)[1] == start) {
            day.get(last)[1] = end;
        } else {
            day.add(new int[] {start, end});
        }
    }

    /** Compost in batches that no load applied. */
    private double dumpedKg() {
        double made = plan.batches().stream().mapToDouble(Plan.Batch::compostKg).sum();
        double applied = plan.loads().stream()
                .mapToDouble(load -> {
                    Recipe recipe = season.recipe(load.recipe());
                    return load.appliedL() / recipe.mixLPerHa() * recipe.compostKgPerHa();
                })
                .sum();
        return made - applied;
    }

    private Field field(String id) {
        return season.fields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private <A extends Activity> Stream<A> of(Applicator planter, Class<A> kind) {
        return plan.planters().get(planter.id()).activities().stream()
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    private static long seconds(Activity activity) {
        return Duration.between(activity.start(), activity.end()).toSeconds();
    }
}

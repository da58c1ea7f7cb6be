package freshfurrow.model.timeline;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.Load;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A plan as lines that can be read and compared: {@code 1 07:33:20 - 1 08:56:40 plant A 5.000 ha}. The number before a
 * time is the day of the season, from 1.
 */
record WorkedPlan(Season season, Plan plan) {
    List<String> planter(String id) {
        return plan.planters().get(id).activities().stream().map(this::line).toList();
    }

    List<String> rig(String id) {
        return plan.rigs().get(id).activities().stream().map(this::line).toList();
    }

    /** A planter's lines of some kinds, such as {@code fill} and {@code plant}. */
    List<String> planter(String id, String... kinds) {
        return of(planter(id), kinds);
    }

    List<String> rig(String id, String... kinds) {
        return of(rig(id), kinds);
    }

    /** {@code P1 R1 1000.000 L, old 1 12:20:00, used up 1 08:56:40}. */
    List<String> loads() {
        return plan.loads().stream()
                .map(load -> String.format(
                        Locale.ROOT,
                        "%s %s %.3f L, old %s, used up %s",
                        load.planter(),
                        load.rig(),
                        load.litres(),
                        time(load.deadline()),
                        time(load.lastDrop())))
                .toList();
    }

    Load load(int number) {
        return plan.loads().get(number - 1);
    }

    /** Starts of the fills of one planter. */
    List<String> fillStarts(String planter) {
        return plan.planters().get(planter).activities().stream()
                .filter(Activity.Fill.class::isInstance)
                .map(fill -> time(fill.start()))
                .toList();
    }

    /** {@code B 5.000 ha}. */
    List<String> unserved() {
        return plan.unserved().stream()
                .map(left -> String.format(Locale.ROOT, "%s %.3f ha", left.field(), left.areaHa()))
                .toList();
    }

    /** This plan, saying of fields that they are planted without extract by decision. */
    Plan goingWithout(Set<String> fields) {
        Map<String, Plan.PlanterPlan> planters = new LinkedHashMap<>();
        plan.planters()
                .forEach((id, its) -> planters.put(
                        id,
                        new Plan.PlanterPlan(
                                its.tankL(),
                                its.fields(),
                                its.fields().stream().filter(fields::contains).toList(),
                                its.activities())));
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                planters,
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits(),
                plan.start());
    }

    private static List<String> of(List<String> lines, String... kinds) {
        return lines.stream()
                .filter(line -> Arrays.stream(kinds).anyMatch(kind -> line.contains(" " + kind + " ")))
                .toList();
    }

    private String line(Activity activity) {
        return time(activity.start()) + " - " + time(activity.end()) + " " + what(activity);
    }

    private static String what(Activity activity) {
        if (activity instanceof Activity.Move move) {
            return "move " + move.from() + " to " + move.to();
        } else if (activity instanceof Activity.Wait wait) {
            return "wait " + wait.at() + " " + wait.why().name().toLowerCase(Locale.ROOT);
        } else if (activity instanceof Activity.Fill fill) {
            return "fill " + fill.at();
        } else if (activity instanceof Activity.Plant plant) {
            return String.format(Locale.ROOT, "plant %s %.3f ha", plant.field(), plant.areaHa());
        } else if (activity instanceof Activity.PlantWithout plant) {
            return String.format(Locale.ROOT, "without %s %.3f ha", plant.field(), plant.areaHa());
        } else if (activity instanceof Activity.Draw draw) {
            return String.format(Locale.ROOT, "draw %s %.3f L", draw.at(), draw.litres());
        } else if (activity instanceof Activity.LoadCompost loading) {
            return String.format(Locale.ROOT, "load %s %.3f kg of %s", loading.at(), loading.kg(), loading.lot());
        } else if (activity instanceof Activity.Extract extract) {
            return "extract " + extract.at();
        } else if (activity instanceof Activity.Clean clean) {
            return "clean " + clean.at();
        } else if (activity instanceof Activity.Transfer transfer) {
            return String.format(Locale.ROOT, "transfer %s %.3f L", transfer.at(), transfer.litres());
        } else if (activity instanceof Activity.Dump dump) {
            return String.format(Locale.ROOT, "dump %s %.3f L", dump.at(), dump.litres());
        } else if (activity instanceof Activity.Flush
                || activity instanceof Activity.SetUp
                || activity instanceof Activity.CloseUp) {
            return activity.kind().key() + " " + activity.at();
        }
        throw new IllegalArgumentException("an activity of a new kind: " + activity);
    }

    /** Day of the season from 1, and the clock. */
    String time(LocalDateTime at) {
        long day = ChronoUnit.DAYS.between(season.first(), at.toLocalDate()) + 1;
        return day + " " + at.toLocalTime().format(java.time.format.DateTimeFormatter.ISO_LOCAL_TIME);
    }
}

package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Standing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Whether planters' lines are flushed before the day ends and before mix of another recipe. */
final class Flushes {
    private final Evidence evidence;

    Flushes(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.plan.planters().forEach((id, its) -> {
            Applicator planter = evidence.planters.get(id);
            if (planter != null && planter.flushS() > 0) {
                lengths(planter, its.activities());
                betweenRecipes(planter, its.activities());
                days(planter, its.activities());
            }
        });
    }

    private Optional<Standing.Lines> toBeginWith(Applicator planter) {
        return evidence.carried.planter(planter.id()).flatMap(Standing.OfPlanter::lines);
    }

    private void lengths(Applicator planter, List<Activity> activities) {
        activities.stream()
                .filter(Activity.Flush.class::isInstance)
                .filter(flush -> evidence.lasts(flush) < planter.flushS())
                .forEach(flush -> report(
                        planter,
                        flush,
                        "flushing takes " + planter.flushS() + " s, not " + evidence.lasts(flush) + " s"));
    }

    private void betweenRecipes(Applicator planter, List<Activity> activities) {
        Optional<String> inLines = toBeginWith(planter).map(Standing.Lines::recipe);
        for (Activity activity : activities) {
            if (activity instanceof Activity.Flush) {
                inLines = Optional.empty();
            } else if (activity instanceof Activity.Plant plant) {
                inLines = recipe(plant.load()).or(Optional::empty);
            } else if (activity instanceof Activity.Fill fill) {
                String before = inLines.orElse("");
                Optional<String> other = recipe(fill.load()).filter(recipe -> !recipe.equals(before));
                if (inLines.isPresent() && other.isPresent()) {
                    report(
                            planter,
                            activity,
                            "it is filled with " + other.get() + " and was not flushed after " + before);
                }
            }
        }
    }

    private Optional<String> recipe(String load) {
        return Optional.ofNullable(evidence.loads.get(load)).map(Plan.Load::recipe);
    }

    private void days(Applicator planter, List<Activity> activities) {
        Map<Long, Boolean> flushed = new TreeMap<>();
        for (Activity activity : activities) {
            if (activity instanceof Activity.Plant || activity instanceof Activity.Flush) {
                long day = WorkingDays.day(planter.hours(), evidence.start(activity));
                flushed.put(day, activity instanceof Activity.Flush);
            }
        }
        toBeginWith(planter)
                .map(lines -> WorkingDays.day(planter.hours(), evidence.calendar.seconds(lines.applied())))
                .filter(day -> evidence.days.hasTimeLeft(planter, day, planter.flushS()))
                .ifPresent(day -> flushed.putIfAbsent(day, false));
        flushed.forEach((day, isFlushed) -> {
            if (!isFlushed) {
                evidence.report(
                        Rule.FLUSH,
                        planter.id() + " on " + evidence.season.first().plusDays(day),
                        "it applies mix that day and is not flushed after that");
            }
        });
    }

    private void report(Applicator planter, Activity activity, String what) {
        evidence.report(Rule.FLUSH, new Evidence.Done<>(planter.id(), activity).where(), what);
    }
}

package freshfurrow.model.progress;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The activities of a plan that the log has a line of. A line with a load of the plan is of that load: of its next batch by that rig, or of all
 * that is planted of the field from it. Other lines of rigs are of what the plan has nearest to them on their day; other lines of a field are of
 * all that was to be planted of it by then, for the greater part.
 */
final class AlreadyLogged {
    private final Plan plan;
    private final PlannedLoads loads;
    private final Set<String> knownLoads = new HashSet<>();
    private final Set<Activity> found = Collections.newSetFromMap(new IdentityHashMap<>());

    /** @param entries of the log that count, since the plan began, by time */
    AlreadyLogged(Plan plan, PlannedLoads loads, List<Entry> entries) {
        this.plan = plan;
        this.loads = loads;
        plan.loads().forEach(load -> knownLoads.add(load.id()));
        List<Entry> others = new ArrayList<>();
        entries.forEach(entry -> {
            if (!findByLoad(entry.fact())) {
                others.add(entry);
            }
        });
        others.forEach(this::findByTime);
    }

    boolean has(Activity activity) {
        return found.contains(activity);
    }

    /** Whether the fact names a load of the plan, so that its time does not matter. */
    private boolean findByLoad(Fact fact) {
        if (fact instanceof Fact.Planted planted
                && planted.load().filter(knownLoads::contains).isPresent()) {
            plantings(planted.field())
                    .filter(planting -> planting instanceof Activity.Plant plant
                            && plant.load().equals(planted.load().get()))
                    .forEach(found::add);
            return true;
        }
        if (fact instanceof Fact.BatchMade batch && batch.loads().stream().anyMatch(knownLoads::contains)) {
            open(
                            batch.rig(),
                            activity -> activity instanceof Activity.Extract extract
                                    && loads.of(extract.batch()).stream()
                                            .anyMatch(load -> batch.loads().contains(load.id())))
                    .stream()
                    .findFirst()
                    .ifPresent(found::add);
            return true;
        }
        return false;
    }

    private void findByTime(Entry entry) {
        if (entry.fact() instanceof Fact.Planted planted) {
            plantings(planted.field())
                    .filter(planting -> planted.withoutExtract()
                            ? planting instanceof Activity.PlantWithout
                                    && planting.start().isBefore(entry.at())
                            : !middle(planting).isAfter(entry.at()))
                    .forEach(found::add);
        } else if (entry.fact() instanceof Fact.BatchMade batch) {
            nearest(open(batch.rig(), Activity.Extract.class::isInstance), entry.at());
        } else if (entry.fact() instanceof Fact.WaterDrawn drawn) {
            nearest(
                    open(
                            drawn.rig(),
                            activity -> activity instanceof Activity.Draw draw
                                    && draw.at().equals(drawn.point())),
                    entry.at());
        }
    }

    private void nearest(List<Activity> activities, LocalDateTime at) {
        activities.stream()
                .filter(activity -> activity.end().toLocalDate().equals(at.toLocalDate()))
                .min(Comparator.comparing(
                        activity -> Duration.between(activity.end(), at).abs()))
                .ifPresent(found::add);
    }

    /** What a rig does by the plan that no line was found of yet, by time. */
    private List<Activity> open(String rig, Predicate<Activity> kind) {
        return plan.rigs().get(rig).activities().stream()
                .filter(kind)
                .filter(activity -> !found.contains(activity))
                .toList();
    }

    private Stream<Activity.Planting> plantings(String field) {
        return plan.planters().values().stream()
                .map(Plan.PlanterPlan::activities)
                .flatMap(Collection::stream)
                .filter(Activity.Planting.class::isInstance)
                .map(Activity.Planting.class::cast)
                .filter(plant -> plant.field().equals(field));
    }

    private static LocalDateTime middle(Activity.Planting plant) {
        return plant.start().plus(plant.span().dividedBy(2));
    }
}

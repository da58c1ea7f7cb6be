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
 * What of a plan the log has lines of. A line with a load of the plan is of that load: of its next batch by that rig, or of what is planted of the
 * field from it. Other lines of rigs are of what the plan has nearest to them on their day; other lines of a field of all that is planted of it, or
 * all without extract where they say so. A line of a field stands for all such pieces that were to end by then, or of which the greater part was
 * where it names no load; what it has beyond them, it has of the next.
 */
final class AlreadyLogged {
    private final Plan plan;
    private final PlannedLoads loads;
    private final Set<String> knownLoads = new HashSet<>();
    private final IdentityHashMap<Activity, Double> saidHa = new IdentityHashMap<>();
    private final Set<Activity> found = Collections.newSetFromMap(new IdentityHashMap<>());

    /** @param entries of the log that count, since the plan began, by time */
    AlreadyLogged(Plan plan, PlannedLoads loads, List<Entry> entries) {
        this.plan = plan;
        this.loads = loads;
        plan.loads().forEach(load -> knownLoads.add(load.id()));
        List<Entry> others = new ArrayList<>();
        entries.forEach(entry -> {
            if (!findByLoad(entry)) {
                others.add(entry);
            }
        });
        others.forEach(this::findByTime);
    }

    /** Whether there is a line of a draw or an extraction. */
    boolean has(Activity activity) {
        return found.contains(activity);
    }

    /** How much of a planting lines stand for, ha. */
    double plantedHa(Activity.Planting planting) {
        return saidHa.getOrDefault(planting, 0.0);
    }

    /** Whether the entry names a load of the plan. */
    private boolean findByLoad(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.Planted planted
                && planted.load().filter(knownLoads::contains).isPresent()) {
            standFor(
                    planted,
                    planting -> planting instanceof Activity.Plant plant
                            && plant.load().equals(planted.load().get()),
                    planting -> !planting.end().isAfter(entry.at()));
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
            standFor(
                    planted,
                    planting -> !planted.withoutExtract() || planting instanceof Activity.PlantWithout,
                    planting -> !(planted.withoutExtract() ? planting.end() : middle(planting)).isAfter(entry.at()));
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

    /** All such pieces that were done by then, whatever the area, and of the next as much as the line has beyond them. */
    private void standFor(
            Fact.Planted planted, Predicate<Activity.Planting> such, Predicate<Activity.Planting> doneByThen) {
        double leftHa = planted.areaHa();
        for (Activity.Planting planting :
                plantings(planted.field()).filter(such).toList()) {
            double openHa = planting.areaHa() - plantedHa(planting);
            double ha = doneByThen.test(planting) ? openHa : Math.min(openHa, leftHa);
            saidHa.merge(planting, ha, Double::sum);
            leftHa = Math.max(0, leftHa - ha);
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

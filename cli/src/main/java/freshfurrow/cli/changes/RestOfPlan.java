package freshfurrow.cli.changes;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a plan has still to do from a moment on, in figures. */
final class RestOfPlan {
    /** A lot of which less is left is used up, kg. */
    private static final double LEAST_KG = 0.5;

    private final Map<String, Field> fields = new HashMap<>();
    private final List<CompostLot> lots;
    private final Plan plan;
    private final LocalDateTime now;

    /** @param season what the plan was made for */
    RestOfPlan(Season season, Plan plan, LocalDateTime now) {
        this.plan = plan;
        this.now = now;
        season.fields().forEach(field -> fields.put(field.id(), field));
        lots = season.compostWithThatOnBoard();
    }

    /** By field, by whom and on which day it is begun or gone on with. */
    Map<String, Standing.Promise> fields() {
        Map<String, Standing.Promise> first = new LinkedHashMap<>();
        plan.planters().forEach((planter, its) -> plantings(its)
                .forEach(plant -> first.putIfAbsent(
                        plant.field(),
                        new Standing.Promise(planter, later(plant.start()).toLocalDate()))));
        return first;
    }

    /** The end of the last planting, by crop. */
    Map<String, LocalDateTime> finishByCrop() {
        Map<String, LocalDateTime> finish = new LinkedHashMap<>();
        plantings()
                .forEach(plant -> finish.merge(
                        crop(plant.field()), plant.end(), (one, other) -> one.isAfter(other) ? one : other));
        return finish;
    }

    double lateHaDays() {
        return plantings().mapToDouble(this::lateHaDays).sum();
    }

    double unservedHa() {
        return plan.totals().unservedHa();
    }

    int fills() {
        return (int) plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(activity ->
                        activity instanceof Activity.Fill && !activity.start().isBefore(now))
                .count();
    }

    double compostKg() {
        return batches().mapToDouble(Plan.Batch::compostKg).sum();
    }

    double dumpedL() {
        double dumped = plan.rigs().values().stream()
                .flatMap(rig -> rig.activities().stream())
                .filter(activity ->
                        activity instanceof Activity.Dump && !activity.start().isBefore(now))
                .mapToDouble(activity -> ((Activity.Dump) activity).litres())
                .sum();
        boolean begins = plan.start().filter(start -> start.now().equals(now)).isPresent();
        return begins
                ? dumped + plan.loads().stream().mapToDouble(Plan.Load::dumpedL).sum()
                : dumped;
    }

    /** The batch that takes the last of what compost there is at its time. */
    Optional<LocalDateTime> firstStockOut() {
        List<Plan.Batch> inOrder = plan.batches().stream()
                .filter(batch ->
                        plan.start().stream().noneMatch(start -> start.batches().contains(batch)))
                .sorted(Comparator.comparing(Plan.Batch::start))
                .toList();
        double usedKg = 0;
        for (Plan.Batch batch : inOrder) {
            usedKg += batch.compostKg();
            double thereKg = lots.stream()
                    .filter(lot -> !lot.from().isAfter(batch.start().toLocalDate()))
                    .mapToDouble(CompostLot::massKg)
                    .sum();
            if (thereKg - usedKg < LEAST_KG && !batch.end().isBefore(now)) {
                return Optional.of(batch.end());
            }
        }
        return Optional.empty();
    }

    /** Batches that have not begun. */
    Stream<Plan.Batch> batches() {
        return plan.batches().stream().filter(batch -> !batch.start().isBefore(now));
    }

    private Stream<Activity.Planting> plantings() {
        return plan.planters().values().stream().flatMap(this::plantings);
    }

    private Stream<Activity.Planting> plantings(Plan.PlanterPlan planter) {
        return planter.activities().stream()
                .filter(Activity.Planting.class::isInstance)
                .map(Activity.Planting.class::cast)
                .filter(plant -> plant.end().isAfter(now));
    }

    /** A planting under way counts with its share by time. */
    private double lateHaDays(Activity.Planting plant) {
        Field field = fields.get(plant.field());
        if (field == null) {
            return 0;
        }
        long days = Math.max(
                0,
                ChronoUnit.DAYS.between(
                        field.window().last(), later(plant.start()).toLocalDate()));
        double share =
                (double) Duration.between(later(plant.start()), plant.end()).toSeconds()
                        / plant.span().toSeconds();
        return plant.areaHa() * share * days;
    }

    private String crop(String field) {
        Field known = fields.get(field);
        return known == null ? "" : known.crop();
    }

    private LocalDateTime later(LocalDateTime time) {
        return time.isBefore(now) ? now : time;
    }
}

package freshfurrow.model.progress;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LoadMade;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.PlantedArea;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the log says of the loads of a plan, in place of what the plan expects of them: how much was planted from the load that a planter
 * was filled with last, and when its batches were really made.
 */
final class LoggedLoads {
    private final Season whole;
    private final Plan plan;
    private final PlannedLoads planned;
    private final Map<String, LoadMade> logged;
    private final Map<String, LocalDateTime> batchEnds = new HashMap<>();

    LoggedLoads(Season whole, Plan plan, LogSums sums) {
        this.whole = whole;
        this.plan = plan;
        planned = new PlannedLoads(plan);
        logged = sums.loads();
        plan.loads().forEach(load -> Optional.ofNullable(logged.get(load.id())).ifPresent(made -> batches(load, made)));
    }

    /** Those logged are the plan's in their order; when some are missing, nobody knows which, and the oldest is what counts. */
    private void batches(Plan.Load load, LoadMade made) {
        boolean all = made.batches().size() >= load.batches().size();
        for (int i = 0;
                i < load.batches().size()
                        && (all || i < Math.min(1, made.batches().size()));
                i++) {
            String id = load.batches().get(i);
            LocalDateTime end = made.batches().get(i).at();
            LocalDateTime expected = planned.batch(id).end();
            LocalDateTime known = all || end.isBefore(expected) ? end : expected;
            batchEnds.merge(id, known, (one, other) -> one.isBefore(other) ? one : other);
        }
    }

    /** A batch of the plan as it was really made. */
    Plan.Batch batch(Plan.Batch batch) {
        LocalDateTime end = batchEnds.getOrDefault(batch.id(), batch.end());
        return new Plan.Batch(
                batch.id(),
                batch.rig(),
                end.minus(Duration.between(batch.start(), batch.end())),
                end,
                batch.compostKg(),
                batch.waterL(),
                batch.lots());
    }

    /** Mix on board with the age that its batches really have. */
    Mix mix(Mix mix) {
        return mix.batches().stream().anyMatch(batchEnds::containsKey)
                ? mix.withDeadline(deadline(mix.recipe(), mix.batches()))
                : mix;
    }

    private LocalDateTime deadline(String recipe, List<String> batches) {
        LocalDateTime oldest = batches.stream()
                .map(id -> batch(planned.batch(id)).end())
                .min(LocalDateTime::compareTo)
                .orElseThrow();
        return whole.clockChanges().after(oldest, whole.recipe(recipe).holdS());
    }

    /**
     * What is in a planter's tank: where the log names the load that it was filled with last, what that had less what was planted from it.
     *
     * @param expected by the plan
     * @param until when the plan was followed last
     */
    Optional<Standing.Tank> tank(String planter, Optional<Standing.Tank> expected, LocalDateTime until) {
        Optional<Standing.Tank> tank = lastFull(planter, until)
                .filter(full -> hasLines(full.load()))
                .map(this::left)
                .orElse(expected);
        return tank.map(its -> its.withMix(mix(its.mix())));
    }

    /** A planter's tank as it was when it was filled last, or when the plan began; empty when it never was. */
    Optional<Standing.Tank> lastFull(String planter, LocalDateTime until) {
        return lastFill(planter, until).or(() -> beganWith(planter));
    }

    /** Whether the log says that something was planted from a load. */
    boolean hasLines(String load) {
        return !planted(load).isEmpty();
    }

    /** What the log leaves of a tank; empty when that is nothing. */
    Optional<Standing.Tank> left(Standing.Tank full) {
        PlantedArea area = new PlantedArea(full.mix().areaHa(), 0, 0);
        for (Entry entry : planted(full.load())) {
            area = area.plus(
                    ((Fact.Planted) entry.fact()).areaHa(), whole.units().area());
        }
        double leftHa = Rounded.hectares(area.leftHa());
        return leftHa > 0 ? Optional.of(full.withMix(full.mix().withAreaHa(leftHa))) : Optional.empty();
    }

    /** Lines since the plan began; what was planted before, it knew of, or took as planned. */
    private List<Entry> planted(String load) {
        LoadMade made = logged.get(load);
        Optional<LocalDateTime> begins = plan.start().map(PlanStart::now);
        return made == null
                ? List.of()
                : made.planted().stream()
                        .filter(entry ->
                                begins.filter(now -> !entry.at().isAfter(now)).isEmpty())
                        .toList();
    }

    /** The load that a planter was filled with last, whole. */
    private Optional<Standing.Tank> lastFill(String planter, LocalDateTime until) {
        return plan.planters().get(planter).activities().stream()
                .filter(Activity.Fill.class::isInstance)
                .filter(fill -> fill.start().isBefore(until))
                .reduce((before, after) -> after)
                .map(fill -> planned.load(((Activity.Fill) fill).load()))
                .filter(load -> planned.plantedHa(load.id()) > 0)
                .map(load -> new Standing.Tank(
                        load.id(),
                        load.rig(),
                        new Mix(load.recipe(), planned.plantedHa(load.id()), load.deadline(), load.batches())));
    }

    /** What was in the tank when the plan began. */
    private Optional<Standing.Tank> beganWith(String planter) {
        return plan.start()
                .flatMap(
                        start -> Optional.ofNullable(start.standing().planters().get(planter)))
                .flatMap(Standing.OfPlanter::tank);
    }

    /** The batches on board by the plan and those of tanks that hold more than it expects, as they were really made. */
    List<Plan.Batch> batches(List<Plan.Batch> expected, Standing standing) {
        Map<String, Plan.Batch> onBoard = new LinkedHashMap<>();
        Stream.concat(
                        expected.stream(),
                        standing.planters().values().stream()
                                .flatMap(planter -> planter.tank().stream())
                                .flatMap(tank -> tank.mix().batches().stream())
                                .map(planned::batch))
                .forEach(batch -> onBoard.putIfAbsent(batch.id(), batch(batch)));
        return List.copyOf(onBoard.values());
    }
}

package freshfurrow.model.progress;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/** Follows a planter through what it has begun. */
final class PlanterSoFar implements ActivityVisitor.OfPlanter<PlanterSoFar> {
    private final Season season;
    private final PlannedLoads loads;
    private final LocalDateTime now;
    private String at;
    private LocalDateTime freeFrom;
    private Optional<LocalDate> filledOn = Optional.empty();
    private Optional<Standing.Tank> tank = Optional.empty();
    private final boolean isFlushed;
    private Optional<Standing.Lines> lines = Optional.empty();

    PlanterSoFar(Season season, PlannedLoads loads, LocalDateTime now, String id) {
        this.season = season;
        this.loads = loads;
        this.now = now;
        at = season.applicator(id).at();
        isFlushed = season.applicator(id).flushS() > 0;
        freeFrom = now;
        season.standing()
                .ifPresent(standing -> Optional.ofNullable(standing.planters().get(id))
                        .ifPresent(its -> begin(its, standing.now().equals(now))));
    }

    /** @param atOnce whether the plan has done nothing yet; else it has let out what it does not plant */
    private void begin(Standing.OfPlanter standing, boolean atOnce) {
        at = standing.at();
        busyUntil(standing.freeFrom());
        filledOn = standing.filledOn();
        lines = standing.lines();
        tank = atOnce
                ? standing.tank()
                : standing.tank().flatMap(its -> tankWith(loads.load(its.load()), loads.plantedHa(its.load())));
    }

    private void busyUntil(LocalDateTime end) {
        freeFrom = end.isAfter(freeFrom) ? end : freeFrom;
    }

    /** What of a planting was in the ground by {@code now}, ha: its share by time. */
    static double plantedHa(Activity.Planting plant, LocalDateTime now) {
        if (!plant.end().isAfter(now)) {
            return plant.areaHa();
        }
        double share = (double) Duration.between(plant.start(), now).toSeconds()
                / plant.span().toSeconds();
        return Rounded.hectares(plant.areaHa() * share);
    }

    void did(Activity activity) {
        at = activity.endsAt();
        activity.accept(this);
    }

    @Override
    public PlanterSoFar visit(Activity.Move move) {
        busyUntil(move.end());
        return this;
    }

    @Override
    public PlanterSoFar visit(Activity.Wait wait) {
        return this;
    }

    @Override
    public PlanterSoFar visit(Activity.Fill fill) {
        busyUntil(fill.end());
        filledOn = Optional.of(fill.start().toLocalDate());
        Plan.Load load = loads.load(fill.load());
        tank = tankWith(load, loads.ha(load, season));
        return this;
    }

    @Override
    public PlanterSoFar visit(Activity.Plant plant) {
        tank = tankWith(
                loads.load(plant.load()), tank.map(full -> full.mix().areaHa()).orElse(0.0) - plantedHa(plant, now));
        if (isFlushed) {
            lines = Optional.of(new Standing.Lines(loads.load(plant.load()).recipe(), plant.start()));
        }
        return this;
    }

    @Override
    public PlanterSoFar visit(Activity.PlantWithout planting) {
        tank = Optional.empty();
        return this;
    }

    @Override
    public PlanterSoFar visit(Activity.Flush flush) {
        busyUntil(flush.end());
        lines = Optional.empty();
        return this;
    }

    Standing.OfPlanter standing() {
        return new Standing.OfPlanter(at, freeFrom, filledOn, tank, lines);
    }

    private static Optional<Standing.Tank> tankWith(Plan.Load load, double areaHa) {
        double left = Rounded.hectares(areaHa);
        return left < Plan.LEAST_HA / 2
                ? Optional.empty()
                : Optional.of(new Standing.Tank(
                        load.id(), load.rig(), new Mix(load.recipe(), left, load.deadline(), load.batches())));
    }
}

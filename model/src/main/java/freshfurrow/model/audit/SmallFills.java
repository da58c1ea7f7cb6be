package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** That no small part of a tank is filled but to finish something, or because nothing more could be had since work began. */
final class SmallFills {
    /** What is left of compost, a field or a mix for less than 100 m2 counts as nothing. */
    private static final double NOTHING_HA = 0.01;

    private final Evidence evidence;
    private final List<Evidence.Done<Activity.Fill>> fills;

    SmallFills(Evidence evidence) {
        this.evidence = evidence;
        fills = evidence.all(Activity.Fill.class);
    }

    void check() {
        for (Evidence.Done<Activity.Fill> done : fills) {
            Plan.Load load = evidence.loads.get(done.activity().load());
            Applicator planter = evidence.planters.get(done.machine());
            if (load == null || planter == null) {
                continue;
            }
            Optional<Recipe> recipe = evidence.recipeOf(load);
            if (recipe.isPresent()
                    && load.litres() < leastL(planter, recipe.get()) * (1 - Evidence.LEEWAY) - Evidence.ROUNDING
                    && !finishesAField(load)
                    && !usesUpMix(load, done.activity())
                    && !isCompostUsedUp(recipe.get())
                    && !isFirstOfHours(done, planter)) {
                evidence.report(
                        Rule.LEAST_FILL,
                        done.where(),
                        "it takes " + Evidence.show(load.litres()) + " L, less than its least fill of "
                                + Evidence.show(leastL(planter, recipe.get())) + " L, and finishes nothing");
            }
        }
    }

    /** A share of the largest fill that can be planted within the hold time, less its reserve. */
    private double leastL(Applicator planter, Recipe recipe) {
        double haPerS = planter.fieldCapacityM2PerS() / 10_000;
        double fastestLPerS = evidence.season.rigs().stream()
                .mapToDouble(Rig::transferLPerS)
                .max()
                .orElse(Double.MAX_VALUE);
        double secondsPerHa = 1 / haPerS + recipe.mixLPerHa() / fastestLPerS;
        double withinHoldHa = Math.max(0, recipe.holdS() - recipe.reserveS() - planter.fillSetupS()) / secondsPerHa;
        return planter.leastFill() * Math.min(planter.tankL(), withinHoldHa * recipe.mixLPerHa());
    }

    private boolean finishesAField(Plan.Load load) {
        return evidence.all(Activity.Plant.class).stream()
                .map(Evidence.Done::activity)
                .filter(plant -> plant.load().equals(load.id()))
                .anyMatch(plant -> plantedAfter(plant) < NOTHING_HA);
    }

    private double plantedAfter(Activity.Plant last) {
        return evidence.all(Activity.Planting.class).stream()
                .map(Evidence.Done::activity)
                .filter(plant ->
                        plant.field().equals(last.field()) && plant.start().isAfter(last.start()))
                .mapToDouble(Activity.Planting::areaHa)
                .sum();
    }

    /** Whether it is of mix for several fills, or made before, and no later fill is. */
    private boolean usesUpMix(Plan.Load load, Activity.Fill fill) {
        boolean isOfSeveral = load.batches().isEmpty()
                || load.batches().stream().anyMatch(evidence.carried::isBatch)
                || fills.stream()
                        .anyMatch(other -> other.activity().start().isBefore(fill.start()) && shares(other, load));
        return isOfSeveral
                && fills.stream()
                        .noneMatch(other -> other.activity().start().isAfter(fill.start()) && shares(other, load));
    }

    private boolean shares(Evidence.Done<Activity.Fill> other, Plan.Load load) {
        Plan.Load its = evidence.loads.get(other.activity().load());
        return its != null && its.batches().stream().anyMatch(load.batches()::contains);
    }

    /** Batches are promised in another order than they are made: whether some are made later tells nothing. */
    private boolean isCompostUsedUp(Recipe recipe) {
        double stockKg = evidence.season.compostWithThatOnBoard().stream()
                .mapToDouble(CompostLot::massKg)
                .sum();
        double takenKg = evidence.plan.batches().stream()
                .filter(batch -> !evidence.carried.isBatch(batch.id()))
                .mapToDouble(Plan.Batch::compostKg)
                .sum();
        return stockKg - takenKg < NOTHING_HA * recipe.compostKgPerHa() + Evidence.ROUNDING;
    }

    /** Whether the planter has not been filled before since its hours began, or since the ground that it works dried. */
    private boolean isFirstOfHours(Evidence.Done<Activity.Fill> done, Applicator planter) {
        long start = evidence.start(done.activity());
        long before = fills.stream()
                .filter(other -> other.machine().equals(done.machine()))
                .mapToLong(other -> evidence.start(other.activity()))
                .filter(other -> other < start)
                .max()
                .orElse(Long.MIN_VALUE);
        return Stream.concat(
                                evidence.calendar.work(planter.id(), planter.hours()).stream(),
                                evidence.calendar.open(planter.applyHours()).stream())
                        .anyMatch(hours -> hours.start() > before && hours.start() <= start)
                || evidence.season.fields().stream()
                        .flatMap(field -> evidence.calendar.wet(field).stream())
                        .anyMatch(wet -> wet.end() > before && wet.end() <= start);
    }
}

package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Recipe;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** The figures of a season, added up from what machines do. */
final class PlanTally {
    private static final Set<WaitReason> COUNTED = Set.of(WaitReason.RIG, WaitReason.WATER, WaitReason.COMPOST);

    private final Evidence evidence;

    final int fills;
    final int draws;
    final int compostLoadings;
    final int extractions;
    final double unservedHa;
    final double waitMin;
    final double driveKm;
    final double driveMin;
    final double dumpedL;
    final double dumpedKg;

    private double plantedHa;
    private double untreatedHa;
    private double weightedUntreatedHa;
    private double lateHaDays;
    private double weightedLateHaDays;
    private double haDaysSinceStart;

    PlanTally(Evidence evidence) {
        this.evidence = evidence;
        fills = evidence.all(Activity.Fill.class).size();
        draws = evidence.all(Activity.Draw.class).size();
        compostLoadings = evidence.all(Activity.LoadCompost.class).size();
        extractions = evidence.all(Activity.Extract.class).size();
        unservedHa = evidence.plan.unserved().stream()
                .mapToDouble(Plan.Unserved::areaHa)
                .sum();
        waitMin = waitSeconds() / MINUTE_S;
        driveKm = evidence.all(Activity.Move.class).stream()
                .mapToDouble(done -> done.activity().km())
                .sum();
        driveMin = driveSeconds() / MINUTE_S;
        dumpedL = dumpedInTanksL() + dumpedOnRigsL();
        dumpedKg = dumpedInTanksKg() + dumpedOnRigsKg();
        evidence.all(Activity.Planting.class).forEach(done -> add(done.activity()));
    }

    double plantedHa() {
        return plantedHa;
    }

    /** Planted without extract. */
    double untreatedHa() {
        return untreatedHa;
    }

    /** The same, each field with its extract weight. */
    double weightedUntreatedHa() {
        return weightedUntreatedHa;
    }

    /** Planted area times the days after its window. */
    double lateHaDays() {
        return lateHaDays;
    }

    /** The same, each field with its late weight. */
    double weightedLateHaDays() {
        return weightedLateHaDays;
    }

    /** Planted area times the days since the season's first day. */
    double haDaysSinceStart() {
        return haDaysSinceStart;
    }

    /** Fields fixed to a day that are not begun on it. */
    long brokenPromises() {
        return evidence.season.fields().stream()
                .filter(field -> field.fixed().on().isPresent())
                .filter(field -> evidence.all(Activity.Planting.class).stream()
                        .map(Evidence.Done::activity)
                        .filter(plant -> plant.field().equals(field.id()))
                        .map(plant -> plant.start().toLocalDate())
                        .min(LocalDate::compareTo)
                        .filter(field.fixed().on().get()::equals)
                        .isEmpty())
                .count();
    }

    /** Promised fields that are begun by another planter or on another day. */
    int movedFields() {
        Map<String, Evidence.Done<Activity.Planting>> first = new HashMap<>();
        evidence.all(Activity.Planting.class)
                .forEach(done -> first.merge(
                        done.activity().field(),
                        done,
                        (one, other) ->
                                other.activity().start().isBefore(one.activity().start()) ? other : one));
        return (int) first.entrySet().stream()
                .filter(begun -> evidence.carried
                        .promise(begun.getKey())
                        .filter(promise ->
                                !(promise.planter().equals(begun.getValue().machine())
                                        && promise.day()
                                                .equals(begun.getValue()
                                                        .activity()
                                                        .start()
                                                        .toLocalDate())))
                        .isPresent())
                .count();
    }

    /** A piece that goes over midnight counts on both dates. */
    private void add(Activity.Planting plant) {
        plantedHa += plant.areaHa();
        if (plant instanceof Activity.PlantWithout) {
            untreatedHa += plant.areaHa();
            Field untreated = evidence.fields.get(plant.field());
            weightedUntreatedHa += untreated == null ? 0 : plant.areaHa() * untreated.extractWeight();
        }
        long start = evidence.start(plant);
        long end = evidence.end(plant);
        if (start < 0 || end > evidence.calendar.end() || end <= start) {
            return;
        }
        for (long day = start / DAY_S; day * DAY_S < end; day++) {
            long seconds = Math.min(end, (day + 1) * DAY_S) - Math.max(start, day * DAY_S);
            double areaHa = plant.areaHa() * seconds / (end - start);
            haDaysSinceStart += areaHa * day;
            Field field = evidence.fields.get(plant.field());
            if (field != null) {
                long lastDay = evidence.calendar.midnight(field.window().last()) / DAY_S;
                double late = areaHa * Math.max(0, day - lastDay);
                lateHaDays += late;
                weightedLateHaDays += late * field.lateWeight();
            }
        }
    }

    private double waitSeconds() {
        double seconds = 0;
        for (Evidence.Done<Activity.Wait> done : evidence.all(Activity.Wait.class)) {
            var planter = evidence.planters.get(done.machine());
            if (planter != null && COUNTED.contains(done.activity().why())) {
                long start = evidence.start(done.activity());
                long end = evidence.end(done.activity());
                for (WorkCalendar.Period work : evidence.days.work(planter)) {
                    seconds += work.overlap(start, end);
                }
            }
        }
        return seconds;
    }

    /** A planter's move time is no driving. */
    private double driveSeconds() {
        double seconds = 0;
        for (Evidence.Done<Activity.Move> done : evidence.all(Activity.Move.class)) {
            var planter = evidence.planters.get(done.machine());
            seconds += evidence.lasts(done.activity()) - (planter == null ? 0 : planter.moveTimeS());
        }
        return seconds;
    }

    private Optional<Recipe> recipeOfMixWith(String batch) {
        return evidence.rigs.keySet().stream()
                .flatMap(rig -> evidence.carried.mix(rig).stream())
                .filter(mix -> mix.batches().contains(batch) || batch.isEmpty())
                .map(mix -> evidence.recipes.get(mix.recipe()))
                .filter(Objects::nonNull)
                .findFirst();
    }

    private double dumpedInTanksL() {
        return evidence.plan.loads().stream().mapToDouble(Plan.Load::dumpedL).sum();
    }

    private double dumpedOnRigsL() {
        return evidence.all(Activity.Dump.class).stream()
                .mapToDouble(done -> done.activity().litres())
                .sum();
    }

    private double dumpedInTanksKg() {
        double kilograms = 0;
        for (Plan.Load load : evidence.plan.loads()) {
            Optional<Recipe> recipe = evidence.recipeOf(load);
            if (recipe.isPresent()) {
                kilograms += Evidence.kilograms(load.dumpedL(), recipe.get());
            }
        }
        return kilograms;
    }

    private double dumpedOnRigsKg() {
        double kilograms = 0;
        for (Map.Entry<String, Double> dumped : evidence.dumpedOfBatch().entrySet()) {
            Optional<Recipe> recipe = evidence.plan.loads().stream()
                    .filter(load -> load.batches().contains(dumped.getKey()))
                    .findFirst()
                    .flatMap(evidence::recipeOf)
                    .or(() -> recipeOfMixWith(dumped.getKey()));
            if (recipe.isPresent()) {
                kilograms += Evidence.kilograms(dumped.getValue(), recipe.get());
            }
        }
        return kilograms;
    }
}

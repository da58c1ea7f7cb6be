package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.HOUR_S;

import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.Work;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Adds up what was done in a spring, part by part. */
final class SpringTally {
    /** Less than this is the rounding of batches to grams. */
    private static final double LEAST_KG = 0.1;

    /** Less of a load that is let out is no stale load. */
    private static final double LEAST_STALE_HA = 0.01;

    private static final Set<WaitReason> COUNTED = EnumSet.of(WaitReason.RIG, WaitReason.WATER, WaitReason.COMPOST);

    private final Season season;
    private final WorkingTime hours;
    private final Map<String, Field> fields;
    private final Attendance[] rigs;
    /** Of planters and rigs with their own people: what is mounted on a rig is worked by the rig's. */
    private final Attendance[] crewsOfPlanters;

    private final Attendance[] crewsOfRigs;
    private int fills;
    private int waterTrips;
    private long waitS;
    private double driveKm;
    private int finishS;
    private double untreatedHa;
    private double untreatedKg;
    private int staleLoads;
    private double waterL;
    private long overtimeS;

    /** A tally of the whole season, of which nothing is done yet. */
    SpringTally(CompiledSeason compiled) {
        season = compiled.season();
        hours = new WorkingTime(compiled);
        fields = season.fields().stream().collect(Collectors.toMap(Field::id, field -> field));
        rigs = attendances(season.rigs().size());
        crewsOfRigs = attendances(season.rigs().size());
        crewsOfPlanters = attendances(season.applicators().size());
        for (int p = 0; p < crewsOfPlanters.length; p++) {
            for (int r = 0; r < crewsOfRigs.length; r++) {
                if (season.applicators()
                        .get(p)
                        .on()
                        .filter(season.rigs().get(r).id()::equals)
                        .isPresent()) {
                    crewsOfPlanters[p] = crewsOfRigs[r];
                }
            }
        }
    }

    private Attendance[] attendances(int machines) {
        Attendance[] all = new Attendance[machines];
        for (int i = 0; i < machines; i++) {
            all[i] = new Attendance(season.days());
        }
        return all;
    }

    /**
     * Adds what begins in a plan before a time; planting and waiting end then, all else is finished.
     *
     * @param done how things stand then
     */
    void add(Plan plan, int untilS, PlanStart done) {
        stale(plan, untilS, done);
        for (int p = 0; p < crewsOfPlanters.length; p++) {
            for (Activity activity :
                    of(plan.planters(), season.applicators().get(p).id()).activities()) {
                if (seconds(activity.start()) < untilS) {
                    planter(p, activity, untilS);
                }
            }
        }
        for (int r = 0; r < rigs.length; r++) {
            for (Activity activity : of(plan.rigs(), season.rigs().get(r).id()).activities()) {
                if (seconds(activity.start()) < untilS) {
                    rig(r, activity);
                }
            }
        }
    }

    /** Loads that were begun and of which nothing is used any more. */
    private void stale(Plan plan, int untilS, PlanStart done) {
        Map<String, LocalDateTime> filled = plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Fill.class::isInstance)
                .map(Activity.Fill.class::cast)
                .collect(Collectors.toMap(Activity.Fill::load, Activity.Fill::start));
        Set<String> inTanks = done.standing().planters().values().stream()
                .flatMap(planter -> planter.tank().stream())
                .map(Standing.Tank::load)
                .collect(Collectors.toSet());
        staleLoads += (int) plan.loads().stream()
                .filter(this::isStale)
                .filter(load -> seconds(filled.getOrDefault(load.id(), load.lastDrop())) < untilS)
                .filter(load -> !inTanks.contains(load.id()))
                .count();
    }

    /** More than a hundred square metres' worth of it is let out. */
    private boolean isStale(Plan.Load load) {
        return load.dumpedL() > LEAST_STALE_HA * season.recipe(load.recipe()).mixLPerHa();
    }

    private static <T> T of(Map<String, T> all, String id) {
        T found = all.get(id);
        if (found == null) {
            throw new IllegalArgumentException("nothing is known of " + id);
        }
        return found;
    }

    private void planter(int p, Activity activity, int untilS) {
        int start = seconds(activity.start());
        int end = seconds(activity.end());
        if (activity instanceof Activity.Wait wait) {
            if (!COUNTED.contains(wait.why())) {
                return;
            }
            end = Math.min(end, untilS);
            waitS += hours.planterS(p, start, end);
        } else if (activity instanceof Activity.Move move) {
            driveKm += move.km();
        } else if (activity instanceof Activity.Fill) {
            fills++;
        } else if (activity instanceof Activity.Planting) {
            end = Math.min(end, untilS);
            finishS = Math.max(finishS, end);
            overtimeS += end - start - hours.planterS(p, start, end);
            if (activity instanceof Activity.PlantWithout planting) {
                untreated(planting, untilS);
            }
        }
        crewsOfPlanters[p].worked(start, end);
    }

    private void untreated(Activity.PlantWithout planting, int untilS) {
        double areaHa = StandingAt.plantedHa(planting, season.time().at(untilS));
        untreatedHa += areaHa;
        untreatedKg +=
                areaHa * season.recipe(of(fields, planting.field()).recipe()).compostKgPerHa();
    }

    private void rig(int r, Activity activity) {
        if (activity instanceof Activity.Move move) {
            driveKm += move.km();
        } else if (activity instanceof Activity.Draw draw) {
            waterTrips++;
            waterL += draw.litres();
        }
        rigs[r].worked(seconds(activity.start()), seconds(activity.end()));
        crewsOfRigs[r].worked(seconds(activity.start()), seconds(activity.end()));
    }

    /** Water drawn by rigs, L. */
    double waterL() {
        return waterL;
    }

    /** Time planted past the last hours of days, h. */
    double overtimeH() {
        return (double) overtimeS / HOUR_S;
    }

    /**
     * The figures of the spring when all its parts are added.
     *
     * @param done what had been planted and used by the season's end
     */
    SpringFigures figures(PlanStart done) {
        double unservedHa = 0;
        double lateHaDays = 0;
        double appliedKg = 0;
        double plantedHa = 0;
        Map<String, Double> planted = done.plantedHa();
        for (Field field : season.fields()) {
            double doneHa = planted.getOrDefault(field.id(), 0.0);
            plantedHa += field.work() == Work.PLANT ? doneHa : 0;
            double left = field.areaHa() - doneHa;
            unservedHa += left < Plan.LEAST_HA ? 0 : left;
        }
        for (PlanStart.Planted part : done.planted()) {
            Field field = of(fields, part.field());
            long days = ChronoUnit.DAYS.between(field.window().last(), part.date());
            lateHaDays += part.areaHa() * Math.max(0, days);
            appliedKg += part.areaHa() * season.recipe(field.recipe()).compostKgPerHa();
        }
        double compostKg = kilograms(season.compost()) - kilograms(done.lots()) - onBoardKg(done);
        double dumpedKg = compostKg - (appliedKg - untreatedKg);
        long rigS = 0;
        long busyS = 0;
        for (int r = 0; r < rigs.length; r++) {
            int rig = r;
            rigS += rigs[r].atWorkS((from, to) -> hours.rigThereS(rig, from, to));
            busyS += rigs[r].busyS();
        }
        return new SpringFigures(
                unservedHa > 0 ? season.days() * DAY_S : finishS,
                rounded(lateHaDays),
                rounded(unservedHa),
                fills,
                waterTrips,
                rounded((double) waitS / HOUR_S),
                rounded(rigS == 0 ? 0 : Math.min(1, (double) busyS / rigS)),
                dumpedKg < LEAST_KG ? 0 : rounded(dumpedKg),
                rounded(Math.max(0, compostKg)),
                rounded((double) workS() / HOUR_S),
                rounded(driveKm),
                rounded(untreatedHa),
                rounded(plantedHa > 0 ? Math.max(0, 1 - untreatedHa / plantedHa) : 1),
                staleLoads,
                OptionalDouble.empty());
    }

    /** Hours at work of all machines; what is mounted on a rig and the rig are at work together, s. */
    private long workS() {
        long workS = 0;
        for (int r = 0; r < crewsOfRigs.length; r++) {
            int rig = r;
            workS += crewsOfRigs[r].atWorkS((from, to) -> hours.rigThereS(rig, from, to));
        }
        for (int p = 0; p < crewsOfPlanters.length; p++) {
            int planter = p;
            if (season.applicators().get(p).on().isEmpty()) {
                workS += crewsOfPlanters[p].atWorkS((from, to) -> hours.planterThereS(planter, from, to));
            }
        }
        return workS;
    }

    /** What rigs have fetched and not used is left over. */
    private static double onBoardKg(PlanStart done) {
        return done.standing().rigs().values().stream()
                .flatMap(rig -> rig.compostKg().values().stream())
                .mapToDouble(kg -> kg)
                .sum();
    }

    private static double kilograms(Iterable<CompostLot> lots) {
        double sum = 0;
        for (CompostLot lot : lots) {
            sum += lot.massKg();
        }
        return sum;
    }

    /** To six decimals: so a file tells them in whole. */
    private static double rounded(double figure) {
        return Math.round(figure * 1e6) / 1e6;
    }

    private int seconds(LocalDateTime time) {
        return (int) season.time().seconds(time);
    }
}

package freshfurrow.model.plan;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A season played out: what every machine does, every load and every batch. All figures are SI, all times local.
 *
 * @param season which season file it was made from
 * @param planters and sprayers, by id, in the season's order; likewise {@code rigs}
 * @param loads in the order in which they are transferred, ids L0001 and on, or on from those made before; loads that are in
 *     tanks to begin with come first, with what is left of them, and keep their names
 * @param batches in the order in which they were recorded, ids B0001 and on, or on from those made before; batches made before of
 *     which mix is on board come first
 * @param unserved fields not planted in whole, with the reason
 * @param bounds what no plan of the season can do better, when it was worked out
 * @param limits what each resource holds back, one entry a resource; empty when it was not worked out
 * @param start what was done before, when the season was already under way; then all else is of what is left of it
 * @param chances how sure it is, where times vary
 */
public record Plan(
        SeasonSource season,
        Score score,
        Totals totals,
        Map<String, PlanterPlan> planters,
        Map<String, RigPlan> rigs,
        List<Load> loads,
        List<Batch> batches,
        List<Unserved> unserved,
        Optional<Bounds> bounds,
        List<Limit> limits,
        Optional<PlanStart> start,
        Optional<Chances> chances) {
    /** Areas are cut in square decimetres: what is less is left of subtracting figures. */
    public static final double LEAST_HA = 1e-6;

    public Plan {
        planters = Collections.unmodifiableMap(new LinkedHashMap<>(planters));
        rigs = Collections.unmodifiableMap(new LinkedHashMap<>(rigs));
        loads = List.copyOf(loads);
        batches = List.copyOf(batches);
        unserved = List.copyOf(unserved);
        limits = List.copyOf(limits);
    }

    /** A plan of a whole season. */
    public Plan(
            SeasonSource season,
            Score score,
            Totals totals,
            Map<String, PlanterPlan> planters,
            Map<String, RigPlan> rigs,
            List<Load> loads,
            List<Batch> batches,
            List<Unserved> unserved,
            Optional<Bounds> bounds,
            List<Limit> limits) {
        this(
                season,
                score,
                totals,
                planters,
                rigs,
                loads,
                batches,
                unserved,
                bounds,
                limits,
                Optional.empty(),
                Optional.empty());
    }

    /** A plan of which nobody asked how sure it is. */
    public Plan(
            SeasonSource season,
            Score score,
            Totals totals,
            Map<String, PlanterPlan> planters,
            Map<String, RigPlan> rigs,
            List<Load> loads,
            List<Batch> batches,
            List<Unserved> unserved,
            Optional<Bounds> bounds,
            List<Limit> limits,
            Optional<PlanStart> start) {
        this(season, score, totals, planters, rigs, loads, batches, unserved, bounds, limits, start, Optional.empty());
    }

    /** This plan with these bounds in place of those it had. */
    public Plan withBounds(Bounds found) {
        return with(Optional.of(found), limits, chances);
    }

    /** This plan with these chances in place of those it had. */
    public Plan withChances(Chances found) {
        return with(bounds, limits, Optional.of(found));
    }

    /** This plan with these limits in place of those it had. */
    public Plan withLimits(List<Limit> found) {
        return with(bounds, found, chances);
    }

    private Plan with(Optional<Bounds> itsBounds, List<Limit> itsLimits, Optional<Chances> itsChances) {
        return new Plan(
                season,
                score,
                totals,
                planters,
                rigs,
                loads,
                batches,
                unserved,
                itsBounds,
                itsLimits,
                start,
                itsChances);
    }

    /** Ids of the fields that are planted without extract by decision. */
    public Set<String> withoutExtract() {
        return planters.values().stream()
                .flatMap(planter -> planter.withoutExtract().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * What late, unplanted and untreated area weighs, in hundredths of weighted ha-days or by money in its currency: 0 where there is
     * none.
     */
    public double harm() {
        return totals.bill().map(Bill::harm).orElse((double) -score.medium());
    }

    /** What passes from the last drop of a load to its deadline. */
    public Duration margin(Load load) {
        return new ClockChanges(load.lastDrop(), season.clockChanges()).between(load.lastDrop(), load.deadline());
    }

    /**
     * Where the season came from.
     *
     * @param file name of the season file
     * @param sha256 of all files the season was read from, lower-case hex
     * @param units in which people want to see the plan's figures
     * @param names what people call fields by their ids, in the season's order; only those that are called otherwise
     * @param clockChanges those that its hold times may cross, in order
     * @param fixed ids of fields that are fixed to a planter or a day, in the season's order
     */
    public record SeasonSource(
            String name,
            String file,
            String sha256,
            DisplayUnits units,
            Map<String, String> names,
            List<ClockChanges.Change> clockChanges,
            List<String> fixed) {
        public SeasonSource {
            fixed = List.copyOf(fixed);
            clockChanges = List.copyOf(clockChanges);
            names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
        }

        /** A season whose fields are called by their ids, and whose clock is not changed. */
        public SeasonSource(String name, String file, String sha256, DisplayUnits units) {
            this(name, file, sha256, units, Map.of(), List.of());
        }

        /** A season in which nothing is fixed. */
        public SeasonSource(
                String name,
                String file,
                String sha256,
                DisplayUnits units,
                Map<String, String> names,
                List<ClockChanges.Change> clockChanges) {
            this(name, file, sha256, units, names, clockChanges, List.of());
        }

        /** What a plan tells of the season that was read from a file of that name and with that checksum. */
        public static SeasonSource of(Season season, String file, String sha256) {
            Map<String, String> names = new LinkedHashMap<>();
            for (Field field : season.fields()) {
                if (!field.name().equals(field.id())) {
                    names.put(field.id(), field.name());
                }
            }
            return new SeasonSource(
                    season.name(),
                    file,
                    sha256,
                    season.units(),
                    names,
                    season.clockChanges().all(),
                    season.fields().stream()
                            .filter(field -> !field.fixed().equals(Fixed.NOT))
                            .map(Field::id)
                            .toList());
        }
    }

    /**
     * The score as the search saw it; higher is better, 0 is best.
     *
     * @param hard broken rules, negated
     * @param medium weighted late and unserved area, hundredths of ha-days, or by money the bill in millionths, negated
     * @param soft minutes, negated
     */
    public record Score(long hard, long medium, long soft) {}

    /**
     * The season in figures.
     *
     * @param areaHa planted, with and without extract, ha
     * @param untreatedHa of that planted without extract
     * @param lateHaDays area planted after its window times days after, unweighted
     * @param compostTrips loadings of compost where it lies
     * @param compostKg that goes into batches
     * @param waitMin minutes of working time that planters wait for a rig, water or compost
     * @param idleMin minutes of working time that planters stand for closed fields while one could be planted that they plant later
     * @param overtimeMin minutes planted past the last hours of days
     * @param driveKm planters and rigs together
     * @param smallestMarginMin least time between a load's last drop and its deadline, min; 0 without loads
     * @param finish end of the last planting; the season's first midnight, or where the plan begins, when nothing is planted
     * @param bill what it costs, where plans are judged by money
     */
    public record Totals(
            double areaHa,
            double untreatedHa,
            double unservedHa,
            double lateHaDays,
            int planterFills,
            int waterTrips,
            int compostTrips,
            int batches,
            double compostKg,
            double dumpedL,
            double waitMin,
            double idleMin,
            double overtimeMin,
            double driveKm,
            double smallestMarginMin,
            LocalDateTime finish,
            Optional<Bill> bill) {
        /** Figures of a season that is not judged by money. */
        public Totals(
                double areaHa,
                double untreatedHa,
                double unservedHa,
                double lateHaDays,
                int planterFills,
                int waterTrips,
                int compostTrips,
                int batches,
                double compostKg,
                double dumpedL,
                double waitMin,
                double idleMin,
                double overtimeMin,
                double driveKm,
                double smallestMarginMin,
                LocalDateTime finish) {
            this(
                    areaHa,
                    untreatedHa,
                    unservedHa,
                    lateHaDays,
                    planterFills,
                    waterTrips,
                    compostTrips,
                    batches,
                    compostKg,
                    dumpedL,
                    waitMin,
                    idleMin,
                    overtimeMin,
                    driveKm,
                    smallestMarginMin,
                    finish,
                    Optional.empty());
        }
    }

    /**
     * What a planter or a sprayer does.
     *
     * @param work what it does to fields: its {@link Activity.Plant}s are of that work
     * @param on id of the rig that it is mounted on: what it does, that rig does
     * @param tankL its tank, L
     * @param fields ids in the order of its list
     * @param withoutExtract those of them that are planted without extract by decision, in the same order
     * @param activities in time order; gaps are idle time
     */
    public record PlanterPlan(
            Work work,
            Optional<String> on,
            double tankL,
            List<String> fields,
            List<String> withoutExtract,
            List<Activity> activities) {
        public PlanterPlan {
            fields = List.copyOf(fields);
            withoutExtract = List.copyOf(withoutExtract);
            activities = List.copyOf(activities);
        }

        /** What a planter does. */
        public PlanterPlan(double tankL, List<String> fields, List<String> withoutExtract, List<Activity> activities) {
            this(Work.PLANT, Optional.empty(), tankL, fields, withoutExtract, activities);
        }

        /** The same machine with other activities. */
        public PlanterPlan withActivities(List<Activity> others) {
            return new PlanterPlan(work, on, tankL, fields, withoutExtract, others);
        }
    }

    /**
     * What a rig does.
     *
     * @param nurseTankL water or mix that it can carry, L, where known
     * @param payloadKg what its vehicle may carry, kg, where known
     * @param bucketKg compost in a full bucket, kg, where known
     * @param activities in time order; gaps are idle time
     */
    public record RigPlan(
            OptionalDouble nurseTankL, OptionalDouble payloadKg, OptionalDouble bucketKg, List<Activity> activities) {
        public RigPlan {
            activities = List.copyOf(activities);
        }

        /** A rig of which nothing is known but its work. */
        public RigPlan(List<Activity> activities) {
            this(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), activities);
        }

        /** What a rig of a season does. */
        public static RigPlan of(Rig rig, List<Activity> activities) {
            return new RigPlan(OptionalDouble.of(rig.nurseTankL()), rig.payloadKg(), rig.bucketKg(), activities);
        }
    }

    /**
     * One planter fill.
     *
     * @param deadline end of the oldest batch's hold time
     * @param lastDrop when the last of it is in the ground
     * @param intoReserve that is less than its recipe's reserve before the deadline, as only mix made before the plan may be
     */
    public record Load(
            String id,
            String planter,
            String rig,
            String recipe,
            double litres,
            List<String> batches,
            double appliedL,
            double dumpedL,
            LocalDateTime deadline,
            LocalDateTime lastDrop,
            boolean intoReserve) {
        public Load {
            batches = List.copyOf(batches);
        }

        /** A load that leaves its reserve alone. */
        public Load(
                String id,
                String planter,
                String rig,
                String recipe,
                double litres,
                List<String> batches,
                double appliedL,
                double dumpedL,
                LocalDateTime deadline,
                LocalDateTime lastDrop) {
            this(id, planter, rig, recipe, litres, batches, appliedL, dumpedL, deadline, lastDrop, false);
        }
    }

    /**
     * One drum of extract.
     *
     * @param waterL water in the drum, L
     * @param lots compost taken by lot, kg
     */
    public record Batch(
            String id,
            String rig,
            LocalDateTime start,
            LocalDateTime end,
            double compostKg,
            double waterL,
            Map<String, Double> lots) {
        public Batch {
            lots = Collections.unmodifiableMap(new LinkedHashMap<>(lots));
        }
    }

    /**
     * A field that is not planted in whole.
     *
     * @param areaHa what is left of it
     * @param why one sentence
     */
    public record Unserved(String field, double areaHa, String why) {}

    /**
     * What no plan of the season can do better, each figure by itself.
     *
     * @param planterFills no plan that leaves no more unserved and untreated than this one, and whose medium score is no worse, has fewer, 0 or more
     * @param waterTrips no plan that leaves no more unserved and untreated than this one has fewer, 0 or more
     * @param unservedHa no plan leaves less, ha, 0 or more
     * @param lateHaDays no plan that leaves no more unserved than this one has fewer, unweighted ha-days, 0 or more
     * @param medium no plan has a better medium score, in its unit, negated: 0 or less
     * @param effortMin no plan that leaves no more unserved and untreated than this one, and whose medium score is no worse, has less effort, minutes,
     *     0 or more; 0 in plans that were written before it was worked out
     * @param provedBest no plan has a better score than this one
     */
    public record Bounds(
            int planterFills,
            int waterTrips,
            double unservedHa,
            double lateHaDays,
            long medium,
            long effortMin,
            boolean provedBest) {
        /** Of effort nothing is proven. */
        public Bounds(
                int planterFills,
                int waterTrips,
                double unservedHa,
                double lateHaDays,
                long medium,
                boolean provedBest) {
            this(planterFills, waterTrips, unservedHa, lateHaDays, medium, 0, provedBest);
        }

        public Bounds {
            notBelowZero("planterFills", planterFills);
            notBelowZero("waterTrips", waterTrips);
            notBelowZero("unservedHa", unservedHa);
            notBelowZero("lateHaDays", lateHaDays);
            notBelowZero("effortMin", (double) effortMin);
            if (medium > 0) {
                throw new IllegalArgumentException("medium is " + medium + ", expected 0 or less");
            }
        }
    }

    /**
     * What one resource holds back: a short search from the plan's lists with that resource made free and all else as it is, next to
     * one as short with nothing free. The figures are those of the best lists it came by; the shares are of what was left with
     * nothing free.
     *
     * @param unservedHa ha, 0 or more
     * @param lateHaDays unweighted ha-days, 0 or more
     * @param waitMin minutes that planters wait for a rig, water or compost, 0 or more
     * @param shareOfLate share of the late and unserved area, as {@link Plan#harm} weighs it, that goes away, 0 to 1
     * @param shareOfWait share of the planters' waiting that goes away, 0 to 1
     */
    public record Limit(
            Resource resource,
            double unservedHa,
            double lateHaDays,
            double waitMin,
            double shareOfLate,
            double shareOfWait) {
        public Limit {
            notBelowZero("unservedHa", unservedHa);
            notBelowZero("lateHaDays", lateHaDays);
            notBelowZero("waitMin", waitMin);
            share("shareOfLate", shareOfLate);
            share("shareOfWait", shareOfWait);
        }
    }

    private static void notBelowZero(String figure, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(figure + " is " + value + ", expected 0 or more");
        }
    }

    private static void share(String figure, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(figure + " is " + value + ", expected a share from 0 to 1");
        }
    }
}

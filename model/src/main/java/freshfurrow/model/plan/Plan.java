package freshfurrow.model.plan;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A season played out: what every machine does, every load and every batch. All figures are SI, all times local.
 *
 * @param season which season file it was made from
 * @param planters by id, in the season's order; likewise {@code rigs}
 * @param loads in the order in which they are transferred, ids L0001 and on
 * @param batches in the order in which they were recorded, ids B0001 and on
 * @param unserved fields not planted in whole, with the reason
 */
public record Plan(
        SeasonSource season,
        Score score,
        Totals totals,
        Map<String, PlanterPlan> planters,
        Map<String, RigPlan> rigs,
        List<Load> loads,
        List<Batch> batches,
        List<Unserved> unserved) {
    public Plan {
        planters = Collections.unmodifiableMap(new LinkedHashMap<>(planters));
        rigs = Collections.unmodifiableMap(new LinkedHashMap<>(rigs));
        loads = List.copyOf(loads);
        batches = List.copyOf(batches);
        unserved = List.copyOf(unserved);
    }

    /**
     * Where the season came from.
     *
     * @param file name of the season file
     * @param sha256 of all files the season was read from, lower-case hex
     * @param units in which people want to see the plan's figures
     * @param names what people call fields by their ids, in the season's order; only those that are called otherwise
     */
    public record SeasonSource(String name, String file, String sha256, DisplayUnits units, Map<String, String> names) {
        public SeasonSource {
            names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
        }

        /** A season whose fields are called by their ids. */
        public SeasonSource(String name, String file, String sha256, DisplayUnits units) {
            this(name, file, sha256, units, Map.of());
        }

        /** What a plan tells of the season that was read from a file of that name and with that checksum. */
        public static SeasonSource of(Season season, String file, String sha256) {
            Map<String, String> names = new LinkedHashMap<>();
            for (Field field : season.fields()) {
                if (!field.name().equals(field.id())) {
                    names.put(field.id(), field.name());
                }
            }
            return new SeasonSource(season.name(), file, sha256, season.units(), names);
        }
    }

    /**
     * The score as the search saw it; higher is better, 0 is best.
     *
     * @param hard broken rules, negated
     * @param medium weighted late and unserved area, hundredths of ha-days, negated
     * @param soft minutes, negated
     */
    public record Score(long hard, long medium, long soft) {}

    /**
     * The season in figures.
     *
     * @param areaHa planted, ha
     * @param lateHaDays area planted after its window times days after, unweighted
     * @param refillLowerBound planter fills that no plan of this season can go below
     * @param compostKg taken from the lots
     * @param waitMin minutes of working time that planters wait for a rig, water or compost
     * @param driveKm planters and rigs together
     * @param smallestMarginMin least time between a load's last drop and its deadline, min; 0 without loads
     * @param finish end of the last planting; the season's first midnight when nothing is planted
     */
    public record Totals(
            double areaHa,
            double unservedHa,
            double lateHaDays,
            int planterFills,
            int waterTrips,
            int refillLowerBound,
            int batches,
            double compostKg,
            double dumpedL,
            double waitMin,
            double driveKm,
            double smallestMarginMin,
            LocalDateTime finish) {}

    /**
     * What a planter does.
     *
     * @param tankL its tank, L
     * @param fields ids in the order of its list
     * @param activities in time order; gaps are idle time
     */
    public record PlanterPlan(double tankL, List<String> fields, List<Activity> activities) {
        public PlanterPlan {
            fields = List.copyOf(fields);
            activities = List.copyOf(activities);
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
            return new RigPlan(
                    OptionalDouble.of(rig.nurseTankL()),
                    rig.payloadKg(),
                    OptionalDouble.of(rig.bucketKg()),
                    activities);
        }
    }

    /**
     * One planter fill.
     *
     * @param deadline end of the oldest batch's hold time
     * @param lastDrop when the last of it is in the ground
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
            LocalDateTime lastDrop) {
        public Load {
            batches = List.copyOf(batches);
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
}

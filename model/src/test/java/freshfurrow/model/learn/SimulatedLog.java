package freshfurrow.model.learn;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * The log of a season that was lived through by a plan, but with times of its own: each piece of work takes so many times as long as the season
 * file says, on average, as {@link #truth} says of its machine, and varies about that, lognormal, half of the variance common to a machine's
 * day. Whatever comes after waits for it. Rain falls every few days; somebody looks at fields in the morning until they are fit.
 */
final class SimulatedLog {
    /** Of times, as a coefficient of variation. */
    static final double SPREAD = 0.15;

    private static final long QUARTER_OF_A_MINUTE_S = 15;
    private static final int DAYS_BETWEEN_RAINS = 6;
    private static final double LOOKED_AT = 0.7;

    private final Season season;
    private final Plan plan;
    private final Random random;
    private final double spread;
    private final Map<String, Double> truths = new HashMap<>();
    private final Map<Drainage, Double> drying = new EnumMap<>(Drainage.class);
    private final Map<String, LocalDateTime> free = new HashMap<>();
    private final Map<String, Double> days = new HashMap<>();
    private final List<Entry> entries = new ArrayList<>();
    private final Map<String, Plan.Batch> batches = new HashMap<>();
    private final Map<String, List<String>> loadsOf = new HashMap<>();
    private final Map<String, List<LocalDate>> plantedOn = new HashMap<>();
    private final Map<String, Double> speeds = new HashMap<>();
    private boolean asWritten;

    SimulatedLog(Season season, Plan plan, long seed) {
        this(season, plan, seed, SPREAD);
    }

    SimulatedLog(Season season, Plan plan, long seed, double spread) {
        this.season = season;
        this.plan = plan;
        this.spread = spread;
        random = new Random(seed);
        season.machines().forEach(machine -> speeds.put(machine.id(), machine.roadSpeedMPerS()));
        plan.batches().forEach(batch -> batches.put(batch.id(), batch));
        plan.loads().forEach(load -> new LinkedHashSet<>(load.batches())
                .forEach(batch ->
                        loadsOf.computeIfAbsent(batch, id -> new ArrayList<>()).add(load.id())));
    }

    /** The log of a season that has the right figures. */
    static SeasonLog asTheSeasonFileSays(Season season, Plan plan, long seed) {
        SimulatedLog simulated = new SimulatedLog(season, plan, seed);
        simulated.asWritten = true;
        return simulated.log();
    }

    /** The figure that a season file should have. */
    double truth(Lesson lesson) {
        if (lesson.figure() == Taught.DRYING) {
            Drainage drainage = Drainage.valueOf(lesson.of().toUpperCase(Locale.ROOT));
            return lesson.fileFigure()
                    * drying.computeIfAbsent(drainage, key -> asWritten ? 1 : 0.7 + 0.8 * random.nextDouble());
        }
        if (lesson.figure() == Taught.SPREAD) {
            return spread;
        }
        return lesson.figure().at(lesson.fileFigure(), timesAsLong(lesson.figure(), lesson.of()));
    }

    private double timesAsLong(Taught figure, String machine) {
        return truths.computeIfAbsent(figure + machine, key -> asWritten ? 1 : 0.8 + 0.5 * random.nextDouble());
    }

    SeasonLog log() {
        record Doing(String machine, Activity activity) {}
        List<Doing> all = new ArrayList<>();
        plan.rigs().forEach((id, its) -> its.activities().forEach(one -> all.add(new Doing(id, one))));
        plan.planters().forEach((id, its) -> its.activities().forEach(one -> all.add(new Doing(id, one))));
        all.sort(Comparator.comparing(doing -> doing.activity().start()));
        Map<String, String> planterOf = new HashMap<>();
        plan.loads().forEach(load -> planterOf.put(load.id(), load.planter()));
        all.forEach(doing -> work(doing.machine(), doing.activity(), planterOf));
        ground();
        return new SeasonLog(entries);
    }

    private void work(String machine, Activity activity, Map<String, String> planterOf) {
        if (activity instanceof Activity.Extract extract) {
            batch(machine, extract);
        } else if (activity instanceof Activity.Transfer transfer) {
            Rig rig = season.rig(machine);
            String planter = planterOf.get(transfer.load());
            if (season.oneWith(machine).contains(planter)) {
                return;
            }
            free.put(machine, later(free(machine), free(planter)));
            log(
                    machine,
                    activity.start(),
                    drawn(Taught.TRANSFER_RATE, machine, transfer.litres() / rig.transferLPerS(), activity),
                    new Fact.Transferred(machine, transfer.litres(), Optional.of(transfer.load())));
            free.put(planter, free(machine));
        } else if (activity instanceof Activity.Planting planting) {
            double expectedS =
                    planting.areaHa() * M2_PER_HA / season.applicator(machine).fieldCapacityM2PerS();
            Optional<String> load =
                    planting instanceof Activity.Plant plant ? Optional.of(plant.load()) : Optional.empty();
            log(
                    machine,
                    activity.start(),
                    drawn(Taught.FIELD_CAPACITY, machine, expectedS, activity),
                    new Fact.Planted(planting.field(), planting.areaHa(), Optional.of(machine), load, load.isEmpty()));
        } else if (activity instanceof Activity.Move move && !move.from().equals(move.to())) {
            double metres = season.distances().metres(move.from(), move.to());
            double speed = speeds.get(machine);
            if (metres > 0) {
                log(
                        machine,
                        activity.start(),
                        drawn(Taught.ROAD_SPEED, machine, metres / speed, activity),
                        new Fact.Driven(machine, move.from(), move.to()));
            }
        }
    }

    private void batch(String machine, Activity.Extract extract) {
        Plan.Batch batch = batches.get(extract.batch());
        Rig rig = season.rig(machine);
        double expectedS = rig.batchTimeS() * batch.compostKg() / rig.batchCompostKg();
        List<String> loads = loadsOf.getOrDefault(batch.id(), List.of());
        log(
                machine,
                extract.start(),
                drawn(Taught.BATCH_TIME, machine, expectedS, extract),
                new Fact.BatchMade(machine, batch.lots(), loads, Optional.of(extract.at())));
    }

    /** The common part of a day and the piece's own part have half of the variance each, and a mean of 1 together. */
    private Duration drawn(Taught figure, String machine, double expectedS, Activity activity) {
        double sigma = Math.sqrt(Math.log1p(spread * spread) / 2);
        double day = days.computeIfAbsent(
                figure + machine + activity.start().toLocalDate(), key -> random.nextGaussian() * sigma);
        double seconds = expectedS
                * timesAsLong(figure, machine)
                * Math.exp(day + random.nextGaussian() * sigma - sigma * sigma);
        return Duration.ofSeconds(QUARTER_OF_A_MINUTE_S * Math.max(1, Math.round(seconds / QUARTER_OF_A_MINUTE_S)));
    }

    private void log(String machine, LocalDateTime planned, Duration took, Fact fact) {
        LocalDateTime end = later(planned, free(machine)).plus(took);
        free.put(machine, end);
        entries.add(new Entry(entries.size() + 1, end, fact, Optional.of(took), ""));
        if (fact instanceof Fact.Planted planted) {
            plantedOn
                    .computeIfAbsent(planted.field(), field -> new ArrayList<>())
                    .add(end.toLocalDate());
        }
    }

    private LocalDateTime free(String machine) {
        return season.oneWith(machine).stream()
                .map(one -> free.getOrDefault(one, LocalDateTime.MIN))
                .reduce(LocalDateTime.MIN, SimulatedLog::later);
    }

    private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
        return a.isAfter(b) ? a : b;
    }

    private void ground() {
        double sigma = Math.sqrt(Math.log1p(spread * spread));
        for (LocalDate date = season.first().plusDays(1);
                date.plusDays(DAYS_BETWEEN_RAINS).isBefore(season.last());
                date = date.plusDays(DAYS_BETWEEN_RAINS)) {
            double mm = 8 + 20 * random.nextDouble();
            add(date.atTime(13, 0), new Fact.RainMeasured(mm));
            Map<Drainage, Double> ofThisRain = new EnumMap<>(Drainage.class);
            for (Field field : season.fields()) {
                if (isPlanted(field, date)) {
                    continue;
                }
                double daysPerMm = ofThisRain.computeIfAbsent(
                        field.drainage(),
                        key -> truth(new Lesson(
                                        Taught.DRYING,
                                        key.name(),
                                        season.drying().daysPerMm(key),
                                        0,
                                        0,
                                        Optional.empty()))
                                * Math.exp(random.nextGaussian() * sigma));
                long closed = (long) Math.ceil(mm * daysPerMm);
                for (int day = 1; day < DAYS_BETWEEN_RAINS; day++) {
                    if (random.nextDouble() < LOOKED_AT) {
                        add(
                                date.plusDays(day).atTime(7, 0),
                                new Fact.GroundJudged(field.id(), day >= closed, Optional.empty()));
                        if (day >= closed) {
                            break;
                        }
                    }
                }
            }
        }
    }

    /** Work went on whatever rain fell, and nobody looks at a field that was planted. */
    private boolean isPlanted(Field field, LocalDate rain) {
        return plantedOn.getOrDefault(field.id(), List.of()).stream()
                .anyMatch(date -> !date.isBefore(rain) && date.isBefore(rain.plusDays(DAYS_BETWEEN_RAINS + 1)));
    }

    private void add(LocalDateTime at, Fact fact) {
        entries.add(new Entry(entries.size() + 1, at, fact, ""));
    }
}

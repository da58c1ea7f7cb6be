package freshfurrow.model.log;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** What the entries of a log that hold add up to. */
public final class LogSums {
    private final Season season;
    private final List<Entry> standing;

    private LogSums(Season season, List<Entry> standing) {
        this.season = season;
        this.standing = standing;
    }

    /** The sums of a log that was read for that season. */
    public static LogSums of(Season season, SeasonLog log) {
        return new LogSums(season, log.standing());
    }

    /** How much of each field is planted, by id, in the season's order. */
    public Map<String, PlantedArea> fields() {
        Map<String, PlantedArea> areas = new LinkedHashMap<>();
        for (Field field : season.fields()) {
            areas.put(field.id(), PlantedArea.none(field));
        }
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.Planted planted) {
                areas.computeIfPresent(
                        planted.field(),
                        (id, area) -> area.plus(planted.areaHa(), season.units().area()));
            }
        }
        return Collections.unmodifiableMap(areas);
    }

    /**
     * Area planted of a field, ha by date; of a field that is planted in whole the sum is its area, whatever the logged figures
     * were rounded to.
     *
     * @throws IllegalArgumentException when the season has no such field
     */
    public SortedMap<LocalDate, Double> plantedByDay(String field) {
        PlantedArea area = fields().get(field);
        if (area == null) {
            throw new IllegalArgumentException("there is no field " + field);
        }
        double share = area.isWhole() ? area.fieldHa() / area.plantedHa() : 1;
        SortedMap<LocalDate, Double> byDay = new TreeMap<>();
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.Planted planted && planted.field().equals(field)) {
                byDay.merge(entry.at().toLocalDate(), planted.areaHa() * share, Double::sum);
            }
        }
        return Collections.unmodifiableSortedMap(byDay);
    }

    /**
     * What became of each lot of compost, by id, in the season's order. Once deliveries of a lot that the season expects after its
     * first day are logged, they count instead of what it expects; to other lots they are added.
     */
    public Map<String, LotStock> lots() {
        return Collections.unmodifiableMap(LotStocks.of(season, standing));
    }

    /** Water drawn at a point on a date, L, 0 or more. */
    public double drawnL(String point, LocalDate date) {
        return standing.stream()
                .filter(entry -> entry.at().toLocalDate().equals(date))
                .map(Entry::fact)
                .mapToDouble(fact ->
                        fact instanceof Fact.WaterDrawn drawn && drawn.point().equals(point) ? drawn.litres() : 0)
                .sum();
    }

    /** Where a planter or rig was last; empty when the log does not say, so that it is where the season begins. */
    public Optional<LastSeen> lastSeen(String machine) {
        return standing.stream()
                .flatMap(entry -> place(entry.fact(), machine).map(place -> new LastSeen(place, entry.at())).stream())
                .reduce((before, after) -> after);
    }

    /** By their beginning; those of one machine may overlap. */
    public List<Breakdown> breakdowns() {
        List<Breakdown> breakdowns = new ArrayList<>();
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.MachineDown down) {
                breakdowns.add(new Breakdown(down.machine(), entry.at(), down.until()));
            }
        }
        return List.copyOf(breakdowns);
    }

    /** Rain measured, by its beginning; it is not that of the season file, which may tell of the same rain. */
    public List<Rain> rains() {
        List<Rain> rains = new ArrayList<>();
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.RainMeasured rain) {
                rains.add(new Rain(
                        entry.at().toLocalDate(), entry.at().toLocalTime().toSecondOfDay(), rain.mm()));
            }
        }
        return List.copyOf(rains);
    }

    /**
     * By how much machines are behind, by id, as it was said last.
     *
     * @param since what was said up to then does not count; empty when all does
     */
    public Map<String, Duration> behind(Optional<LocalDateTime> since) {
        Map<String, Duration> behind = new LinkedHashMap<>();
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.MachineBehind said
                    && since.filter(time -> !entry.at().isAfter(time)).isEmpty()) {
                behind.put(said.machine(), said.by());
            }
        }
        behind.values().removeIf(Duration::isZero);
        return Collections.unmodifiableMap(behind);
    }

    /** What people said of the ground of fields, by id, by time. Ground that is unfit until nobody knows when is so until the season ends. */
    public Map<String, List<Judgement>> judged() {
        Map<String, List<Judgement>> judged = new LinkedHashMap<>();
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.GroundJudged said) {
                LocalDateTime fitFrom = said.fit()
                        ? entry.at()
                        : said.until().filter(season.end()::isAfter).orElse(season.end());
                judged.computeIfAbsent(said.field(), none -> new ArrayList<>()).add(new Judgement(entry.at(), fitFrom));
            }
        }
        return Collections.unmodifiableMap(judged);
    }

    /** The loads that the log names, by id, in the order in which it first does. */
    public Map<String, LoadMade> loads() {
        Map<String, LoadMade> loads = new LinkedHashMap<>();
        for (Entry entry : standing) {
            idsOfLoads(entry.fact()).forEach(id -> loads.computeIfAbsent(id, this::load));
        }
        return Collections.unmodifiableMap(loads);
    }

    private LoadMade load(String id) {
        Predicate<Entry> names = entry -> idsOfLoads(entry.fact()).contains(id);
        return new LoadMade(
                id,
                standing.stream()
                        .filter(entry -> entry.fact() instanceof Fact.BatchMade)
                        .filter(names)
                        .toList(),
                standing.stream()
                        .filter(entry -> entry.fact() instanceof Fact.Planted)
                        .filter(names)
                        .toList());
    }

    private static List<String> idsOfLoads(Fact fact) {
        if (fact instanceof Fact.BatchMade batch) {
            return batch.loads();
        }
        return fact instanceof Fact.Planted planted ? planted.load().stream().toList() : List.of();
    }

    private static Optional<String> place(Fact fact, String machine) {
        if (fact instanceof Fact.Planted planted) {
            return planted.planter().filter(machine::equals).map(planter -> planted.field());
        }
        if (fact instanceof Fact.WaterDrawn drawn && drawn.rig().equals(machine)) {
            return Optional.of(drawn.point());
        }
        if (fact instanceof Fact.Driven driven && driven.machine().equals(machine)) {
            return Optional.of(driven.to());
        }
        return fact instanceof Fact.BatchMade batch && batch.rig().equals(machine) ? batch.place() : Optional.empty();
    }
}

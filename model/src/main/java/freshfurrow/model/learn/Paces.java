package freshfurrow.model.learn;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.model.log.Fact;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many times as long work took as the season file lets it take. That is taken to be lognormal, with the season file's time as its mean:
 * the mean is the median times exp(s^2 / 2). So that a slip of the pen does little harm, s is 1.4826 times the median distance of the
 * logarithms from their median (F. R. Hampel, 'The influence curve and its role in robust estimation', Journal of the American Statistical
 * Association 69, 1974).
 */
final class Paces {
    private static final double DEVIATIONS = 1.4826;

    private final Season season;
    private final LeftOutCounts leftOut;
    private final Map<Taught, Map<String, List<Observation>>> logs = new LinkedHashMap<>();

    Paces(Season season, LeftOutCounts leftOut) {
        this.season = season;
        this.leftOut = leftOut;
    }

    void add(TimedWork work) {
        Fact fact = work.entry().fact();
        if (fact instanceof Fact.BatchMade batch) {
            batch(work, season.rig(batch.rig()), batch.compostKg());
        } else if (fact instanceof Fact.Transferred transferred) {
            double expectedS =
                    transferred.litres() / season.rig(transferred.rig()).transferLPerS();
            took(Taught.TRANSFER_RATE, transferred.rig(), work, expectedS);
        } else if (fact instanceof Fact.Planted planted) {
            String id = planted.planter().orElseThrow();
            double expectedS =
                    planted.areaHa() * M2_PER_HA / season.applicator(id).fieldCapacityM2PerS();
            took(Taught.FIELD_CAPACITY, id, work, expectedS);
        } else if (fact instanceof Fact.Driven driven) {
            driven(work, driven);
        }
    }

    private void batch(TimedWork work, Rig rig, double kg) {
        double expectedS = rig.batchTimeS() * kg / rig.batchCompostKg();
        if (expectedS <= rig.leastBatchTimeS()) {
            leftOut.count(LeftOut.SMALL_BATCH);
        } else {
            took(Taught.BATCH_TIME, rig.id(), work, expectedS);
        }
    }

    private void driven(TimedWork work, Fact.Driven driven) {
        double metres = metres(driven).orElse(0);
        if (metres > 0) {
            String machine = onRoad(driven.machine());
            took(Taught.ROAD_SPEED, machine, work, metres / machine(machine).roadSpeedMPerS());
        } else {
            leftOut.count(LeftOut.NO_ROAD);
        }
    }

    private OptionalDouble metres(Fact.Driven driven) {
        try {
            return OptionalDouble.of(season.distances().metres(driven.from(), driven.to()));
        } catch (IllegalArgumentException e) {
            return OptionalDouble.empty();
        }
    }

    /** What is mounted on a rig drives as that rig. */
    private String onRoad(String machine) {
        return season.applicators().stream()
                .filter(one -> one.id().equals(machine))
                .findFirst()
                .flatMap(Applicator::on)
                .orElse(machine);
    }

    private Machine machine(String id) {
        return season.machines().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    private void took(Taught figure, String id, TimedWork work, double expectedS) {
        double timesAsLong = work.took().toSeconds() / expectedS;
        logs.computeIfAbsent(figure, key -> new LinkedHashMap<>())
                .computeIfAbsent(id, key -> new ArrayList<>())
                .add(Observation.exact(work.day(), Math.log(timesAsLong)));
    }

    Lesson lesson(Taught figure, String id, double fileFigure) {
        List<Observation> seen = logs.getOrDefault(figure, Map.of()).getOrDefault(id, List.of());
        Optional<Estimate> estimate =
                GroupMedian.of(seen).map(median -> estimate(figure, fileFigure, median, deviation(seen)));
        return new Lesson(figure, id, fileFigure, seen.size(), GroupMedian.groups(seen), estimate);
    }

    /**
     * How much the times of all machines at some work vary. Pieces of a day have part of that in common, so of each machine's day it is the first
     * that counts.
     *
     * @param key of the spread in the season file
     */
    Lesson spread(Taught figure, String key, double fileFigure) {
        List<Observation> firsts = new ArrayList<>();
        logs.getOrDefault(figure, Map.of()).forEach((machine, seen) -> {
            if (GroupMedian.groups(seen) >= Learning.LEAST_GROUPS) {
                firsts.addAll(distances(machine, seen));
            }
        });
        Optional<Estimate> estimate = GroupMedian.of(firsts).map(distance -> {
            double middle = variation(DEVIATIONS * distance.medianLow());
            return new Estimate(
                    middle,
                    middle,
                    variation(DEVIATIONS * distance.low()),
                    variation(DEVIATIONS * distance.high()),
                    OptionalDouble.empty());
        });
        return new Lesson(Taught.SPREAD, key, fileFigure, firsts.size(), firsts.size(), estimate);
    }

    /** How far the first of each day is from the median. */
    private static List<Observation> distances(String machine, List<Observation> seen) {
        double median = Medians.of(seen.stream().mapToDouble(Observation::low).toArray());
        Map<Object, Observation> firsts = new LinkedHashMap<>();
        seen.forEach(one -> firsts.putIfAbsent(
                one.group(), Observation.exact(List.of(machine, one.group()), Math.abs(one.low() - median))));
        return List.copyOf(firsts.values());
    }

    /** The coefficient of variation of what is lognormal, by the standard deviation of its logarithm. */
    private static double variation(double deviation) {
        return Math.sqrt(Math.expm1(deviation * deviation));
    }

    private static Estimate estimate(Taught figure, double fileFigure, GroupMedian median, double deviation) {
        double variance = deviation * deviation;
        double low = figure.at(fileFigure, Math.exp(median.low() + variance / 2));
        double high = figure.at(fileFigure, Math.exp(median.high() + variance / 2));
        return new Estimate(
                figure.at(fileFigure, Math.exp(median.medianLow() + variance / 2)),
                figure.at(fileFigure, Math.exp(median.medianLow())),
                Math.min(low, high),
                Math.max(low, high),
                OptionalDouble.of(variation(deviation)));
    }

    private static double deviation(List<Observation> seen) {
        double[] figures = seen.stream().mapToDouble(Observation::low).toArray();
        double median = Medians.of(figures);
        for (int i = 0; i < figures.length; i++) {
            figures[i] = Math.abs(figures[i] - median);
        }
        return DEVIATIONS * Medians.of(figures);
    }
}

package freshfurrow.solver.independent;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import java.time.Duration;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;

/**
 * A plain search that shares nothing with the product's but the timeline, to hold that against: ruin and recreate and small moves, by
 * simulated annealing on the timeline's own score. One thread.
 */
final class IndependentSearch {
    /** Every so many changes one is a ruin. */
    private static final int CHANGES_A_RUIN = 20;

    /** Annealings one after the other, each from the best so far. */
    private static final int ROUNDS = 3;

    /** What annealing may lose at its start, of what a field costs on the average: less among many fields. */
    private static final double HOTTEST = 1.5;

    private static final double HEAT_BY_FIELDS = 12;

    /** As if each field were late by that, where less is. */
    private static final double LEAST_DAYS_LATE = 0.1;

    private static final double DM2_IN_A_HUNDREDTH_OF_A_HA = 1e4;

    /** The part of it that is left at the end. */
    private static final double COOL = 0.001;

    private final CompiledSeason season;
    private final Random random;
    private final PlainScore score;
    private final Ruin ruin;
    private final Recreate recreate;
    private final SmallMoves moves;

    IndependentSearch(CompiledSeason season, long seed) {
        this.season = season;
        random = new Random(seed);
        score = new PlainScore(season);
        Neighbours neighbours = new Neighbours(season);
        ruin = new Ruin(neighbours, random);
        recreate = new Recreate(season, neighbours, score, random);
        moves = new SmallMoves(season, neighbours, random);
    }

    /** The best lists found while the timeline is asked about so many lists: the same ones on every run. */
    FieldLists improve(FieldLists start, long asked) {
        return improve(start, () -> (double) score.asked() / asked);
    }

    /** The best lists found in a time. */
    FieldLists improve(FieldLists start, Duration time) {
        long startNs = System.nanoTime();
        return improve(start, () -> (double) (System.nanoTime() - startNs) / time.toNanos());
    }

    private FieldLists improve(FieldLists start, DoubleSupplier over) {
        FieldLists best = start;
        for (int round = 0; round < ROUNDS && season.fieldCount() > 1; round++) {
            int before = round;
            best = anneal(best, () -> over.getAsDouble() * ROUNDS - before);
        }
        return best;
    }

    private FieldLists anneal(FieldLists start, DoubleSupplier over) {
        PlainLists current = PlainLists.of(season, start);
        PlainLists best = PlainLists.of(season, start);
        PlainLists changed = new PlainLists(season);
        Worth worth = score.ofBase(current);
        Worth bestWorth = worth;
        double hot = Math.min(HOTTEST, HEAT_BY_FIELDS / season.fieldCount());
        double mediumHeat = hot * Math.max(ofAField(worth.medium()), LEAST_DAYS_LATE * hundredthsOfHaOfAField());
        double softHeat = hot * ofAField(worth.soft());
        for (double done = over.getAsDouble(); done < 1; done = over.getAsDouble()) {
            double heat = Math.pow(COOL, done);
            changed.copy(current);
            boolean ruined = random.nextInt(CHANGES_A_RUIN) == 0;
            Worth next;
            if (ruined) {
                next = recreate.recreate(changed, ruin.ruin(changed, season.fieldCount()));
            } else if (moves.change(changed)) {
                next = score.of(changed, Worth.LEAST);
            } else {
                continue;
            }
            if (accepts(worth, next, heat * mediumHeat, heat * softHeat)) {
                current.copy(changed);
                worth = score.ofBase(current);
                if (worth.compareTo(bestWorth) > 0) {
                    bestWorth = worth;
                    best.copy(current);
                }
            } else if (ruined) {
                score.ofBase(current);
            }
        }
        return best.fields();
    }

    private double hundredthsOfHaOfAField() {
        long dm2 = IntStream.range(0, season.fieldCount())
                .mapToLong(season::areaDm2)
                .sum();
        return dm2 / DM2_IN_A_HUNDREDTH_OF_A_HA / season.fieldCount();
    }

    private double ofAField(long level) {
        return (double) Math.max(1, -level) / season.fieldCount();
    }

    private boolean accepts(Worth now, Worth next, double mediumHeat, double softHeat) {
        if (next.compareTo(now) >= 0) {
            return true;
        }
        double worse = Math.max(0, now.medium() - next.medium()) / mediumHeat
                + (next.medium() > now.medium() ? 0 : Math.max(0, now.soft() - next.soft()) / softHeat);
        return next.hard() == now.hard() && random.nextDouble() < Math.exp(-worse);
    }
}

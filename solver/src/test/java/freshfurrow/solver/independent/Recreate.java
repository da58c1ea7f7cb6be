package freshfurrow.solver.independent;

import freshfurrow.model.timeline.CompiledSeason;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Puts fields, one after the other, where the timeline likes each best, with extract or without, or leaves one out where that is best: at
 * every place of every list, or, in seasons of many fields, beside near ones. Now and then a place is passed over.
 */
final class Recreate {
    private static final int MOST_FIELDS_WITH_EVERY_PLACE = 60;
    private static final int NEAR = 10;
    private static final double PASSED_OVER = 0.03;

    private final CompiledSeason season;
    private final Neighbours neighbours;
    private final PlainScore score;
    private final Random random;

    private int bestPlanter;
    private int bestIndex;
    private int bestEntry;
    private Worth best = Worth.LEAST;

    Recreate(CompiledSeason season, Neighbours neighbours, PlainScore score, Random random) {
        this.season = season;
        this.neighbours = neighbours;
        this.score = score;
        this.random = random;
    }

    /** What the lists are worth with the fields. */
    Worth recreate(PlainLists lists, List<Integer> fields) {
        order(fields);
        Worth worth = score.ofBase(lists);
        for (int field : fields) {
            best = worth;
            bestPlanter = PlainLists.NONE;
            tryPlaces(lists, field);
            if (bestPlanter != PlainLists.NONE) {
                lists.add(bestPlanter, bestIndex, bestEntry);
                worth = score.ofBase(lists);
            }
        }
        return worth;
    }

    private void order(List<Integer> fields) {
        Collections.shuffle(fields, random);
        switch (random.nextInt(4)) {
            case 0 -> fields.sort(Comparator.comparingLong(season::areaDm2).reversed());
            case 1 -> fields.sort(Comparator.comparingInt(season::windowLastDay));
            case 2 -> fields.sort(Comparator.comparingInt(season::windowFirstDay));
            default -> {
                // as shuffled
            }
        }
    }

    private void tryPlaces(PlainLists lists, int field) {
        if (season.fieldCount() <= MOST_FIELDS_WITH_EVERY_PLACE) {
            for (int planter = 0; planter < season.planterCount(); planter++) {
                for (int index = 0; index <= lists.size(planter); index++) {
                    tryPlace(lists, planter, index, field);
                }
            }
            return;
        }
        int tried = 0;
        for (int other : neighbours.of(field)) {
            int planter = lists.planterOf(other);
            if (planter != PlainLists.NONE && tried++ < NEAR) {
                int index = lists.indexOf(other);
                tryPlace(lists, planter, index, field);
                tryPlace(lists, planter, index + 1, field);
            }
        }
        IntStream.range(0, season.planterCount())
                .filter(planter -> lists.size(planter) == 0)
                .forEach(planter -> tryPlace(lists, planter, 0, field));
    }

    private void tryPlace(PlainLists lists, int planter, int index, int field) {
        if (!season.allows(planter, field) || random.nextDouble() < PASSED_OVER) {
            return;
        }
        tryEntry(lists, planter, index, field);
        if (season.mayGoWithout(field)) {
            tryEntry(lists, planter, index, season.without(field));
        }
    }

    private void tryEntry(PlainLists lists, int planter, int index, int entry) {
        lists.add(planter, index, entry);
        Worth worth = score.of(lists, best);
        lists.remove(planter, index);
        if (worth.compareTo(best) > 0) {
            best = worth;
            bestPlanter = planter;
            bestIndex = index;
            bestEntry = entry;
        }
    }
}

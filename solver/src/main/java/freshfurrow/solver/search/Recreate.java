package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Visit;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Puts fields that stand in no list, one after the other, with extract where the timeline finds each best: at any place, or in seasons of
 * many fields beside a near one; or in no list where that is best. Now and then a place is passed over, so that the same fields do not
 * always end the same.
 */
final class Recreate {
    private static final int MOST_FIELDS_WITH_EVERY_PLACE = 60;
    private static final int ONE_IN_IS_PASSED_OVER = 30;

    private final WorkingLists lists;
    private final NearFields near;
    private final CountedScores scores;
    private final Random random;
    private final CompiledSeason season;

    private HardMediumSoftLongScore best = HardMediumSoftLongScore.ZERO;
    private @Nullable PlanterList bestList;
    private int bestIndex;

    Recreate(WorkingLists lists, NearFields near, CountedScores scores, Random random) {
        this.lists = lists;
        this.near = near;
        this.scores = scores;
        this.random = random;
        this.season = lists.schedule().season();
    }

    /** The score of the lists with the fields; of what it has come to when no more may be scored. */
    HardMediumSoftLongScore with(List<Integer> fields) {
        order(fields);
        best = scores.ofBase();
        for (int field : fields) {
            bestList = null;
            tryPlaces(field);
            PlanterList list = bestList;
            if (list != null) {
                lists.assign(lists.schedule().visits().get(field), list, bestIndex);
                best = scores.ofBase();
            }
        }
        return best;
    }

    private void order(List<Integer> fields) {
        Collections.shuffle(fields, random);
        switch (random.nextInt(4)) {
            case 0 -> fields.sort(Comparator.comparingLong(season::areaDm2).reversed());
            case 1 -> fields.sort(Comparator.comparingInt(season::windowLastDay));
            case 2 -> fields.sort(Comparator.comparingInt(season::windowFirstDay));
            default -> {
                // by chance
            }
        }
    }

    private void tryPlaces(int field) {
        boolean everyPlace = season.fieldCount() <= MOST_FIELDS_WITH_EVERY_PLACE;
        for (PlanterList list : lists.schedule().lists()) {
            if (everyPlace || list.visits().isEmpty()) {
                for (int index = 0; index <= list.visits().size(); index++) {
                    tryPlace(list, index, field);
                }
            }
        }
        if (!everyPlace) {
            for (int other : near.near(1, field)) {
                Visit visit = lists.standing(other);
                PlanterList list = lists.listOf(visit);
                if (list != null) {
                    int index = lists.indexOf(visit);
                    tryPlace(list, index, field);
                    tryPlace(list, index + 1, field);
                }
            }
        }
    }

    private void tryPlace(PlanterList list, int index, int field) {
        if (!season.allows(list.planter(), field) || random.nextInt(ONE_IN_IS_PASSED_OVER) == 0 || scores.areUsedUp()) {
            return;
        }
        Visit visit = lists.schedule().visits().get(field);
        lists.assign(visit, list, index);
        HardMediumSoftLongScore score = scores.ofTrial(best);
        lists.remove(list, index);
        if (score.compareTo(best) > 0) {
            best = score;
            bestList = list;
            bestIndex = index;
        }
    }
}

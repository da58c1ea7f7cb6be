package freshfurrow.solver.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.EstimatedLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;

/** Lists that the estimate puts before others are before them on the timeline as well: mostly, or a search by it would be in vain. */
class RankAgreementTest {
    private static final int LISTS = 60;

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5})
    void ofTwoListsTheEstimateMostlyFindsTheBetterOne(long seed) {
        Season season = InventedSeason.hurried(40, 3, seed);
        CompiledSeason compiled = CompiledSeason.of(season);
        FieldLists start = FirstLists.best(compiled);
        Stops stops = new Stops(compiled);
        stops.learn(start.orders(season));
        EstimatedLists estimate = new EstimatedLists(compiled, new SeasonEstimate(compiled), stops);
        ListPlayer player = new ListPlayer(compiled);
        Random random = new Random(seed);
        List<HardMediumSoftLongScore> estimated = new ArrayList<>();
        List<HardMediumSoftLongScore> played = new ArrayList<>();
        for (int i = 0; i < LISTS; i++) {
            FieldLists lists = moved(start, 1 + random.nextInt(6), random);
            estimated.add(estimate.score(lists));
            played.add(player.score(lists));
        }

        int agreed = 0;
        int pairs = 0;
        for (int one = 0; one < LISTS; one++) {
            for (int other = 0; other < one; other++) {
                int byTimeline = played.get(one).compareTo(played.get(other));
                if (byTimeline != 0) {
                    pairs++;
                    agreed += Integer.signum(byTimeline)
                                    == Integer.signum(estimated.get(one).compareTo(estimated.get(other)))
                            ? 1
                            : 0;
                }
            }
        }
        assertThat((double) agreed / pairs).isGreaterThan(0.75);
    }

    /** So many fields put elsewhere. */
    private static FieldLists moved(FieldLists lists, int fields, Random random) {
        List<List<Integer>> moved = new ArrayList<>();
        lists.byPlanter().forEach(list -> moved.add(new ArrayList<>(list)));
        for (int i = 0; i < fields; i++) {
            List<Integer> from = moved.get(random.nextInt(moved.size()));
            if (!from.isEmpty()) {
                Integer field = from.remove(random.nextInt(from.size()));
                List<Integer> to = moved.get(random.nextInt(moved.size()));
                to.add(random.nextInt(to.size() + 1), field);
            }
        }
        return new FieldLists(moved);
    }
}

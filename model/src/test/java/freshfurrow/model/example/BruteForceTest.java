package freshfurrow.model.example;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.BruteForce.Optimum;
import freshfurrow.model.plan.Plan.Score;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** On seasons with many fields for one planter only, so that there is less to try. */
class BruteForceTest {
    @ParameterizedTest
    @Seeds({3, 15, 19})
    void everyWayIsPlayedOutOnce(long seed) {
        // of the fields for both planters, any k join those for P1 only, the rest those for P2 only, each list in any
        // order
        Season season = SmallSeasons.season(seed);
        int first = only(season, "P1");
        int second = only(season, "P2");
        int both = SmallSeasons.FIELDS - first - second;
        long ways = 0;
        for (int k = 0; k <= both; k++) {
            long choices = factorial(both) / factorial(k) / factorial(both - k);
            ways += choices * factorial(first + k) * factorial(second + both - k);
        }

        assertThat(BruteForce.of(CompiledSeason.of(season)).ways()).isEqualTo(ways);
    }

    @Test
    void theListsHaveTheScore() {
        CompiledSeason season = CompiledSeason.of(SmallSeasons.season(3));
        Optimum optimum = BruteForce.of(season);

        assertThat(score(season, optimum.lists())).isEqualTo(optimum.score());
    }

    @Test
    void noListsAreBetter() {
        CompiledSeason season = CompiledSeason.of(SmallSeasons.season(19));
        Score best = BruteForce.of(season).score();
        Random random = new Random(1);
        for (int i = 0; i < 500; i++) {
            Score other = score(season, allowedLists(season.season(), random));
            assertThat(other.medium()).isLessThanOrEqualTo(best.medium());
            if (other.medium() == best.medium()) {
                assertThat(other.soft()).isLessThanOrEqualTo(best.soft());
            }
        }
    }

    private static int only(Season season, String planter) {
        return (int) season.fields().stream()
                .filter(field -> field.planters().contains(planter))
                .count();
    }

    private static long factorial(int n) {
        return n <= 1 ? 1 : n * factorial(n - 1);
    }

    private static List<List<String>> allowedLists(Season season, Random random) {
        List<Field> fields = new ArrayList<>(season.fields());
        Collections.shuffle(fields, random);
        List<List<String>> lists = List.of(new ArrayList<>(), new ArrayList<>());
        for (Field field : fields) {
            int planter = random.nextInt(2);
            boolean allowed = field.allows(season.applicators().get(planter));
            lists.get(allowed ? planter : 1 - planter).add(field.id());
        }
        return lists;
    }

    private static Score score(CompiledSeason season, List<List<String>> lists) {
        List<String> ids = season.season().fields().stream().map(Field::id).toList();
        int[][] indices = lists.stream()
                .map(list -> list.stream().mapToInt(ids::indexOf).toArray())
                .toArray(int[][]::new);
        Timeline timeline = new Timeline(season);
        timeline.run(indices, lists.stream().mapToInt(List::size).toArray());
        return new Score(timeline.hard(), timeline.medium(), timeline.soft());
    }
}

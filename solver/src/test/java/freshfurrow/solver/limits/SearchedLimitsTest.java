package freshfurrow.solver.limits;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Limits found by searching, where the plan's own lists would tell little. */
class SearchedLimitsTest {
    @Test
    void whereCompostComesADayAfterTheWindowsCompostHoldsTheSpringBack() {
        // 60 late acre-days are proved unavoidable there for want of compost: see the scenario's README
        CompiledSeason spring = CompiledSeason.of(read(Path.of("..", "scenarios", "spring")));
        FieldLists found = new Search(spring, 1, 2).improve(FirstLists.best(spring), moves(20_000), better -> {});

        List<Plan.Limit> limits = new SeasonLimits(spring, 1, 2, StopSignal.untilTold())
                .of(record(spring, found), 2_500)
                .orElseThrow();

        double compost = shareOfLate(limits, Resource.COMPOST);
        assertThat(compost).isGreaterThan(0.9);
        assertThat(limits)
                .filteredOn(limit -> limit.resource() != Resource.COMPOST)
                .allSatisfy(limit -> assertThat(limit.shareOfLate()).isLessThan(compost / 2));
    }

    @Property(tries = 8)
    void sharesAreNeitherBelowZeroNorAboveOneAndTheSameOnOneThreadAndTwo(
            @ForAll @LongRange(min = 1, max = 1000) long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.hurried(15, 2, seed));
        Plan plan = record(season, FirstLists.best(season));

        List<Plan.Limit> limits = new SeasonLimits(season, seed, 1, StopSignal.untilTold())
                .of(plan, 100)
                .orElseThrow();

        assertThat(limits).extracting(Plan.Limit::resource).containsExactly(Resource.values());
        assertThat(limits).allSatisfy(limit -> {
            assertThat(limit.shareOfLate()).isBetween(0.0, 1.0);
            assertThat(limit.shareOfWait()).isBetween(0.0, 1.0);
        });
        assertThat(new SeasonLimits(season, seed, 2, StopSignal.untilTold()).of(plan, 100))
                .contains(limits);
    }

    @Test
    @Timeout(30)
    void aStopEndsTheSearchesWithoutResult() throws Exception {
        CompiledSeason season = CompiledSeason.of(InventedSeason.hurried(40, 2, 1));
        Plan plan = record(season, FirstLists.best(season));
        StopSignal stop = StopSignal.untilTold();
        SeasonLimits limits = new SeasonLimits(season, 1, 2, stop);

        CompletableFuture<Boolean> ended = CompletableFuture.supplyAsync(
                () -> limits.of(plan, 1_000_000_000_000L).isEmpty());
        TimeUnit.MILLISECONDS.sleep(300);
        stop.set();

        assertThat(ended.get()).isTrue();
        assertThat(limits.of(plan, 1)).as("stopped before it began").isEmpty();
    }

    @Test
    void allShortSearchesTogetherTryAFifthOfTheMovesOfThePlansOwnAndNeverMany() {
        assertThat(SeasonLimits.moves(0)).isZero();
        assertThat(SeasonLimits.moves(40_000)).isEqualTo(1_000);
        assertThat(SeasonLimits.moves(1_000_000_000)).isEqualTo(5_000);
    }

    private static SearchLimits moves(long moves) {
        return SearchLimits.moves(moves);
    }

    private static double shareOfLate(List<Plan.Limit> limits, Resource resource) {
        return limits.stream()
                .filter(limit -> limit.resource() == resource)
                .mapToDouble(Plan.Limit::shareOfLate)
                .sum();
    }

    private static Plan record(CompiledSeason season, FieldLists lists) {
        return PlanRecorder.record(
                season, lists.ids(season.season()), Plan.SeasonSource.of(season.season(), "s.yaml", "0".repeat(64)));
    }

    private static Season read(Path folder) {
        return ((Reading.Valid) SeasonFiles.read(folder, List.of())).season();
    }
}

package freshfurrow.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class SeasonPlannerTest {
    private static final Season SEASON = InventedSeason.of(30, 3, 2, 15_000, 5);
    private static final CompiledSeason COMPILED = CompiledSeason.of(SEASON);

    @Test
    void theSameSeedAndStepsGiveTheSameLists() {
        assertThat(plan(steps(3_000, 11))).isEqualTo(plan(steps(3_000, 11)));
    }

    @Test
    void anotherSeedSearchesElsewhere() {
        assertThat(plan(steps(3_000, 11))).isNotEqualTo(plan(steps(3_000, 12)));
    }

    @Test
    void everyFieldStandsInOneListAtMostAndOnlyWhereItIsAllowed() {
        List<List<String>> lists = plan(steps(3_000, 1)).byPlanter();

        assertThat(lists).hasSize(3);
        assertThat(lists.stream().flatMap(List::stream)).doesNotHaveDuplicates();
        assertThat(SEASON.fields()).allSatisfy(field -> {
            for (int planter = 0; planter < lists.size(); planter++) {
                if (lists.get(planter).contains(field.id())) {
                    assertThat(field.allows(SEASON.applicators().get(planter))).isTrue();
                }
            }
        });
    }

    @Test
    void withoutStepsTheFirstListsAreThePlan() {
        assertThat(plan(steps(0, 1)).byPlanter().stream().flatMap(List::stream)).hasSize(30);
    }

    @Test
    @Timeout(10)
    void planningEndsWithItsTime() {
        assertThat(plan(new PlanningOptions(Optional.of(Duration.ofMillis(300)), OptionalLong.empty(), 1))
                        .byPlanter())
                .hasSize(3);
    }

    @Test
    @Timeout(10)
    void stopEndsPlanningSoonWithAPlan() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        StopSignal stop = StopSignal.untilTold();
        SeasonPlanner planner = new SeasonPlanner(COMPILED, anHour(), progress -> begun.countDown(), stop);
        CompletableFuture<PlantingOrders> plan = CompletableFuture.supplyAsync(planner::plan);
        assertThat(begun.await(5, TimeUnit.SECONDS)).isTrue();

        stop.set();

        assertThat(plan.get(3, TimeUnit.SECONDS).byPlanter().stream().flatMap(List::stream))
                .isNotEmpty();
    }

    @Test
    @Timeout(10)
    void stopBeforePlanningLeavesTheListsMadeByHand() {
        StopSignal stop = StopSignal.untilTold();
        SeasonPlanner planner = new SeasonPlanner(COMPILED, anHour(), ProgressListener.SILENT, stop);
        stop.set();

        assertThat(planner.plan()).isEqualTo(FirstLists.byHand(COMPILED).orders(COMPILED.season()));
    }

    @Test
    @Timeout(30)
    void planningEndsByItselfWhenNothingGetsBetter() {
        CompiledSeason small = CompiledSeason.of(InventedSeason.of(2, 1, 1, 5_000, 3));

        assertThat(new SeasonPlanner(small, anHour(), ProgressListener.SILENT)
                        .plan()
                        .byPlanter())
                .singleElement()
                .satisfies(list -> assertThat(list).hasSize(2));
    }

    @Test
    @Timeout(30)
    void aSeasonOfOneFieldIsPlannedToo() {
        CompiledSeason single = CompiledSeason.of(InventedSeason.of(1, 2, 1, 5_000, 3));

        assertThat(new SeasonPlanner(single, anHour(), ProgressListener.SILENT)
                        .plan().byPlanter().stream().flatMap(List::stream))
                .containsExactly("F0");
    }

    @Test
    void progressTellsTheTimeLeftAndTheFiguresOfTheBest() {
        ConcurrentLinkedQueue<Progress> heard = new ConcurrentLinkedQueue<>();
        PlanningOptions options = new PlanningOptions(Optional.of(Duration.ofMillis(600)), OptionalLong.empty(), 1);

        new SeasonPlanner(COMPILED, options, heard::add).plan();

        assertThat(heard).hasSizeBetween(2, 10).allSatisfy(progress -> {
            assertThat(progress.timeLeft())
                    .hasValueSatisfying(left -> assertThat(left).isBetween(Duration.ZERO, Duration.ofMillis(600)));
            assertThat(progress.fills()).isPositive();
        });
    }

    @Test
    void progressBySteps_hasNoTimeLeft() {
        ConcurrentLinkedQueue<Progress> heard = new ConcurrentLinkedQueue<>();

        new SeasonPlanner(COMPILED, steps(2_000, 1), heard::add).plan();

        assertThat(heard).isNotEmpty().allSatisfy(progress -> assertThat(progress.timeLeft())
                .isEmpty());
    }

    @Test
    void optionsWithoutALimitMeanHalfAMinute() {
        assertThat(new PlanningOptions(Optional.empty(), OptionalLong.empty(), 1).time())
                .contains(Duration.ofSeconds(30));
    }

    @Test
    void noTimeAndFewerThanNoStepsAreRefused() {
        assertThatThrownBy(() -> new PlanningOptions(Optional.of(Duration.ZERO), OptionalLong.empty(), 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("planning time must be above 0, not PT0S");
        assertThatThrownBy(() -> steps(-1, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("steps must be 0 or more, not -1");
    }

    private static PlantingOrders plan(PlanningOptions options) {
        return new SeasonPlanner(COMPILED, options, ProgressListener.SILENT).plan();
    }

    private static PlanningOptions steps(long steps, long seed) {
        return new PlanningOptions(Optional.empty(), OptionalLong.of(steps), seed);
    }

    private static PlanningOptions anHour() {
        return new PlanningOptions(Optional.of(Duration.ofHours(1)), OptionalLong.empty(), 1);
    }
}

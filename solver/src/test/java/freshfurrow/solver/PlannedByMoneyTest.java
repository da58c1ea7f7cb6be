package freshfurrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;

/** Seasons of all kinds planned by money, and replanned: batches at the water, lots that run short, sprayers, overtime, fields without extract. */
class PlannedByMoneyTest {
    private static final Costs PRICES =
            new Costs(Optional.of("USD"), 24, 14, 0.37, 0.18, 9.9, 740, 55, 0.003, 51, Map.of());

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theirPlansAreSoundAndNoDearerThanTheFirst(long seed) {
        Season season = season(seed);
        CompiledSeason compiled = CompiledSeason.of(season);
        Plan plan = planned(compiled, seed, Optional.empty());

        assertThat(Audit.check(season, plan.withBounds(SeasonBounds.of(compiled).forPlan(plan))))
                .isEmpty();
        assertThat(new ListPlayer(compiled).score(FirstLists.best(compiled)).mediumScore())
                .isLessThanOrEqualTo(
                        plan.score().hard() < 0 ? Long.MAX_VALUE : plan.score().medium());
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void whatIsLeftOfThemIsReplanned(long seed) {
        Season season = season(seed);
        Plan plan = planned(CompiledSeason.of(season), seed, Optional.empty());
        int now = new Random(seed).nextInt(season.days() * 86_400 / 2);
        PlanStart start = StandingAt.of(season, plan, season.time().at(now));
        Season left = start.remaining(season);

        assertThat(Audit.check(left, planned(CompiledSeason.of(left), seed, Optional.of(start))))
                .isEmpty();
    }

    private static Plan planned(CompiledSeason season, long seed, Optional<PlanStart> start) {
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(300), seed);
        var orders = new SeasonPlanner(season, options, ProgressListener.SILENT).plan();
        Plan.SeasonSource source = Plan.SeasonSource.of(season.season(), "season.yaml", "0".repeat(64));
        return start.isPresent()
                ? PlanRecorder.record(season, orders, source, start.get())
                : PlanRecorder.record(season, orders, source);
    }

    private static Season season(long seed) {
        Season season =
                switch ((int) (seed % 4)) {
                    case 0 -> RandomSeasons.withMounted(seed, 12);
                    case 1 -> RandomSeasons.season(-seed, 12);
                    case 2 -> RandomSeasons.goingWithout(RandomSeasons.season(seed, 12), new Random(seed));
                    default -> RandomSeasons.withJudgedGround(RandomSeasons.mixed(seed, 12), seed);
                };
        return season.change()
                .goals(season.goals().withByMoney(Optional.of(PRICES)))
                .season();
    }
}

package freshfurrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What one plan does can be promised, and another one keeps it. */
class FixedFieldsPlannedTest {
    private static final int MOST_FIELDS = 20;
    private static final int STEPS = 3_000;

    @Property(tries = 20)
    void promisesThatSomePlanKeepsAreKept(@ForAll long seed) {
        Season season = RandomSeasons.season(seed, MOST_FIELDS);
        Plan free = plan(season, seed);
        Map<String, Standing.Promise> does = Promises.of(free, season.start(), Integer.MAX_VALUE);
        Random random = new Random(seed);
        List<Field> promised = season.fields().stream()
                .map(field -> does.containsKey(field.id()) && random.nextInt(3) == 0
                        ? field.change()
                                .fixed(fixed(does.get(field.id()), random))
                                .field()
                        : field)
                .toList();
        Season fixed = season.change().fields(promised).season();

        Plan plan = plan(fixed, seed + 1);

        assertThat(plan.score().hard()).isZero();
        assertThat(Audit.check(fixed, plan)).isEmpty();
        Map<String, Standing.Promise> kept = Promises.of(plan, season.start(), Integer.MAX_VALUE);
        promised.forEach(field -> {
            field.fixed()
                    .planter()
                    .filter(planter -> kept.containsKey(field.id()))
                    .ifPresent(planter ->
                            assertThat(kept.get(field.id()).planter()).isEqualTo(planter));
            field.fixed().on().ifPresent(day -> assertThat(kept.get(field.id()).day())
                    .isEqualTo(day));
        });
    }

    private static Fixed fixed(Standing.Promise promise, Random random) {
        return new Fixed(
                random.nextBoolean() ? Optional.of(promise.planter()) : Optional.empty(), Optional.of(promise.day()));
    }

    private static Plan plan(Season season, long seed) {
        CompiledSeason compiled = CompiledSeason.of(season);
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(STEPS), seed);
        return PlanRecorder.record(
                compiled,
                new SeasonPlanner(compiled, options, ProgressListener.SILENT).plan(),
                Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64)));
    }
}

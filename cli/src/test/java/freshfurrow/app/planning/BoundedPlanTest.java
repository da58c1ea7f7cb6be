package freshfurrow.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class BoundedPlanTest {
    private static final Season SEASON = ((Reading.Valid) SeasonFiles.read(season(), List.of())).season();

    /** Corn, of which the windows close first, comes last. */
    private static final List<String> FIELDS = SEASON.fields().stream()
            .sorted(Comparator.comparing((Field field) -> field.window().last()).reversed())
            .map(Field::id)
            .toList();

    @Test
    void ofASmallSeasonTheBestOfAllPlansIsTaken() {
        Plan found = record(SEASON, FIELDS);

        assertThat(bounded(SEASON, found).score()).isNotEqualTo(found.score());
    }

    @Test
    void aBetterPlanThatBreaksAPromiseIsNotTaken() {
        LocalDateTime begins = SEASON.first().atStartOfDay();
        Standing promised =
                Standing.at(begins).withPromised(Promises.of(record(SEASON, FIELDS), begins, SEASON.days()));
        Season underWay = SEASON.change().standing(Optional.of(promised)).season();
        Plan found = record(underWay, FIELDS);
        assertThat(Promises.kept(promised, found)).isEqualTo(FIELDS.size());

        assertThat(Promises.kept(promised, bounded(SEASON, record(SEASON, FIELDS))))
                .as("the best of all plans breaks promises")
                .isLessThan(FIELDS.size());
        assertThat(Promises.kept(promised, bounded(underWay, found))).isEqualTo(FIELDS.size());
    }

    private static Plan record(Season season, List<String> list) {
        return PlanRecorder.record(
                CompiledSeason.of(season), List.of(list), Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64)));
    }

    private static Plan bounded(Season season, Plan found) {
        CompiledSeason compiled = CompiledSeason.of(season);
        return BoundedPlan.of(
                compiled,
                found,
                SeasonBounds.of(compiled),
                orders -> record(season, orders.byPlanter().get(0)),
                StopSignal.untilTold());
    }

    private static Path season() {
        Path fromModule = Path.of("..", "scenarios", "first-season");
        return Stream.of(fromModule, Path.of("scenarios", "first-season"))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
    }
}

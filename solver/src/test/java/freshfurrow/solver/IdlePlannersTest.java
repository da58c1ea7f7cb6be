package freshfurrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.example.InventedSeason;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** No crew stands before a closed field in dry weather while the next one could be planted. */
class IdlePlannersTest {
    private static final int OPENS_LATER = 7;

    @Test
    void aRigThatIsDownIsNoReasonToStandForAWindow() {
        Season season = season();
        LocalDate first = season.first();
        Season down = season.change()
                .outages(List.of(new Outage(
                        season.rigs().get(0).id(),
                        first.atStartOfDay(),
                        first.plusDays(2).atTime(12, 0))))
                .season();

        Plan.Totals planned = plan(down);

        assertThat(planned.idleMin()).isZero();
        assertThat(planned.waitMin()).isPositive();
    }

    @Test
    void openFieldsComeBeforeThoseOfALaterWindow() {
        assertThat(plan(season()).idleMin()).isZero();
    }

    /** Three fields are open from the first day on, three from a later one; what is late does not matter. */
    private static Season season() {
        Season any = InventedSeason.of(6, 1, 1, 4_000, 3);
        List<Field> fields = IntStream.range(0, 6)
                .mapToObj(i -> any.fields()
                        .get(i)
                        .change()
                        .areaHa(12)
                        .recipe("standard")
                        .window(new DateWindow(any.first().plusDays(i < 3 ? 0 : OPENS_LATER), any.last()))
                        .field())
                .toList();
        return InventedSeason.withRain(InventedSeason.withFields(any, fields), List.of());
    }

    private static Plan.Totals plan(Season season) {
        CompiledSeason compiled = CompiledSeason.of(season);
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(2_000), 1);
        return PlanRecorder.record(
                        compiled,
                        new SeasonPlanner(compiled, options, ProgressListener.SILENT).plan(),
                        Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64)))
                .totals();
    }
}

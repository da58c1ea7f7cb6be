package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.StandingAt;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Fields A and B of 5 ha, which a planter plants in a morning; A is first in its planting order. */
class FixedFieldsTest {
    private final WorkedSeason worked = new WorkedSeason().days(4).field("A", 5).field("B", 5);

    @Test
    void aFieldIsNotBegunBeforeItsDay() {
        Season season = fixed(worked.season(), WorkedSeason.day(3));
        Plan plan = plan(season, "A", "B");

        assertThat(begun(plan, "A")).contains(WorkedSeason.day(3));
        assertThat(plan.score().hard()).isZero();
        assertThat(Audit.check(season, plan)).isEmpty();
    }

    @Test
    void aFieldThatIsBegunLaterBreaksAPromise() {
        Season season = fixed(worked.season(), WorkedSeason.day(1));
        // B takes from 07:33:20 to 09 h of the first day, so that A still begins on it; not after rain at 08:00
        Plan dry = plan(season, "B", "A");
        Season wet = fixed(worked.rain(1, "08:00", 10).season(), WorkedSeason.day(1));
        Plan rained = plan(wet, "B", "A");

        assertThat(dry.score().hard()).isZero();
        assertThat(begun(rained, "A")).contains(WorkedSeason.day(2));
        assertThat(rained.score().hard()).isEqualTo(-1);
        assertThat(Audit.check(wet, rained)).isEmpty();
    }

    @Test
    void aFieldThatIsNeverBegunBreaksAPromise() {
        Season season = fixed(worked.season(), WorkedSeason.day(1));
        Plan plan = plan(season, "B");

        assertThat(plan.score().hard()).isEqualTo(-1);
        assertThat(Audit.check(season, plan)).isEmpty();
    }

    @Test
    void onlyThePlanterThatItIsFixedToMayPlantIt() {
        Season season = worked.planter("P2", planter -> planter).season();
        Season fixed = season.change()
                .fields(season.fields().stream()
                        .map(field -> field.change()
                                .fixed(new Fixed(Optional.of("P2"), Optional.empty()))
                                .field())
                        .toList())
                .season();
        CompiledSeason compiled = CompiledSeason.of(fixed);

        assertThat(compiled.allows(0, 0)).isFalse();
        assertThat(compiled.allows(1, 0)).isTrue();
    }

    @Test
    void theAuditCatchesAFieldThatIsBegunTooSoon() {
        Season season = worked.season();
        Plan plan = plan(season, "A", "B");

        assertThat(Audit.check(fixed(season, WorkedSeason.day(3)), plan).stream()
                        .map(Finding::rule)
                        .map(Enum::name))
                .contains("FIXED_DAY", "SCORE");
    }

    @Test
    void onceItIsBegunItsDayCountsNoMore() {
        Season season = fixed(worked.season(), WorkedSeason.day(1));
        Plan plan = plan(season, "A", "B");

        Season left =
                StandingAt.of(season, plan, WorkedSeason.FIRST.atTime(8, 0)).remaining(season);

        assertThat(left.field("A").fixed()).isEqualTo(Fixed.NOT);
        assertThat(CompiledSeason.of(left).fixedDays()).isZero();
    }

    private static Season fixed(Season season, LocalDate day) {
        return season.change()
                .fields(season.fields().stream()
                        .map(field -> field.id().equals("A")
                                ? field.change()
                                        .fixed(new Fixed(Optional.empty(), Optional.of(day)))
                                        .field()
                                : field)
                        .toList())
                .season();
    }

    private static Plan plan(Season season, String... list) {
        return PlanRecorder.record(
                CompiledSeason.of(season),
                List.of(List.of(list)),
                Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64)));
    }

    private static Optional<LocalDate> begun(Plan plan, String field) {
        return plan.planters().get("P1").activities().stream()
                .filter(activity -> activity instanceof Activity.Plant plant
                        && plant.field().equals(field))
                .map(plant -> plant.start().toLocalDate())
                .findFirst();
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * Work from midnight on in a night in which clocks are changed. The rig is there with water at 00:11:40 and extracts until 00:26:40; the
 * transfer takes 800 s, until 00:40:00, and 5 ha take 5,000 s.
 */
class ClockChangeNightTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final LocalDate AUTUMN = LocalDate.of(2027, 11, 7);
    private static final LocalDate SPRING = LocalDate.of(2027, 3, 14);

    @Test
    void whenClocksGoBackMixKeepsForAnHourLessByTheClock() {
        // 00:26:40 CDT + 5 h = 05:26:40 CDT = 04:26:40 CST; 1.2 ha by 01:00, 3.8 ha in 3,800 s from 02:00 on
        WorkedPlan plan = plan(season(AUTUMN, CHICAGO, 5 * 3600));

        assertThat(plan.planter("P1", "plant"))
                .containsExactly(
                        "1 00:40:00 - 1 01:00:00 plant A 1.200 ha", "1 02:00:00 - 1 03:03:20 plant A 3.800 ha");
        assertThat(plan.loads()).containsExactly("P1 R1 1000.000 L, old 1 04:26:40, used up 1 03:03:20");
        assertThat(plan.plan().totals().smallestMarginMin()).isEqualTo(83.3); // 5,000 s
        assertThat(Audit.check(plan.season(), plan.plan())).isEmpty();
    }

    @Test
    void whenClocksGoForwardMixKeepsForAnHourMoreByTheClock() {
        // 00:26:40 CST + 5 h = 05:26:40 CST = 06:26:40 CDT; 4.8 ha by 02:00, which is 03:00
        WorkedPlan plan = plan(season(SPRING, CHICAGO, 5 * 3600));

        assertThat(plan.planter("P1", "plant"))
                .containsExactly(
                        "1 00:40:00 - 1 02:00:00 plant A 4.800 ha", "1 03:00:00 - 1 03:03:20 plant A 0.200 ha");
        assertThat(plan.loads()).containsExactly("P1 R1 1000.000 L, old 1 06:26:40, used up 1 03:03:20");
        assertThat(plan.plan().totals().smallestMarginMin()).isEqualTo(203.3); // 12,200 s
        assertThat(Audit.check(plan.season(), plan.plan())).isEmpty();
    }

    @Test
    void marginsOfLoadsAreWhatPasses() {
        // used up at 01:00 CDT at the latest, which is when mix of the hour that comes twice gets old
        Season season = season(AUTUMN, CHICAGO, 2 * 3600);
        Plan plan = plan(season).plan();
        Plan.Load first = plan.loads().get(0);

        assertThat(first.deadline()).isEqualTo(LocalDateTime.parse("2027-11-07T01:00"));
        assertThat(plan.margin(first)).isEqualTo(passed(first.lastDrop(), first.deadline()));
        assertThat(Audit.check(season, plan)).isEmpty();
    }

    @Test
    void theAuditCatchesAnHourTooLong() {
        Plan byTheClock = plan(season(AUTUMN, ZoneOffset.UTC, 5 * 3600)).plan();
        assertThat(Audit.check(season(AUTUMN, CHICAGO, 5 * 3600), byTheClock))
                .extracting(Finding::rule)
                .contains(Rule.USE_BY);

        Plan shortHold = plan(season(AUTUMN, ZoneOffset.UTC, 4000)).plan();
        assertThat(Audit.check(season(AUTUMN, CHICAGO, 4000), shortHold))
                .extracting(Finding::rule)
                .contains(Rule.USE_BY, Rule.FRESHNESS);
    }

    @Property(tries = 300)
    void nothingIsPlantedOlderThanItsHoldTime(
            @ForAll long seed, @ForAll @IntRange(max = 3) int daysBefore, @ForAll boolean autumn) {
        Season season = RandomSeasons.season(seed, (autumn ? AUTUMN : SPRING).minusDays(daysBefore), CHICAGO);
        Plan plan = PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, RandomSeasons.lists(season, seed)),
                Plan.SeasonSource.of(season, "season.yaml", "00"));
        assertThat(Audit.check(season, plan)).isEmpty();
        for (Plan.Load load : plan.loads()) {
            LocalDateTime oldest = plan.batches().stream()
                    .filter(batch -> load.batches().contains(batch.id()))
                    .map(Plan.Batch::end)
                    .min(LocalDateTime::compareTo)
                    .orElseThrow();
            assertThat(passed(oldest, load.lastDrop()))
                    .isLessThanOrEqualTo(
                            Duration.ofSeconds(season.recipe(load.recipe()).holdS()));
            assertThat(plan.margin(load)).isEqualTo(passed(load.lastDrop(), load.deadline()));
        }
    }

    private static Duration passed(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from.atZone(CHICAGO), to.atZone(CHICAGO));
    }

    private static WorkedPlan plan(Season season) {
        return new WorkedPlan(
                season,
                PlanRecorder.record(
                        CompiledSeason.of(season),
                        List.of(List.of("A")),
                        Plan.SeasonSource.of(season, "season.yaml", "00")));
    }

    private static Season season(LocalDate first, ZoneId zone, int holdS) {
        Season april = new WorkedSeason()
                .hold(holdS)
                .planter("P1", planter -> planter.hours("00:00/24:00"))
                .rig("R1", rig -> rig.hours("00:00/24:00"))
                .field("A", 5)
                .season();
        return april.change()
                .timezone(zone)
                .first(first)
                .last(first.plusDays(2))
                .fields(april.fields().stream()
                        .map(field -> field.change()
                                .window(new DateWindow(first, first.plusDays(2)))
                                .field())
                        .toList())
                .compost(List.of(new CompostLot("heap", 10_000, first)))
                .season();
    }
}

package freshfurrow.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.SeasonCopy;
import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A season whose file is changed while it is planted: the plan before counts as followed all the same. */
final class ChangedSeasonTest {
    private static final LocalDateTime MIDDAY = LocalDateTime.parse("2027-04-23T14:10");

    @TempDir
    private Path folder = Path.of("");

    private SeasonCopy season = new SeasonCopy(Path.of(""));

    @BeforeEach
    void plan() {
        season = SeasonCopy.of("first-season", folder);
        SeasonPlanning.plan(
                new PlanningOrder(season.given(), Optional.empty(), SeasonCopy.options(), false, false),
                StopSignal.untilTold(),
                PlanningListener.SILENT);
    }

    private ProposedPlan replan(boolean changed, LocalDateTime now) {
        ReplanningOrder order = new ReplanningOrder(
                season.given(),
                new GivenPlan(season.plans()),
                changed,
                Optional.of(now),
                SeasonCopy.NO_NEWS,
                Optional.empty(),
                false,
                SeasonCopy.options(),
                Optional.empty(),
                false,
                false);
        return SeasonReplanning.propose(
                order, SeasonCopy.IN_ANOTHER_YEAR, StopSignal.untilTold(), PlanningListener.SILENT);
    }

    private static double plantedHa(ProposedPlan plan) {
        return plan.plan().start().orElseThrow().planted().stream()
                .mapToDouble(PlanStart.Planted::areaHa)
                .sum();
    }

    @Test
    void unlessThatIsSaidItsPlanIsOfAnotherSeason() {
        season.change("tank: 600 gal", "tank: 700 gal");
        assertThat(Refusals.of(() -> replan(false, MIDDAY))).isInstanceOf(InputRefusal.PlanOfAnotherSeason.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tank: 600 gal       | tank: 900 gal
            speed: 5 mph        | speed: 3 mph
            batchTime: 20 min   | batchTime: 35 min
            nurseTank: 1200 gal | nurseTank: 900 gal
            closed: [SUNDAY]    | closed: [SUNDAY, MONDAY]
            mass: 1260 lb       | mass: 900 lb
            mix: 15 gal/ac      | mix: 12 gal/ac
            hold: 5.5 h         | hold: 5.5 h, reserve: 1 h
            amount: 0.8 in      | amount: 2 in
            closed: [SUNDAY]    | fixed: {C45: {on: 2027-05-03}}
            closed: [SUNDAY]    | goals: {untreated: 2 d}
            roadSpeed: 15 mph   | roadSpeed: 9 mph
            2027-05-08}         | 2027-04-29}
            dailyLimit: 9000 gal | dailyLimit: 5000 gal
            """)
    void whatWasDoneStaysAndTheRestGoesByTheNewFile(String from, String to) {
        double before = plantedHa(replan(false, MIDDAY));
        season.change(from, to);
        for (LocalDateTime now :
                new LocalDateTime[] {MIDDAY, MIDDAY.withHour(6), MIDDAY.withHour(23), MIDDAY.plusDays(9)}) {
            ProposedPlan after = replan(true, now);
            assertThat(after.plan().season().sha256())
                    .isEqualTo(season.given().read().sha256());
            if (now.equals(MIDDAY)) {
                assertThat(plantedHa(after)).isEqualTo(before);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tank: 600 gal | tank: 450 gal
            hold: 5.5 h   | hold: 3 h
            """)
    void whatDoesNotGoWithMixOnBoardIsRefusedUntilThatIsUsed(String from, String to) {
        season.change(from, to);
        assertThat(Refusals.of(() -> replan(true, MIDDAY))).isInstanceOf(PlanningRefusal.MisfitChange.class);
        assertThat(replan(true, MIDDAY.plusDays(9)).plan().season().sha256())
                .isEqualTo(season.given().read().sha256());
    }

    @Test
    void aFieldThatIsGoneIsNamed() {
        season.change("fields: fields.csv", "fields: {N80: {area: 80 ac, lat: 41.02, lon: -97.0, crop: corn}}");
        assertThat(Refusals.of(() -> replan(true, MIDDAY))).isInstanceOf(InputRefusal.UnreadablePlan.class);
    }
}

package freshfurrow.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.OutputRefusal.Obstruction;
import freshfurrow.app.refusal.OutputRefusal.Unwritten;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refusal;
import freshfurrow.app.refusal.SeasonPart;
import freshfurrow.app.refusal.SpringsRefusal;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.season.Work;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A refusal that an option would help against names it. */
final class RefusalWordsTest {
    private static final Path PLAN = Path.of("plan.json");
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    private static final LocalDateTime NOON = FIRST.atTime(12, 0);

    static Stream<Arguments> helped() {
        return Stream.of(
                Arguments.of(new InputRefusal.PlanOfAnotherSeason(PLAN, "season.yaml"), "--variant FILE"),
                Arguments.of(new InputRefusal.SeasonOfAnotherPlan(Path.of("season.yaml"), PLAN), "--season SEASON"),
                Arguments.of(new InputRefusal.SeasonNotFound(PLAN, List.of(Path.of("a"), Path.of("b"))), "a nor b"),
                Arguments.of(new InputRefusal.NoLog(Path.of("log.csv")), "--log FILE"),
                Arguments.of(new InputRefusal.Unknown(SeasonPart.LOT, "peat", List.of("barn")), "--lot: "),
                Arguments.of(new InputRefusal.Undecided(SeasonPart.RIG, List.of("R1", "R2")), "choose one with --rig"),
                Arguments.of(new OutputRefusal.Unwritable(PLAN, "permission denied", Unwritten.PLAN), "--out DIR"),
                Arguments.of(new OutputRefusal.NoCalendar(Path.of("plan.ics")), "--out"),
                Arguments.of(new PlanningRefusal.NoTime(FIRST, FIRST), "--now"),
                Arguments.of(new PlanningRefusal.OutOfSeason(NOON, FIRST, FIRST), "--now"),
                Arguments.of(new PlanningRefusal.PlanBeginsLater(PLAN, NOON, NOON), "--plan"),
                Arguments.of(
                        new PlanningRefusal.UnknownMachine("R9", List.of("P1", "R1"), Set.of(Work.PLANT)),
                        "--down: there is no planter or rig 'R9'"),
                Arguments.of(
                        new PlanningRefusal.UnknownMachine(
                                "R9", List.of("P1", "S1", "R1"), Set.of(Work.SPRAY, Work.PLANT)),
                        "--down: there is no planter, sprayer or rig 'R9'"),
                Arguments.of(new PlanningRefusal.UnknownLot("peat", List.of("barn")), "--spoiled: "),
                Arguments.of(new SpringsRefusal.TooFewSprings("station.csv", 7), "--springs 7"),
                Arguments.of(new SpringsRefusal.MisfitSlice(Path.of("b"), "other seeds"), "--seed"),
                Arguments.of(new LogRefusal.NoTimeOfEntry(FIRST, FIRST), "--at 2027-04-19T15:10"),
                Arguments.of(new LogRefusal.ObstructedLog(Path.of("log.csv"), Obstacle.LINK), "--log FILE"));
    }

    @ParameterizedTest
    @MethodSource("helped")
    void theOptionThatHelpsIsNamedInOneLine(Refusal refusal, String option) {
        assertThat(RefusalWords.lines(refusal)).singleElement().asString().contains(option);
    }

    @Test
    void eachFileThatIsInTheWayIsALine() {
        assertThat(RefusalWords.lines(new OutputRefusal.Obstructed(
                        List.of(
                                new Obstruction(PLAN, Obstacle.THERE),
                                new Obstruction(Path.of("plan.html"), Obstacle.LINK)),
                        Unwritten.PLANNING)))
                .satisfiesExactly(
                        there -> assertThat(there).startsWith("plan.json: ").contains("nothing was planned", "--force"),
                        link -> assertThat(link)
                                .startsWith("plan.html: ")
                                .contains("--out DIR")
                                .doesNotContain("--force"));
    }

    @Test
    void aPlanThatBreaksItsOwnRulesIsOwned() {
        assertThat(RefusalWords.lines(
                        new PlanningRefusal.BrokenPlan(List.of(new Finding(Rule.SEASON, "P1", "wrong")), true)))
                .hasSize(2)
                .first()
                .asString()
                .contains("not in your files", "season file, plan and log");
    }

    @Test
    void aFieldThatIsMisspeltIsGuessed() {
        assertThat(RefusalWords.lines(new PlanRefusal.NoField("N81", List.of("N80", "W95"))))
                .singleElement()
                .asString()
                .contains("N80");
    }
}

package freshfurrow.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.OutputRefusal.Obstruction;
import freshfurrow.app.refusal.OutputRefusal.Unwritten;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.WaitReason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is made of a plan that is there, without any command. */
final class DocumentsOfPlanTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 4, 19);

    @TempDir
    private Path folder = Path.of("");

    private GivenPlan plan = new GivenPlan(Path.of(""));

    @BeforeEach
    void writePlan() throws IOException {
        Files.writeString(folder.resolve("plan.json"), PlanFile.toJson(ExamplePlan.plan()));
        plan = new GivenPlan(folder);
    }

    @Test
    void sheetsOfADayAreNamedByIt() {
        Path file = folder.resolve("sheets-2027-04-19.html");

        assertThat(SheetsOfPlan.write(plan, Optional.of(MONDAY), Optional.empty(), false))
                .contains(new SheetsOfPlan(file, 1));
        assertThat(file).isNotEmptyFile();
    }

    @Test
    void sheetsThatAreThereAreNotReplacedUnasked() {
        SheetsOfPlan.write(plan, Optional.of(MONDAY), Optional.empty(), false);

        assertThat(Refusals.of(() -> SheetsOfPlan.write(plan, Optional.of(MONDAY), Optional.empty(), false)))
                .isEqualTo(new OutputRefusal.Obstructed(
                        List.of(new Obstruction(folder.resolve("sheets-2027-04-19.html"), Obstacle.THERE)),
                        Unwritten.FILES));
        assertThat(SheetsOfPlan.write(plan, Optional.of(MONDAY), Optional.empty(), true))
                .isPresent();
    }

    @Test
    void aDayWithoutWorkHasNoSheets() {
        assertThat(Refusals.of(
                        () -> SheetsOfPlan.write(plan, Optional.of(MONDAY.minusDays(1)), Optional.empty(), false)))
                .isEqualTo(new PlanRefusal.NoWorkOn(MONDAY.minusDays(1), MONDAY, MONDAY.plusDays(2)));
    }

    @Test
    void aDayBetweenTheFirstAndTheLastIsADayOfThePlan() {
        assertThat(DayOfPlan.of(plan, MONDAY.plusDays(1)).day()).isEqualTo(MONDAY.plusDays(1));
        assertThat(Refusals.of(() -> DayOfPlan.of(plan, MONDAY.plusDays(3))))
                .isEqualTo(new PlanRefusal.NoWorkOn(MONDAY.plusDays(3), MONDAY, MONDAY.plusDays(2)));
    }

    @Test
    void withoutADateADayIsTodayOrTheNextOneWithWork() {
        assertThat(DayOfPlan.next(plan, MONDAY.minusDays(30)).day()).isEqualTo(MONDAY);
        assertThat(DayOfPlan.next(plan, MONDAY.plusDays(1)).day()).isEqualTo(MONDAY.plusDays(1));
        assertThat(Refusals.of(() -> DayOfPlan.next(plan, MONDAY.plusDays(3))))
                .isEqualTo(new PlanRefusal.NoMoreWork(MONDAY.plusDays(3), MONDAY, MONDAY.plusDays(2)));
    }

    @Test
    void aDayOfWaitingAloneIsNoDayWithWork() throws IOException {
        Files.writeString(
                folder.resolve("plan.json"),
                PlanFile.toJson(ExamplePlan.withActivities(List.of(new Activity.Wait(
                        MONDAY.plusDays(2).atTime(9, 0), MONDAY.plusDays(9).atTime(9, 0), "N40", WaitReason.WINDOW)))));
        assertThat(Refusals.of(() -> DayOfPlan.next(plan, MONDAY.plusDays(3))))
                .isInstanceOf(PlanRefusal.NoMoreWork.class);
    }

    @Test
    void tablesNeedTheSeason() {
        SeasonOfPlan nowhere = new SeasonOfPlan(Optional.empty(), List.of());

        assertThat(Refusals.of(() ->
                        PlanExport.write(plan, nowhere, EnumSet.of(PlanExport.Part.TABLES), Optional.empty(), false)))
                .isInstanceOf(InputRefusal.SeasonNotFound.class);
        assertThat(Refusals.of(() -> PageOfPlan.write(plan, nowhere, Optional.empty(), false)))
                .isInstanceOf(InputRefusal.SeasonNotFound.class);
    }
}

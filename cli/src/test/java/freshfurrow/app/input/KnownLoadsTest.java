package freshfurrow.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.read.Reading;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KnownLoadsTest {
    private static final Reading.Valid SEASON = seasonOf(ExamplePlan.plan());

    @TempDir
    private Path folder = Path.of("");

    @Test
    void withoutAPlanThereAreNone() {
        assertThat(KnownLoads.of(SEASON, new GivenPlan(folder.resolve("plan")))).isEmpty();
    }

    @Test
    void theyAreThoseOfThePlanAndOfAllThatAreKept() throws Exception {
        String plan = PlanFile.toJson(ExamplePlan.plan());
        Files.writeString(folder.resolve("plan.json"), plan);
        Path kept = Files.createDirectory(folder.resolve("plans"));
        Files.writeString(kept.resolve("001.json"), plan.replace("\"L0001\"", "\"L0009\""));
        Files.writeString(kept.resolve("notes.txt"), "no plan");

        assertThat(KnownLoads.of(SEASON, new GivenPlan(folder))).containsExactlyInAnyOrder("L0001", "L0002", "L0009");
    }

    @Test
    void aPlanThatCannotBeReadIsSaid() throws Exception {
        Files.writeString(folder.resolve("plan.json"), "{");

        assertThatExceptionOfType(Refused.class)
                .isThrownBy(() -> KnownLoads.of(SEASON, new GivenPlan(folder)))
                .withMessageContaining("plan.json");
    }

    @Test
    void thePlanHasToBeOfTheSeasonAsItIsAndKeptOnesMayBeOfAnEarlierOne() throws Exception {
        Plan plan = ExamplePlan.plan();
        Path kept = Files.createDirectory(folder.resolve("plans"));
        Files.writeString(folder.resolve("plan.json"), PlanFile.toJson(plan));
        Files.writeString(kept.resolve("001.json"), PlanFile.toJson(plan).replace("abab", "cdcd"));
        assertThat(KnownLoads.of(SEASON, new GivenPlan(folder))).containsExactlyInAnyOrder("L0001", "L0002");

        Files.writeString(folder.resolve("plan.json"), PlanFile.toJson(plan).replace("abab", "cdcd"));
        assertThatExceptionOfType(Refused.class)
                .isThrownBy(() -> KnownLoads.of(SEASON, new GivenPlan(folder)))
                .satisfies(refused -> assertThat(refused.refusal())
                        .isEqualTo(new InputRefusal.PlanOfAnotherSeason(folder.resolve("plan.json"), "season.yaml")));
    }

    /** The season that the plan says it was made from. */
    private static Reading.Valid seasonOf(Plan plan) {
        return new Reading.Valid(
                ExampleSeason.season(),
                plan.season().file(),
                plan.season().sha256(),
                Optional.empty(),
                Optional.empty());
    }
}

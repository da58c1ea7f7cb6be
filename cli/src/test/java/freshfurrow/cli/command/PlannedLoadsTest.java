package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.PlanFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlannedLoadsTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void withoutAPlanThereAreNone() {
        assertThat(PlannedLoads.of(folder.resolve("plan"))).isEmpty();
    }

    @Test
    void theyAreThoseOfThePlanAndOfAllThatAreKept() throws Exception {
        String plan = PlanFile.toJson(ExamplePlan.plan());
        Files.writeString(folder.resolve("plan.json"), plan);
        Path kept = Files.createDirectory(folder.resolve("plans"));
        Files.writeString(kept.resolve("001.json"), plan.replace("\"L0001\"", "\"L0009\""));
        Files.writeString(kept.resolve("notes.txt"), "no plan");

        assertThat(PlannedLoads.of(folder)).containsExactlyInAnyOrder("L0001", "L0002", "L0009");
    }

    @Test
    void aPlanThatCannotBeReadIsSaid() throws Exception {
        Files.writeString(folder.resolve("plan.json"), "{");

        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> PlannedLoads.of(folder))
                .withMessageContaining("plan.json");
    }
}

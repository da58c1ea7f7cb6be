package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.PlanFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlanTargetTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aFolderThatIsMissingIsMadeOnlyWhenThePlanIsWritten() throws Exception {
        Path deep = folder.resolve("a").resolve("b");
        PlanTarget target = PlanTarget.in(deep, false);
        assertThat(folder.resolve("a")).doesNotExist();
        target.write(ExamplePlan.plan());
        assertThat(PlanFile.read(deep.resolve("plan.json"))).isEqualTo(ExamplePlan.plan());
    }

    @Test
    void aPlanThatIsThereIsNotReplacedUnasked() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "mine");
        assertThatThrownBy(() -> PlanTarget.in(folder, false))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("there is a plan already")
                .hasMessageContaining("--force");
        assertThat(folder.resolve("plan.json")).hasContent("mine");
    }

    @Test
    void aPageThatIsThereIsNotReplacedUnaskedEither() throws IOException {
        Files.writeString(folder.resolve("plan.html"), "mine");
        assertThatThrownBy(() -> PlanTarget.in(folder, false, "plan.html"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("plan.html")
                .hasMessageContaining("--force");
        PlanTarget.in(folder, false);
    }

    @Test
    void aPlanThatIsThereIsReplacedWhenForced() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "mine");
        PlanTarget.in(folder, true).write(ExamplePlan.plan());
        assertThat(Files.readString(folder.resolve("plan.json"))).isEqualTo(PlanFile.toJson(ExamplePlan.plan()));
    }

    @Test
    void aFileWhereTheFolderShouldBeIsRefusedBeforePlanning() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        assertThatThrownBy(() -> PlanTarget.in(file.resolve("out"), false))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("nothing was planned");
    }

    @Test
    void tryingOutLeavesNothingBehind() {
        PlanTarget.in(folder, false);
        assertThat(folder).isEmptyDirectory();
    }
}

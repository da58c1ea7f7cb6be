package freshfurrow.app.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.cli.command.Refusal;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.plan.PlanFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlanTargetTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aFolderThatIsMissingIsMadeOnlyWhenThePlanIsWritten() throws Exception {
        Path deep = folder.resolve("a").resolve("b");
        PlanTarget target = PlanTarget.in(deep, IfThere.KEEP);
        assertThat(folder.resolve("a")).doesNotExist();
        target.write(PlanFile.toJson(ExamplePlan.plan()), Optional.empty());
        assertThat(PlanFile.read(deep.resolve("plan.json"))).isEqualTo(ExamplePlan.plan());
    }

    @Test
    void aPlanThatIsThereIsNotReplacedUnasked() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "mine");
        assertThatThrownBy(() -> PlanTarget.in(folder, IfThere.KEEP))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("there is such a file already")
                .hasMessageContaining("--force");
        assertThat(folder.resolve("plan.json")).hasContent("mine");
    }

    @Test
    void aPageThatIsThereIsNotReplacedUnaskedEither() throws IOException {
        Files.writeString(folder.resolve("plan.html"), "mine");
        assertThatThrownBy(() -> PlanTarget.in(folder, IfThere.KEEP, "plan.html"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("plan.html")
                .hasMessageContaining("--force");
        PlanTarget.in(folder, IfThere.KEEP);
    }

    @Test
    void aPlanThatIsThereIsReplacedWhenForced() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "mine");
        PlanTarget.in(folder, IfThere.REPLACE).write(PlanFile.toJson(ExamplePlan.plan()), Optional.empty());
        assertThat(Files.readString(folder.resolve("plan.json"))).isEqualTo(PlanFile.toJson(ExamplePlan.plan()));
    }

    @Test
    void aPlanThatIsReplacedKeepsItsMode() throws IOException {
        Path plan = Files.writeString(folder.resolve("plan.json"), "mine");
        Files.setPosixFilePermissions(plan, PosixFilePermissions.fromString("rw-------"));
        PlanTarget.in(folder, IfThere.REPLACE).write("new", Optional.of("page"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(plan)))
                .isEqualTo("rw-------");
    }

    @Test
    void ofTwoPlansAtOnceIntoOneNewFolderTheSecondDoesNotReplaceTheFirst() {
        PlanTarget first = PlanTarget.in(folder.resolve("new"), IfThere.KEEP, "plan.html");
        PlanTarget second = PlanTarget.in(folder.resolve("new"), IfThere.KEEP, "plan.html");
        first.write("first", Optional.of("first page"));

        assertThatThrownBy(() -> second.write("second", Optional.of("second page")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("plan.json: there is such a file already, so the new plan was not written");

        assertThat(folder.resolve("new").resolve("plan.json")).hasContent("first");
        assertThat(folder.resolve("new").resolve("plan.html")).hasContent("first page");
    }

    @Test
    void aPlanIsNotWrittenWithoutItsPage() throws IOException {
        PlanTarget target = PlanTarget.in(folder, IfThere.KEEP, "plan.html");
        Files.createDirectory(folder.resolve("plan.html"));
        assertThatThrownBy(() -> target.write("plan", Optional.of("page")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("plan.html: is no ordinary file");
        assertThat(folder.resolve("plan.json")).doesNotExist();
    }

    @Test
    void aFileWhereTheFolderShouldBeIsRefusedBeforePlanning() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        assertThatThrownBy(() -> PlanTarget.in(file.resolve("out"), IfThere.KEEP))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("nothing was planned");
    }

    @Test
    void tryingOutLeavesNothingBehind() {
        PlanTarget.in(folder, IfThere.KEEP);
        assertThat(folder).isEmptyDirectory();
    }
}

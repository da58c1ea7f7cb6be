package freshfurrow.app.output;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.refusal.OutputRefusal.Obstructed;
import freshfurrow.app.refusal.OutputRefusal.Obstruction;
import freshfurrow.app.refusal.OutputRefusal.Unwritable;
import freshfurrow.app.refusal.OutputRefusal.Unwritten;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.plan.PlanFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlanTargetTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aFolderThatIsMissingIsMadeOnlyWhenThePlanIsWritten() throws Exception {
        Path deep = folder.resolve("a").resolve("b");
        PlanTarget target = PlanTarget.in(deep, IfThere.KEEP, false);
        assertThat(folder.resolve("a")).doesNotExist();
        target.write(PlanFile.toJson(ExamplePlan.plan()), Optional.empty());
        assertThat(PlanFile.read(deep.resolve("plan.json"))).isEqualTo(ExamplePlan.plan());
    }

    @Test
    void aPlanThatIsThereIsNotReplacedUnasked() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "mine");
        assertThat(Refusals.of(() -> PlanTarget.in(folder, IfThere.KEEP, false)))
                .isEqualTo(obstructed(folder.resolve("plan.json"), Obstacle.THERE, Unwritten.PLANNING));
        assertThat(folder.resolve("plan.json")).hasContent("mine");
    }

    @Test
    void aPageThatIsThereIsNotReplacedUnaskedEither() throws IOException {
        Files.writeString(folder.resolve("plan.html"), "mine");
        assertThat(Refusals.of(() -> PlanTarget.in(folder, IfThere.KEEP, true)))
                .isEqualTo(obstructed(folder.resolve("plan.html"), Obstacle.THERE, Unwritten.PLANNING));
        PlanTarget.in(folder, IfThere.KEEP, false);
    }

    @Test
    void aPlanThatIsThereIsReplacedWhenForced() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "mine");
        PlanTarget.in(folder, IfThere.REPLACE, false).write(PlanFile.toJson(ExamplePlan.plan()), Optional.empty());
        assertThat(Files.readString(folder.resolve("plan.json"))).isEqualTo(PlanFile.toJson(ExamplePlan.plan()));
    }

    @Test
    void aPlanThatIsReplacedKeepsItsMode() throws IOException {
        Path plan = Files.writeString(folder.resolve("plan.json"), "mine");
        Files.setPosixFilePermissions(plan, PosixFilePermissions.fromString("rw-------"));
        PlanTarget.in(folder, IfThere.REPLACE, false).write("new", Optional.of("page"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(plan)))
                .isEqualTo("rw-------");
    }

    @Test
    void ofTwoPlansAtOnceIntoOneNewFolderTheSecondDoesNotReplaceTheFirst() {
        PlanTarget first = PlanTarget.in(folder.resolve("new"), IfThere.KEEP, true);
        PlanTarget second = PlanTarget.in(folder.resolve("new"), IfThere.KEEP, true);
        first.write("first", Optional.of("first page"));

        assertThat(Refusals.of(() -> second.write("second", Optional.of("second page"))))
                .isEqualTo(obstructed(folder.resolve("new").resolve("plan.json"), Obstacle.THERE, Unwritten.PLAN));

        assertThat(folder.resolve("new").resolve("plan.json")).hasContent("first");
        assertThat(folder.resolve("new").resolve("plan.html")).hasContent("first page");
    }

    @Test
    void aPlanIsNotWrittenWithoutItsPage() throws IOException {
        PlanTarget target = PlanTarget.in(folder, IfThere.KEEP, true);
        Files.createDirectory(folder.resolve("plan.html"));
        assertThat(Refusals.of(() -> target.write("plan", Optional.of("page"))))
                .isEqualTo(obstructed(folder.resolve("plan.html"), Obstacle.NO_ORDINARY_FILE, Unwritten.PLAN));
        assertThat(folder.resolve("plan.json")).doesNotExist();
    }

    @Test
    void aFileWhereTheFolderShouldBeIsRefusedBeforePlanning() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        assertThat(Refusals.of(() -> PlanTarget.in(file.resolve("out"), IfThere.KEEP, false)))
                .isInstanceOfSatisfying(Unwritable.class, refusal -> {
                    assertThat(refusal.path()).isEqualTo(file.resolve("out"));
                    assertThat(refusal.unwritten()).isEqualTo(Unwritten.PLANNING);
                });
    }

    @Test
    void tryingOutLeavesNothingBehind() {
        PlanTarget.in(folder, IfThere.KEEP, false);
        assertThat(folder).isEmptyDirectory();
    }

    private static Obstructed obstructed(Path file, Obstacle obstacle, Unwritten unwritten) {
        return new Obstructed(List.of(new Obstruction(file, obstacle)), unwritten);
    }
}

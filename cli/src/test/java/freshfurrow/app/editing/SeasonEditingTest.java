package freshfurrow.app.editing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.app.editing.EditAnswer.ChangedMeanwhile;
import freshfurrow.app.editing.EditAnswer.Saved;
import freshfurrow.app.refusal.EditRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.model.edit.Edit;
import freshfurrow.model.edit.Value;
import freshfurrow.model.files.Obstacle;
import freshfurrow.model.read.Problem;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SeasonEditingTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");

    @TempDir
    private Path folder = Path.of("");

    private Path file = Path.of("");
    private Path fields = Path.of("");
    private SeasonEditing editing = new SeasonEditing(Path.of(""));

    @BeforeEach
    void writeSeason() throws IOException {
        file = Files.copy(
                SCENARIO.resolve("season.yaml"), folder.resolve("season.yaml"), StandardCopyOption.REPLACE_EXISTING);
        fields = Files.copy(
                SCENARIO.resolve("fields.csv"), folder.resolve("fields.csv"), StandardCopyOption.REPLACE_EXISTING);
        editing = new SeasonEditing(folder);
    }

    @Test
    void theDraftSaysWhatIsWrittenAndThatItIsRight() {
        Draft draft = editing.draft();
        assertThat(draft.problems()).isEmpty();
        assertThat(draft.reading()).isInstanceOf(Reading.Valid.class);
        assertThat(draft.digests().keySet()).containsExactly("season.yaml", "fields.csv");
        assertThat(draft.tree()).containsEntry("closed", List.of("SUNDAY"));
        assertThat(((Map<?, ?>) draft.tree().get("fields")).get("N80").toString())
                .startsWith("{name=North eighty, area=80 ac,");
        assertThat(draft.fieldLines()).containsEntry("N80", 2).containsEntry("S110", 3);
    }

    @Test
    void aDraftIsThatOfNowWheneverAFileWasChangedElsewhere() throws IOException {
        Draft first = editing.draft();
        String before = Files.readString(fields);
        Files.writeString(fields, before.replace(",80,", ",81,"));
        Draft changed = editing.draft();
        assertThat(((Map<?, ?>) changed.tree().get("fields")).get("N80").toString())
                .startsWith("{name=North eighty, area=81 ac,");
        assertThat(changed.digests()).isNotEqualTo(first.digests());
        Files.delete(fields);
        assertThat(editing.draft().problems()).isNotEmpty();
        Files.writeString(fields, before);
        assertThat(editing.draft()).isEqualTo(first);
    }

    @Test
    void editsOfSeveralFilesAreSavedTogether() throws IOException {
        String season = Files.readString(file);
        String table = Files.readString(fields);
        Draft draft = saved(set("rigs.R1.drum", "60 gal"), set("fields.N80.area", "85 ac"));
        Season read = ((Reading.Valid) draft.reading()).season();
        // 60 gal are 227.1 L, 85 ac 34.40 ha
        assertThat(read.rigs().get(0).drumL()).isCloseTo(227.1, within(0.05));
        assertThat(read.fields().get(0).areaHa()).isCloseTo(34.40, within(0.005));
        assertThat(file).hasContent(season.replace("drum: 50 gal", "drum: 60 gal"));
        assertThat(fields).hasContent(table.replace("N80,North eighty,80", "N80,North eighty,85"));
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("season.yaml", "fields.csv");
    }

    @Test
    void aHalfMadeSeasonIsSavedAndItsProblemsStandBesideTheirValues() {
        Draft draft = saved(set("rigs.R2.drum", "a lot"));
        assertThat(draft.problems().stream().map(Problem::path)).contains("rigs.R2.drum", "rigs.R2.batchCompost");
        assertThat(draft.problems().get(0).file()).isEqualTo("season.yaml");
        assertThat(draft.problems().get(0).line()).hasValue(19);
    }

    @Test
    void aFileThatIsNoTreeGivesItsProblemAndAnEmptyTree() throws IOException {
        Files.writeString(file, "season: {name: [\n");
        Draft draft = editing.draft();
        assertThat(draft.tree()).isEmpty();
        assertThat(draft.problems()).singleElement().extracting(Problem::file).isEqualTo("season.yaml");
        assertThat(Refusals.of(() -> editing.apply(List.of(set("hours", "x")), draft.digests())))
                .isInstanceOf(EditRefusal.NotByPosition.class);
        Files.delete(file);
        assertThat(editing.draft().problems()).hasSize(1);
        assertThat(Refusals.of(() -> editing.apply(List.of(set("hours", "x")), Map.of())))
                .isInstanceOf(EditRefusal.NotByPosition.class);
    }

    @Test
    void aFileThatWasChangedMeanwhileIsNotOverwrittenAndBothTextsAreShown() throws IOException {
        Draft draft = editing.draft();
        String before = Files.readString(file);
        String other = before.replace("nurseTank: 1200", "nurseTank: 1300");
        Files.writeString(file, other);
        EditAnswer answer = editing.apply(List.of(set("rigs.R1.drum", "60 gal")), draft.digests());
        assertThat(answer)
                .isEqualTo(new ChangedMeanwhile(
                        "season.yaml",
                        Optional.of(other),
                        Optional.of(before.replace("drum: 50 gal", "drum: 60 gal"))));
        assertThat(file).hasContent(other);
        assertThat(editing.apply(
                        List.of(set("rigs.R1.drum", "60 gal")), editing.draft().digests()))
                .isInstanceOf(Saved.class);
        assertThat(file).hasContent(other.replace("drum: 50 gal", "drum: 60 gal"));
    }

    @Test
    void aFileThatTheEditIsNotForCountsToo() throws IOException {
        Draft draft = editing.draft();
        Files.writeString(fields, Files.readString(fields) + "\n");
        EditAnswer answer = editing.apply(List.of(set("rigs.R1.drum", "60 gal")), draft.digests());
        assertThat(answer)
                .isInstanceOf(ChangedMeanwhile.class)
                .extracting("file")
                .isEqualTo("fields.csv");
    }

    @Test
    void aFileThatWasDeletedMeanwhileIsTold() throws IOException {
        Draft draft = editing.draft();
        String table = Files.readString(fields);
        Files.delete(fields);
        assertThat(editing.apply(List.of(set("fields.N80.area", "85 ac")), draft.digests()))
                .isEqualTo(new ChangedMeanwhile(
                        "fields.csv", Optional.empty(), Optional.of(table.replace("eighty,80", "eighty,85"))));
        Files.delete(file);
        assertThat(editing.apply(List.of(set("hours", "x")), draft.digests()))
                .isInstanceOfSatisfying(ChangedMeanwhile.class, changed -> {
                    assertThat(changed.file()).isEqualTo("season.yaml");
                    assertThat(changed.onDisk()).isEmpty();
                });
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whoHasSeenNothingChangesNothing() {
        assertThat(editing.apply(List.of(set("hours", "x")), Map.of()))
                .isInstanceOfSatisfying(ChangedMeanwhile.class, changed -> assertThat(changed.asEdited())
                        .isEmpty());
        Map<String, String> madeUp = Map.of("season.yaml", "0", "fields.csv", "0", "../../etc/passwd", "0");
        assertThat(editing.apply(List.of(set("hours", "x")), madeUp)).isInstanceOf(ChangedMeanwhile.class);
    }

    @Test
    void ofSeveralEditsAllAreMadeOrNone() throws IOException {
        String before = Files.readString(file);
        Draft draft = editing.draft();
        List<Edit> edits = List.of(set("rigs.R1.drum", "60 gal"), new Edit.Remove(List.of("rigs", "R9")));
        assertThat(Refusals.of(() -> editing.apply(edits, draft.digests())))
                .isInstanceOfSatisfying(EditRefusal.NotByPosition.class, refusal -> assertThat(refusal.problem())
                        .hasToString("season.yaml:16: rigs: has no R9; look at the season as it is now"));
        assertThat(file).hasContent(before);
    }

    @Test
    void undoingAndRedoingRestoreTheFilesToTheByte() throws IOException {
        byte[] season = Files.readAllBytes(file);
        byte[] table = Files.readAllBytes(fields);
        saved(set("rigs.R1.drum", "60 gal"), set("fields.N80.area", "85 ac"));
        byte[] edited = Files.readAllBytes(file);
        saved(new Edit.Remove(List.of("rain")));
        byte[] twice = Files.readAllBytes(file);

        assertThat(editing.undo()).isInstanceOf(Saved.class);
        assertThat(file).hasBinaryContent(edited);
        assertThat(editing.undo()).isInstanceOf(Saved.class);
        assertThat(file).hasBinaryContent(season);
        assertThat(fields).hasBinaryContent(table);
        assertThat(Refusals.of(editing::undo)).isEqualTo(new EditRefusal.NothingToUndo());

        assertThat(editing.redo()).isInstanceOf(Saved.class);
        assertThat(editing.redo()).isInstanceOf(Saved.class);
        assertThat(file).hasBinaryContent(twice);
        assertThat(Refusals.of(editing::redo)).isEqualTo(new EditRefusal.NothingToRedo());
        editing.undo();
        saved(set("hours", "07:00/12:00"));
        assertThat(Refusals.of(editing::redo)).isEqualTo(new EditRefusal.NothingToRedo());
    }

    @Test
    void whatAnotherProgramWroteIsNotUndone() throws IOException {
        String before = Files.readString(file);
        saved(set("rigs.R1.drum", "60 gal"));
        String other = Files.readString(file) + "# mine\n";
        Files.writeString(file, other);
        assertThat(editing.undo())
                .isEqualTo(new ChangedMeanwhile("season.yaml", Optional.of(other), Optional.of(before)));
        assertThat(file).hasContent(other);
    }

    @Test
    void aFileKeepsItsModeAndALinkIsNotFollowed() throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        saved(set("rigs.R1.drum", "60 gal"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");

        Path real = Files.move(file, folder.resolve("real.yaml"));
        Files.createSymbolicLink(file, real);
        Draft draft = editing.draft();
        assertThat(Refusals.of(() -> editing.apply(List.of(set("rigs.R1.drum", "50 gal")), draft.digests())))
                .isInstanceOfSatisfying(EditRefusal.ObstructedSeason.class, refusal -> assertThat(refusal.obstacle())
                        .isEqualTo(Obstacle.LINK));
    }

    private Draft saved(Edit... edits) {
        EditAnswer answer = editing.apply(List.of(edits), editing.draft().digests());
        assertThat(answer).isInstanceOf(Saved.class);
        return ((Saved) answer).draft();
    }

    private static Edit set(String path, String text) {
        return new Edit.Set(List.of(path.split("\\.", -1)), Value.of(text));
    }
}

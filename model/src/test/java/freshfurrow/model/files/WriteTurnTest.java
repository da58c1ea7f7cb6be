package freshfurrow.model.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WriteTurnTest {
    @TempDir
    private Path folder;

    @Test
    void aFileIsWrittenAndNothingElseIsLeftInItsFolder() throws IOException {
        Path file = folder.resolve("plan.json");
        WriteTurn.writeAll(List.of(NewFile.of(file, "größer\n", IfThere.KEEP)));
        assertThat(file).hasContent("größer\n");
        assertThat(names(folder)).containsExactly("plan.json");
    }

    @Test
    void aFileThatIsThereStaysUnlessItsReplacementWasAskedFor() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "mine, and longer than the new one");

        assertObstructed(Obstacle.THERE, NewFile.of(file, "new", IfThere.KEEP));
        assertThat(file).hasContent("mine, and longer than the new one");

        WriteTurn.writeAll(List.of(NewFile.of(file, "new", IfThere.REPLACE)));
        assertThat(file).hasContent("new");
        assertThat(names(folder)).containsExactly("plan.json");
    }

    @Test
    void whatNobodySawIsNotReplacedAndNeitherIsWhatBelongsToIt() throws IOException {
        Path first = Files.writeString(folder.resolve("season.yaml"), "seen");
        Path second = Files.writeString(folder.resolve("fields.csv"), "of somebody else");
        byte[] seen = "seen".getBytes(StandardCharsets.UTF_8);
        byte[] content = "new".getBytes(StandardCharsets.UTF_8);
        List<NewFile> both = List.of(NewFile.inPlaceOf(seen, first, content), NewFile.inPlaceOf(seen, second, content));

        assertThatThrownBy(() -> WriteTurn.writeAll(both)).isInstanceOf(ChangedFile.class);
        assertThat(first).hasContent("seen");
        assertThat(second).hasContent("of somebody else");

        Files.delete(second);
        assertThatThrownBy(() -> WriteTurn.writeAll(both)).isInstanceOf(ChangedFile.class);
        assertThat(names(folder)).containsExactly("season.yaml");

        Files.writeString(second, "seen");
        WriteTurn.writeAll(both);
        assertThat(first).hasContent("new");
        assertThat(second).hasContent("new");
    }

    @Test
    void missingFoldersAreMade() throws IOException {
        Path file = folder.resolve("a").resolve("b").resolve("plan.json");
        WriteTurn.writeAll(List.of(NewFile.of(file, "text", IfThere.KEEP)));
        assertThat(file).hasContent("text");
    }

    @Test
    void foldersThatNothingCameIntoAreTakenAwayAgain() {
        Path deep = folder.resolve("a").resolve("b");
        assertThatIOException()
                .isThrownBy(() -> WriteTurn.in(List.of(deep), WriteTurn.PATIENCE, turn -> {
                    assertThat(deep).isDirectory();
                    throw new IOException("no");
                }));
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "r--------", "rw-rw-r--", "rwxr-x--x"})
    void aFileThatIsReplacedKeepsItsMode(String mode) throws IOException {
        Path file = Files.createFile(folder.resolve("plan.json"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));

        WriteTurn.writeAll(List.of(NewFile.of(file, "new", IfThere.REPLACE)));

        assertThat(file).hasContent("new");
        assertThat(mode(file)).isEqualTo(mode);
    }

    @Test
    void aNewFileHasTheModeThatFilesUsuallyHaveThere() throws IOException {
        Path usual = Files.createFile(folder.resolve("usual"));
        Path file = folder.resolve("plan.json");
        WriteTurn.writeAll(List.of(NewFile.of(file, "new", IfThere.KEEP)));
        assertThat(mode(file)).isEqualTo(mode(usual));
    }

    @ParameterizedTest
    @EnumSource(IfThere.class)
    void aLinkIsNotFollowedEvenWhenItLeadsNowhere(IfThere ifThere) throws IOException {
        Path real = Files.writeString(folder.resolve("real.json"), "mine");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
        Path loose = Files.createSymbolicLink(folder.resolve("loose.json"), folder.resolve("none.json"));

        assertObstructed(Obstacle.LINK, NewFile.of(link, "new", ifThere));
        assertObstructed(Obstacle.LINK, NewFile.of(loose, "new", ifThere));

        assertThat(real).hasContent("mine");
        assertThat(link).isSymbolicLink();
        assertThat(names(folder)).containsExactlyInAnyOrder("real.json", "link.json", "loose.json");
    }

    @Test
    void onlyOrdinaryFilesAreReplaced() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        Path full =
                Files.createDirectories(folder.resolve("full").resolve("of")).getParent();

        assertObstructed(Obstacle.NO_ORDINARY_FILE, NewFile.of(pipe, "new", IfThere.REPLACE));
        assertObstructed(Obstacle.NO_ORDINARY_FILE, NewFile.of(full, "new", IfThere.REPLACE));

        assertThat(names(folder)).containsExactlyInAnyOrder("pipe", "full");
    }

    @Test
    void aDeviceIsNoOrdinaryFile() {
        assertThat(Obstacle.before(Path.of("/dev/null"), IfThere.REPLACE)).contains(Obstacle.NO_ORDINARY_FILE);
    }

    @Test
    void noFileIsWrittenWhenOneOfThemCannotBe() throws IOException {
        Path first = Files.writeString(folder.resolve("first"), "mine");
        Path third = Files.createDirectory(folder.resolve("third"));

        assertObstructed(
                Obstacle.NO_ORDINARY_FILE,
                NewFile.of(first, "new", IfThere.REPLACE),
                NewFile.of(folder.resolve("second"), "new", IfThere.REPLACE),
                NewFile.of(third, "new", IfThere.REPLACE));

        assertThat(first).hasContent("mine");
        assertThat(names(folder)).containsExactlyInAnyOrder("first", "third");
    }

    @Test
    void whatWasRenamedBeforeARenameFailedIsPutBack() throws IOException {
        Path first = Files.writeString(folder.resolve("first"), "mine");
        Files.setPosixFilePermissions(first, PosixFilePermissions.fromString("r--r-----"));
        Path twice = folder.resolve("twice");

        // Both are free when looked at; the second rename finds what the first has put there.
        assertObstructed(
                Obstacle.THERE,
                NewFile.of(first, "new", IfThere.REPLACE),
                NewFile.of(twice, "new", IfThere.KEEP),
                NewFile.of(twice, "newer", IfThere.KEEP));

        assertThat(first).hasContent("mine");
        assertThat(mode(first)).isEqualTo("r--r-----");
        assertThat(names(folder)).containsExactly("first");
    }

    @Test
    void aNameTooLongForTheDiskChangesNothing() throws IOException {
        Path first = Files.writeString(folder.resolve("first"), "mine");
        assertThatIOException()
                .isThrownBy(() -> WriteTurn.writeAll(List.of(
                        NewFile.of(first, "new", IfThere.REPLACE),
                        NewFile.of(folder.resolve("x".repeat(300)), "new", IfThere.KEEP))));
        assertThat(first).hasContent("mine");
        assertThat(names(folder)).containsExactly("first");
    }

    @Test
    void aTurnThatDoesNotComeIsSaid() {
        assertThatIOException()
                .isThrownBy(() -> WriteTurn.in(
                        List.of(folder),
                        WriteTurn.PATIENCE,
                        turn -> WriteTurn.in(List.of(folder), Duration.ofMillis(30), inner -> "never")))
                .withMessage("another program has been writing there for 30 ms");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aFileOfTheUsersWithTheNameOfTheLockIsLeftAlone() throws IOException {
        Path mine = Files.writeString(folder.resolve(FolderLock.NAME), "my notes");
        assertThatIOException()
                .isThrownBy(() -> WriteTurn.writeAll(List.of(NewFile.of(folder.resolve("a"), "new", IfThere.KEEP))))
                .withMessageContaining("is no lock of freshfurrow");
        assertThat(mine).hasContent("my notes");
        assertThat(names(folder)).containsExactly(FolderLock.NAME);
    }

    @Test
    void aLockThatIsALinkIsNotFollowed() throws IOException {
        Path elsewhere = folder.resolve("elsewhere");
        Files.createSymbolicLink(folder.resolve(FolderLock.NAME), elsewhere);
        assertThatIOException()
                .isThrownBy(() -> WriteTurn.writeAll(List.of(NewFile.of(folder.resolve("a"), "new", IfThere.KEEP))));
        assertThat(elsewhere).doesNotExist();
    }

    private static void assertObstructed(Obstacle obstacle, NewFile... files) {
        assertThatThrownBy(() -> WriteTurn.writeAll(List.of(files)))
                .isInstanceOfSatisfying(ObstructedFile.class, failure -> assertThat(failure.obstacle())
                        .isEqualTo(obstacle));
    }

    private static String mode(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static String[] names(Path folder) {
        return folder.toFile().list();
    }
}

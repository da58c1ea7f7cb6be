package freshfurrow.app.seasons;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refusals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SeasonListTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aFolderHasEverySeasonAtAnyDepthInTheOrderOfTheirPaths() throws IOException {
        for (String farm : List.of("west", "east/upper", "east")) {
            season(farm + "/season.yaml");
        }
        season("east/notes.yaml");

        assertThat(paths(folder))
                .containsExactly(at("east/season.yaml"), at("east/upper/season.yaml"), at("west/season.yaml"));
    }

    @Test
    void aFileListsSeasonsAsSeenFromItsFolder() throws IOException {
        Path list = Files.writeString(at("farms.txt"), "# ours\nwest\n\n  east/2027.yaml  \nmissing\n");

        assertThat(paths(list)).containsExactly(at("west"), at("east/2027.yaml"), at("missing"));
    }

    @Test
    void seasonsWhosePlansWouldBeOneAreRefused() throws IOException {
        season("west/season.yaml");
        season("west/late.yaml");
        Path list = Files.writeString(at("farms.txt"), "west\neast\nwest/../west/late.yaml\n");

        assertThat(problems(list)).singleElement().asString().contains("farms.txt: ", "late.yaml share a folder");
    }

    @Test
    void whatHasNoSeasonIsRefused() throws IOException {
        assertThat(problems(folder)).singleElement().asString().contains("there is no season in it");
        assertThat(problems(Files.writeString(at("empty.txt"), "# none\n"))).hasSize(1);
        assertThat(problems(at("missing.txt"))).singleElement().asString().contains("missing.txt: ");
        assertThat(problems(Files.write(at("picture"), new byte[] {(byte) 0xff, (byte) 0xd8})))
                .hasSize(1);
    }

    private static List<Path> paths(Path list) {
        return SeasonList.of(list).seasons().stream()
                .map(season -> season.path())
                .toList();
    }

    private static List<String> problems(Path list) {
        InputRefusal.ProblemsFound found = (InputRefusal.ProblemsFound) Refusals.of(() -> SeasonList.of(list));
        return found.problems().stream().map(String::valueOf).toList();
    }

    private void season(String file) throws IOException {
        Files.createDirectories(at(file).getParent());
        Files.writeString(at(file), "");
    }

    private Path at(String path) {
        return folder.resolve(path);
    }
}

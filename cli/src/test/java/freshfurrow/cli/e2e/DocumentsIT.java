package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.CopiedFolder;
import freshfurrow.cli.documents.Document;
import java.nio.file.Path;
import java.util.Collection;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What documents show is what the program does: each command line of each document, one after the other, in a folder that has the
 * scenarios. Where a document shows no output, the command only has to succeed, and searches no longer than it takes to see that.
 */
final class DocumentsIT {
    @TempDir
    private Path folder = Path.of("");

    static Collection<Document> documents() {
        return Document.all().stream()
                .filter(document -> !Shown.in(document).isEmpty())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void whatADocumentShowsIsReal(Document document) throws Exception {
        CopiedFolder.of(Launcher.projectFolder().resolve("scenarios"), folder.resolve("scenarios"));

        ShownRun run = new ShownRun(folder);
        for (Shown shown : Shown.in(document)) {
            Launcher.Result result = run.run(shown.printed().isPresent() ? shown.line() : quick(shown.line()));
            assertThat(result.exitCode())
                    .as("%s: %s", shown.line(), result.all())
                    .isZero();
            String all = result.all().replace("\ufeff", "").replace("\r\n", "\n");
            if (!shown.isLike(all)) {
                assertThat(all).as(shown.line()).isEqualTo(shown.printed().orElse(""));
            }
        }
    }

    /** The same command line with next to no search, and few springs. */
    private static String quick(String line) {
        String limited =
                line.replaceAll(" --(time|steps) \\S+", "").replaceFirst("--springs (\\d+)-\\d+", "--springs $1-$1");
        return switch (line.replaceFirst("\\S*freshfurrow (\\S+).*", "$1")) {
            case "plan", "replan" -> limited + " --steps 100";
            case "seasons" -> limited + (limited.contains("--slice") ? "" : " --slice 1/6") + " --steps 100";
            case "compare", "supply" ->
                limited.contains("--merge")
                        ? line
                        : limited + (limited.contains("--springs") ? "" : " --springs 1-2") + " --steps 0";
            case "desk" -> line + " --no-browser";
            default -> line;
        };
    }
}

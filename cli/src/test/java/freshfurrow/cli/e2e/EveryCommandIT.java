package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What tests find that run commands in their own process holds for the command that people run. */
final class EveryCommandIT {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void everyCommandDoesTheSameInAProcessOfItsOwn() throws Exception {
        Map<String, String> alone = EveryCommand.printedAndWritten(Launcher::run, folder.resolve("alone"));

        Map<String, String> here = EveryCommand.printedAndWritten(InProcess::run, folder.resolve("here"));

        assertThat(here).containsOnlyKeys(alone.keySet());
        alone.forEach((what, text) -> assertThat(here.get(what)).as(what).isEqualTo(text));
    }

    @Test
    void noCommandIsLeftOut() {
        String help = InProcess.run("--help").out();
        List<String> commands = Pattern.compile("(?m)^  ([a-z]+) {2,}")
                .matcher(help.substring(help.indexOf("Commands:"), help.indexOf("Exit codes:")))
                .results()
                .map(command -> command.group(1))
                .toList();

        assertThat(commands).contains("check", "completion");
        assertThat(EveryCommand.names()).containsAll(commands);
    }
}

package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.command.Freshfurrow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Pages of seasons, made by the real command with the lists of fields that a search would begin with. */
final class Pages {
    private Pages() {}

    static Path ofScenario(String name, Path out) {
        return of(Path.of("..", "scenarios", name), out);
    }

    /** @param season a season file or its folder */
    static Path of(Path season, Path out) {
        return of(List.of(season.toString()), out);
    }

    /** @param patch a JSON merge patch of its season file */
    static Path ofScenario(String name, String patch, Path out) throws IOException {
        Path variant = Files.writeString(out.resolve("variant.json"), patch);
        return of(List.of(Path.of("..", "scenarios", name).toString(), "--variant", variant.toString()), out);
    }

    private static Path of(List<String> season, Path out) {
        List<String> words = new ArrayList<>(List.of("plan"));
        words.addAll(season);
        words.addAll(List.of("--steps", "0", "--out", out.toString()));
        assertThat(Freshfurrow.run(words.toArray(String[]::new))).isZero();
        return out.resolve("plan.html");
    }
}

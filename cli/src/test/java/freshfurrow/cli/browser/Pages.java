package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.command.Freshfurrow;
import java.nio.file.Path;

/** Pages of seasons, made by the real command with the lists of fields that a search would begin with. */
final class Pages {
    private Pages() {}

    static Path ofScenario(String name, Path out) {
        return of(Path.of("..", "scenarios", name), out);
    }

    /** @param season a season file or its folder */
    static Path of(Path season, Path out) {
        assertThat(Freshfurrow.run("plan", season.toString(), "--steps", "0", "--out", out.toString()))
                .isZero();
        return out.resolve("plan.html");
    }
}

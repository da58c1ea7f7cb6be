package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Learning from a log with the real command. */
final class LearnIT {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aPlanTakesTheVariant() throws Exception {
        Path variant = folder.resolve("learned.yaml");
        InProcess.run(fromLog("--out", variant.toString()));

        Launcher.Result plan = InProcess.run(
                "plan",
                Launcher.scenario("metric"),
                "--variant",
                variant.toString(),
                "--steps",
                "0",
                "--no-page",
                "--out",
                folder.resolve("plan").toString());

        assertThat(plan.err()).isEmpty();
        assertThat(plan.exitCode()).isZero();
    }

    @Test
    void aFileThatIsThereIsReplacedOnlyWhenThatIsSaid() throws Exception {
        Path variant = folder.resolve("learned.yaml");
        Files.writeString(variant, "mine");

        Launcher.Result refused = InProcess.run(fromLog("--out", variant.toString()));

        assertThat(refused.exitCode()).isEqualTo(1);
        assertThat(refused.err()).contains(variant.toString(), "--force");
        assertThat(variant).hasContent("mine");
        assertThat(InProcess.run(fromLog("--out", variant.toString(), "--force"))
                        .exitCode())
                .isZero();
        assertThat(variant).content().contains("rigs:\n  R1: {batchTime: ");
    }

    @Test
    void whereNothingDiffersNoVariantIsWritten() throws Exception {
        SeasonOnDisk.in(folder);
        Path variant = folder.resolve("learned.yaml");

        Launcher.Result result = InProcess.run("learn", folder.toString(), "--out", variant.toString());

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).contains("too few").contains("No figure of the season file differs");
        assertThat(result.err()).contains("nothing differs from the season file by more than chance");
        assertThat(variant).doesNotExist();
    }

    /**
     * A plan, a day of it taken as planned, rain, a replan, and a day that people timed: what was taken from the plan teaches nothing, loads of
     * both plans are known, and a season file that was changed since does not matter.
     */
    @Test
    void aReplanAndAChangedSeasonInBetweenDoNotMatter() throws Exception {
        SeasonOnDisk.in(folder);
        run("plan", "--steps", "50", "--no-page");
        run("log", "asplanned", "--until", "2027-04-20T20:00");
        run(
                "replan",
                "--plan",
                folder.resolve("plan").toString(),
                "--rain",
                "2027-04-21T06:00=0.3in",
                "--steps",
                "50",
                "--no-page");
        String[] batch = {
            "log", "batch", "R1", "--lot", "windrow", "--compost", "30lb", "--load", "M1", "--took", "17min"
        };
        run(with(batch, "--at", "2027-04-24T09:00"));
        run(with(batch, "--at", "2027-04-24T10:00"));
        run("log", "void", "1", "--because", "not so", "--at", "2027-04-24T11:00");
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("cleanTime: 3 min", "cleanTime: 4 min"));

        String learned = run("learn");

        assertThat(learned)
                .containsPattern("R1 batch time +15 min .* 2 on 1 day +too few")
                .contains("1 entry: void")
                .containsPattern("[1-9][0-9]* entries: nobody said how long it took");
    }

    /** Runs a command on the season, which is its first argument, and of log its second. */
    private String run(String... arguments) throws Exception {
        List<String> words = new ArrayList<>(List.of(arguments));
        words.add(1, folder.toString());
        Launcher.Result result = InProcess.run(words.toArray(String[]::new));
        assertThat(result.err()).isEmpty();
        assertThat(result.exitCode()).isZero();
        return result.out();
    }

    private static String[] with(String[] arguments, String... more) {
        return Stream.concat(Stream.of(arguments), Stream.of(more)).toArray(String[]::new);
    }

    private static String[] fromLog(String... more) {
        String season = Launcher.scenario("metric");
        return with(new String[] {"learn", season, "--log", season + "/timed-log.csv"}, more);
    }
}

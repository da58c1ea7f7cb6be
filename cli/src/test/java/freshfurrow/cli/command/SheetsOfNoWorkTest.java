package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SheetsOfNoWorkTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aPlanWithoutWorkHasNoSheetsWhichIsSaidAndNoMistake() throws Exception {
        Files.writeString(folder.resolve("plan.json"), PlanFile.toJson(planWithoutWork()));
        PrintStream out = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        int exitCode;
        try {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            exitCode = Freshfurrow.run("sheets", folder.toString());
        } finally {
            System.setOut(out);
        }

        assertThat(exitCode).isZero();
        assertThat(printed.toString(StandardCharsets.UTF_8).strip())
                .isEqualTo("The plan has no work on any day, so there are no sheets to write.");
        assertThat(folder.toFile().list()).containsExactly("plan.json");
    }

    /** No planter has a field on its list. */
    private static Plan planWithoutWork() {
        Path file = Path.of("..", "scenarios", "first-season");
        Reading.Valid read = (Reading.Valid) SeasonFiles.read(file, List.of());
        Season season = read.season();
        List<List<String>> lists =
                season.applicators().stream().map(planter -> List.<String>of()).toList();
        return PlanRecorder.record(
                CompiledSeason.of(season), lists, Plan.SeasonSource.of(season, read.file(), read.sha256()));
    }
}

package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

final class SeasonOfPlanTest {
    private static final Path SCENARIO = Path.of("../scenarios/spring");
    private static final String VARIANT = "two-rigs.yaml";

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void copySeason() throws IOException {
        for (String name : List.of("season.yaml", "fields.csv", VARIANT)) {
            Files.copy(SCENARIO.resolve(name), folder.resolve(name));
        }
    }

    @Test
    void aSeasonIsFoundBesideItsPlan() {
        assertThat(seasonOf().read(folder.resolve("plan.json"), planOf()).rigs())
                .hasSize(1);
    }

    @Test
    void aSeasonIsFoundInTheFolderAboveItsPlan() {
        Path plan = folder.resolve("plan").resolve("plan.json");
        assertThat(seasonOf().read(plan, planOf()).rigs()).hasSize(1);
    }

    @Test
    void aSeasonElsewhereIsNamed() {
        Path plan = folder.resolve("far").resolve("away").resolve("plan.json");
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> seasonOf().read(plan, planOf()))
                .withMessageContainingAll("plan.json: its season is not there", "season.yaml nor ", "--season SEASON");
        assertThat(seasonOf("--season", folder.toString()).read(plan, planOf()).rigs())
                .hasSize(1);
    }

    @Test
    void aLinkThatLeadsOutOfItsFolderIsNotFollowed(@TempDir Path elsewhere) throws IOException {
        Path season = folder.resolve("season.yaml");
        Files.move(season, elsewhere.resolve("season.yaml"));
        Files.createSymbolicLink(season, elsewhere.resolve("season.yaml"));
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> seasonOf().read(folder.resolve("plan.json"), planOf()))
                .withMessageContainingAll("its season is not there", "--season SEASON");
    }

    @Test
    void aPlanOfAVariantNeedsTheVariant() {
        Path plan = folder.resolve("plan.json");
        Plan varied = planOf(folder.resolve(VARIANT));
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> seasonOf().read(plan, varied))
                .withMessageContainingAll("this is not what", "plan.json was made from", "--variant FILE")
                .satisfies(refusal -> assertThat(refusal.lines()).hasSize(1));
        assertThat(seasonOf("--variant", folder.resolve(VARIANT).toString())
                        .read(plan, varied)
                        .rigs())
                .hasSize(2);
    }

    @Test
    void aSeasonThatHasChangedSinceIsRefused() throws IOException {
        Plan plan = planOf();
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file) + "# a remark\n");
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> seasonOf().read(folder.resolve("plan.json"), plan))
                .withMessageContainingAll("season.yaml: this is not what", "make a new plan");
    }

    @Test
    void theProblemsOfASeasonAreToldAsTheyAre() throws IOException {
        Plan plan = planOf();
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("compost:", "kompost:"));
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> seasonOf().read(folder.resolve("plan.json"), plan))
                .withMessageContaining("kompost");
    }

    private static SeasonOfPlan seasonOf(String... options) {
        SeasonOfPlan season = new SeasonOfPlan();
        new CommandLine(CommandLine.Model.CommandSpec.create().addMixin("season", spec(season))).parseArgs(options);
        return season;
    }

    private static CommandLine.Model.CommandSpec spec(Object options) {
        return CommandLine.Model.CommandSpec.forAnnotatedObject(options);
    }

    /** A plan of the season in the folder that plants nothing. */
    private Plan planOf(Path... variants) {
        Reading.Valid read = (Reading.Valid) SeasonFiles.read(folder.resolve("season.yaml"), List.of(variants));
        return PlanRecorder.record(
                CompiledSeason.of(read.season()),
                read.season().planters().stream()
                        .map(planter -> List.<String>of())
                        .toList(),
                Plan.SeasonSource.of(read.season(), read.file(), read.sha256()));
    }
}

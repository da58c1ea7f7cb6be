package freshfurrow.app.input;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refusals;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
        assertThat(Refusals.of(() -> seasonOf().read(plan, planOf())))
                .isEqualTo(new InputRefusal.SeasonNotFound(
                        plan,
                        List.of(
                                plan.resolveSibling("season.yaml"),
                                folder.resolve("far").resolve("season.yaml"))));
        assertThat(new SeasonOfPlan(Optional.of(folder), List.of())
                        .read(plan, planOf())
                        .rigs())
                .hasSize(1);
    }

    @Test
    void aLinkThatLeadsOutOfItsFolderIsNotFollowed(@TempDir Path elsewhere) throws IOException {
        Path season = folder.resolve("season.yaml");
        Files.move(season, elsewhere.resolve("season.yaml"));
        Files.createSymbolicLink(season, elsewhere.resolve("season.yaml"));
        assertThat(Refusals.of(() -> seasonOf().read(folder.resolve("plan.json"), planOf())))
                .isInstanceOf(InputRefusal.SeasonNotFound.class);
    }

    @Test
    void aPlanOfAVariantNeedsTheVariant() {
        Path plan = folder.resolve("plan.json");
        Plan varied = planOf(folder.resolve(VARIANT));
        assertThat(Refusals.of(() -> seasonOf().read(plan, varied)))
                .isEqualTo(new InputRefusal.SeasonOfAnotherPlan(folder.resolve("season.yaml"), plan));
        assertThat(seasonOf(folder.resolve(VARIANT)).read(plan, varied).rigs()).hasSize(2);
    }

    @Test
    void aSeasonThatHasChangedSinceIsRefused() throws IOException {
        Plan plan = planOf();
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file) + "# a remark\n");
        assertThat(Refusals.of(() -> seasonOf().read(folder.resolve("plan.json"), plan)))
                .isEqualTo(new InputRefusal.SeasonOfAnotherPlan(file, folder.resolve("plan.json")));
    }

    @Test
    void theProblemsOfASeasonAreToldAsTheyAre() throws IOException {
        Plan plan = planOf();
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("compost:", "kompost:"));
        assertThat(Refusals.of(() -> seasonOf().read(folder.resolve("plan.json"), plan)))
                .isInstanceOfSatisfying(InputRefusal.ProblemsFound.class, found -> assertThat(found.problems())
                        .anySatisfy(problem -> assertThat(problem.path()).isEqualTo("kompost")));
    }

    private static SeasonOfPlan seasonOf(Path... variants) {
        return new SeasonOfPlan(Optional.empty(), List.of(variants));
    }

    /** A plan of the season in the folder that plants nothing. */
    private Plan planOf(Path... variants) {
        Reading.Valid read = (Reading.Valid) SeasonFiles.read(folder.resolve("season.yaml"), List.of(variants));
        return PlanRecorder.record(
                CompiledSeason.of(read.season()),
                read.season().applicators().stream()
                        .map(planter -> List.<String>of())
                        .toList(),
                Plan.SeasonSource.of(read.season(), read.file(), read.sha256()));
    }
}

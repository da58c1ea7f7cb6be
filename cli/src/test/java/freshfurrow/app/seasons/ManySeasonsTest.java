package freshfurrow.app.seasons;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.solver.PlanningOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ManySeasonsTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "first-season");
    private static final List<String> FARMS = List.of("adams", "burr", "crane");

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void copySeasons() throws IOException {
        for (String farm : FARMS) {
            Path there = Files.createDirectory(folder.resolve(farm));
            try (Stream<Path> files = Files.list(SCENARIO)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Files.copy(file, there.resolve(file.getFileName().toString()));
                }
            }
        }
    }

    @Test
    void aBadSeasonAmongGoodOnesIsToldOfAndTheOthersArePlanned() throws IOException {
        breakSeason("burr");

        List<SeasonOutcome> outcomes = plan(Slice.ALL, false);

        assertThat(outcomes)
                .extracting(SeasonOutcome::season)
                .containsExactly(season("adams"), season("burr"), season("crane"));
        assertThat(outcomes.get(0)).isInstanceOf(SeasonOutcome.Made.class);
        assertThat(outcomes.get(1))
                .isInstanceOfSatisfying(SeasonOutcome.NotPlanned.class, not -> assertThat(not.refusal())
                        .isInstanceOf(InputRefusal.ProblemsFound.class));
        assertThat(outcomes.get(2)).isInstanceOf(SeasonOutcome.Made.class);
        assertThat(planOf("adams")).isRegularFile();
        assertThat(planOf("burr")).doesNotExist();
        assertThat(planOf("crane")).isRegularFile().hasSameTextualContentAs(planOf("adams"));
    }

    @Test
    void slicesPlanEachSeasonOnce() {
        List<SeasonOutcome> first = plan(new Slice(1, 2), false);
        List<SeasonOutcome> second = plan(new Slice(2, 2), false);

        assertThat(first).extracting(SeasonOutcome::season).containsExactly(season("adams"), season("crane"));
        assertThat(second).extracting(SeasonOutcome::season).containsExactly(season("burr"));
        assertThat(Stream.concat(first.stream(), second.stream())).hasOnlyElementsOfType(SeasonOutcome.Made.class);
    }

    @Test
    void whatIsPlannedIsNotPlannedAgainUnlessThatIsAskedFor() throws IOException {
        plan(new Slice(1, 3), false);
        String before = Files.readString(planOf("adams"));
        Files.setLastModifiedTime(planOf("adams"), FileTime.fromMillis(0));

        assertThat(plan(Slice.ALL, false))
                .extracting(Object::getClass)
                .containsExactly(SeasonOutcome.Kept.class, SeasonOutcome.Made.class, SeasonOutcome.Made.class);
        assertThat(Files.getLastModifiedTime(planOf("adams")).toMillis()).isZero();

        assertThat(plan(new Slice(1, 3), true)).hasOnlyElementsOfType(SeasonOutcome.Made.class);
        assertThat(Files.getLastModifiedTime(planOf("adams")).toMillis()).isPositive();
        assertThat(planOf("adams")).hasContent(before);
    }

    @Test
    void aPlanOfTheSeasonBeforeItWasChangedIsNeitherTakenForItsPlanNorReplaced() throws IOException {
        Slice adams = new Slice(1, 3);
        plan(adams, false);
        String before = Files.readString(planOf("adams"));
        Files.writeString(season("adams"), Files.readString(season("adams")) + "\n# changed\n");

        assertThat(plan(adams, false)).containsExactly(new SeasonOutcome.Outdated(season("adams"), planOf("adams")));
        assertThat(planOf("adams")).hasContent(before);
    }

    @Test
    void aPlanThatCannotBeReadIsTold() throws IOException {
        Files.createDirectories(planOf("adams").getParent());
        Files.writeString(planOf("adams"), "{");

        assertThat(plan(new Slice(1, 3), false))
                .singleElement()
                .isInstanceOfSatisfying(SeasonOutcome.NotPlanned.class, not -> assertThat(not.refusal())
                        .isInstanceOf(InputRefusal.UnreadablePlan.class));
    }

    private List<SeasonOutcome> plan(Slice slice, boolean force) {
        List<SeasonOutcome> outcomes = new ArrayList<>();
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(20), 1);
        ManySeasons.plan(new SeasonsOrder(folder, slice, options, false, force), outcomes::add);
        return outcomes;
    }

    private void breakSeason(String farm) throws IOException {
        Files.writeString(season(farm), Files.readString(season(farm)).replace("compost:", "kompost:"));
    }

    private Path season(String farm) {
        return folder.resolve(farm).resolve("season.yaml");
    }

    private Path planOf(String farm) {
        return folder.resolve(farm).resolve("plan").resolve("plan.json");
    }
}

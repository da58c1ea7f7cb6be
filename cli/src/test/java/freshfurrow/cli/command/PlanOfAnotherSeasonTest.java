package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Commands that take a season and a plan say when the one is not of the other. */
final class PlanOfAnotherSeasonTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Path plan = Path.of("");

    private record Result(int exitCode, List<String> out, List<String> err) {}

    @BeforeEach
    void planSpring() throws IOException {
        for (String name : List.of("season.yaml", "fields.csv", "two-rigs.yaml")) {
            Files.copy(SCENARIOS.resolve("spring").resolve(name), folder.resolve(name));
        }
        season = folder.resolve("season.yaml");
        plan = folder.resolve("plan.json");
        Files.writeString(plan, PlanFile.toJson(plan((Reading.Valid) SeasonFiles.read(season, List.of()))));
    }

    @Test
    void anAuditOfAPlanOfItsSeasonSaysNothingOfTheSeason() {
        Result audit = run("audit", season, plan);

        assertThat(audit.exitCode()).isZero();
        assertThat(audit.out().get(0)).startsWith("No problems found.");
        assertThat(audit.err()).isEmpty();
    }

    @Test
    void anAuditAgainstAnotherSeasonIsOneLineThatSaysWhy() {
        Result audit = run("audit", SCENARIOS.resolve("metric"), plan);

        assertThat(audit.exitCode()).isEqualTo(1);
        assertThat(audit.out())
                .singleElement()
                .asString()
                .contains("plan.json is a plan of '", "not of '", "it breaks ");
        assertThat(audit.err()).isEmpty();
    }

    @Test
    void anAuditWithoutTheVariantOfAPlanSaysSoInOneLine() throws IOException {
        Path variant = folder.resolve("two-rigs.yaml");
        Files.writeString(plan, PlanFile.toJson(plan((Reading.Valid) SeasonFiles.read(season, List.of(variant)))));

        assertThat(run("audit", season, plan, "--variant", variant).exitCode()).isZero();
        Result audit = run("audit", season, plan);

        assertThat(audit.exitCode()).isEqualTo(1);
        assertThat(audit.out())
                .singleElement()
                .asString()
                .contains("(different checksum)", "name the season and the variants");
    }

    @Test
    void anAuditOfAPlanThatKeepsTheRulesOfAChangedSeasonSaysFirstThatItHasChanged() throws IOException {
        Files.writeString(season, Files.readString(season) + "# a remark\n");

        Result audit = run("audit", season, plan);

        assertThat(audit.exitCode()).isZero();
        assertThat(audit.out().get(0)).contains("or with other variants (different checksum)", "keeps the rules");
        assertThat(audit.out().get(1)).startsWith("No problems found.");
    }

    @Test
    void anAuditOfAPlanUnderWayThatCannotBeginInTheSeasonIsOneLineToo() throws IOException {
        String start = """
                , "start": {"now": "2027-04-20T12:00:00", "planted": [{"field": "nowhere", "date": "2027-04-20", "areaHa": 1}],
                 "lots": [], "rain": [], "outages": [], "batches": [], "planters": {}, "rigs": {}, "drawnL": {}, "promised": {},
                 "loadsMade": 0, "batchesMade": 0}}""";
        String text = Files.readString(plan).strip();
        Files.writeString(plan, text.substring(0, text.length() - 1) + start);
        Files.writeString(season, Files.readString(season) + "# a remark\n");

        Result audit = run("audit", season, plan);

        assertThat(audit.exitCode()).isEqualTo(1);
        assertThat(audit.out()).isEmpty();
        assertThat(audit.err())
                .singleElement()
                .asString()
                .contains("plan.json was made from a season.yaml that differs from");
    }

    @ParameterizedTest
    @ValueSource(strings = {"log planted F01 1ac --load L0001 --at 2027-04-20T15:10", "log list", "trace --field F01"})
    void aLogDoesNotTakeTheLoadsOfAnotherSeasonsPlan(String words) throws IOException {
        assertThat(run(withSeason(words)).err()).isEmpty();

        Files.writeString(season, Files.readString(season) + "# a remark\n");
        Result result = run(withSeason(words));

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .singleElement()
                .asString()
                .contains("plan.json: this is not a plan of season.yaml as it is now (different checksum)");
    }

    private Object[] withSeason(String words) {
        List<Object> all = new ArrayList<>(List.of((Object[]) words.split(" ")));
        all.addAll(1, List.of(season, "--plan", plan, "--now", "2027-04-21T08:00"));
        return all.toArray();
    }

    private static Plan plan(Reading.Valid read) {
        Season spring = read.season();
        List<List<String>> lists = new ArrayList<>();
        for (int p = 0; p < spring.applicators().size(); p++) {
            Applicator planter = spring.applicators().get(p);
            boolean first = p == 0;
            lists.add(spring.fields().stream()
                    .filter(field -> field.allows(planter)
                            && (first || !field.allows(spring.applicators().get(0))))
                    .map(Field::id)
                    .toList());
        }
        return PlanRecorder.record(
                CompiledSeason.of(spring), lists, Plan.SeasonSource.of(spring, read.file(), read.sha256()));
    }

    private static Result run(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine command =
                Freshfurrow.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        String[] arguments = new String[words.length];
        for (int i = 0; i < words.length; i++) {
            arguments[i] = words[i].toString();
        }
        int exitCode = command.execute(arguments);
        return new Result(
                exitCode,
                out.toString().lines().toList(),
                err.toString().lines().toList());
    }
}

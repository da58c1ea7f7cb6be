package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seasons whose times vary, from the command line. */
final class UncertainTimesIT {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"spring", "metric", "mixed-farm", "weather-spring", "first-season"})
    void aSpreadOfNothingLeavesThePlanAsItIs(String scenario) throws IOException {
        variant("spread: {batchTime: 0, transfer: 0, drive: 0, planting: 0, breakdowns: none}");

        String without = plan(scenario, "without");
        String with = plan(scenario, "with", "--variant", at("varying.yaml"));

        assertThat(withoutSha256(with)).isEqualTo(withoutSha256(without));
    }

    @ParameterizedTest
    @ValueSource(strings = {"spring", "metric", "mixed-farm"})
    void thePlanSaysHowSureItIsAndIsElseTheSame(String scenario) throws Exception {
        variant("spread: {}");

        String without = plan(scenario, "without");
        String with = plan(scenario, "with", "--variant", at("varying.yaml"));
        Plan plan = PlanFile.read(folder.resolve("with/plan.json"));

        assertThat(apartFromChances(with)).isEqualTo(apartFromChances(without));
        assertThat(plan.chances().orElseThrow().seasons()).isEqualTo(400);
        assertThat(plan.chances().orElseThrow().stale()).isNotEmpty();
    }

    @Test
    void theReportNamesTheCropsAndTheLoadsThatMayGoStale() throws IOException {
        variant("spread: {}");
        Launcher.Result run = InProcess.run(
                "plan",
                Launcher.scenario("spring"),
                "--variant",
                at("varying.yaml"),
                "--steps",
                "200",
                "--out",
                at("plan"));

        assertThat(run.out())
                .contains("How sure     of 100 simulated seasons, all corn is in its window in ")
                .contains("Stale        about ", "Most likely to go stale", " of 100 seasons");
        assertThat(InProcess.run("day", at("plan/plan.json"), "2027-04-22").out())
                .contains(", goes stale in ");
        assertThat(Files.readString(folder.resolve("plan/plan.html"))).contains(", goes stale in ");
    }

    @Test
    void aReplanSaysHowSureWhatIsLeftIs() throws Exception {
        variant("spread: {}");
        plan("spring", "plan", "--variant", at("varying.yaml"));
        Launcher.Result replanned = InProcess.run(
                "replan",
                Launcher.scenario("spring"),
                "--variant",
                at("varying.yaml"),
                "--plan",
                at("plan"),
                "--now",
                "2027-04-26 06:00",
                "--steps",
                "100");

        assertThat(replanned.exitCode()).as(replanned.all()).isZero();
        assertThat(replanned.out()).contains("How sure: of 100 simulated seasons, all ", "Stale: ");
        Plan plan = PlanFile.read(folder.resolve("plan/plan.json"));
        assertThat(plan.start()).isPresent();
        assertThat(plan.chances()).isPresent();
    }

    @Test
    void reservesAreComparedAndTheBestIsNamed() throws IOException {
        variant("spread: {}");
        Launcher.Result run = InProcess.run(
                "compare",
                Launcher.scenario("weather-spring"),
                "--variant",
                at("varying.yaml"),
                "--reserve",
                "0,30min",
                "--springs",
                "4",
                "--steps",
                "200",
                "--out",
                at("compare"));

        assertThat(run.exitCode()).as(run.all()).isZero();
        assertThat(run.out())
                .contains(
                        "stale loads",
                        "Reserves, average spring",
                        "\n0 min ",
                        "\n30 min ",
                        "The sum is least with a reserve of ");
        assertThat(Files.readString(folder.resolve("compare/compare.html")))
                .contains("The sum is least with a reserve of ");
        JsonNode file = new ObjectMapper()
                .readTree(folder.resolve("compare/compare.json").toFile());
        assertThat(file.at("/rules/timesVary").asBoolean()).isTrue();
        assertThat(file.at("/variants/3/reserve/reserveS").asInt()).isEqualTo(1_800);
        Launcher.Result merged = InProcess.run("compare", "--merge", at("compare"), "--out", at("merged"));
        assertThat(merged.exitCode()).as(merged.all()).isZero();
        assertThat(Files.readString(folder.resolve("merged/compare.json")))
                .isEqualTo(Files.readString(folder.resolve("compare/compare.json")));
    }

    @Test
    void reservesNeedTimesThatVary() {
        Launcher.Result run = InProcess.run(
                "compare",
                Launcher.scenario("weather-spring"),
                "--reserve",
                "10min",
                "--springs",
                "2",
                "--out",
                at("compare"));

        assertThat(run.exitCode()).isEqualTo(1);
        assertThat(run.err()).contains("A reserve helps only where times vary; write spread: {} in season.yaml");
        assertThat(folder.resolve("compare")).doesNotExist();
    }

    private String plan(String scenario, String out, String... more) throws IOException {
        String[] arguments = new String[8 + more.length];
        System.arraycopy(
                new String[] {"plan", Launcher.scenario(scenario), "--steps", "300", "--seed", "3", "--out", at(out)},
                0,
                arguments,
                0,
                8);
        System.arraycopy(more, 0, arguments, 8, more.length);
        Launcher.Result run = InProcess.run(arguments);
        assertThat(run.exitCode()).as(run.all()).isZero();
        return Files.readString(folder.resolve(out).resolve("plan.json"));
    }

    private static JsonNode apartFromChances(String plan) throws IOException {
        ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(plan);
        tree.remove("chances");
        ((ObjectNode) tree.get("season")).remove("sha256");
        return tree;
    }

    private static String withoutSha256(String plan) {
        return plan.replaceFirst("\"sha256\": \"[0-9a-f]{64}\"", "");
    }

    private void variant(String text) throws IOException {
        Files.writeString(folder.resolve("varying.yaml"), text + "\n");
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }
}

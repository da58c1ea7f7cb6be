package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.PlanFileException;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Plans that hold, with every single thing of them changed. The build tries one in so many; all are tried with the system property
 * {@code freshfurrow.corruptions.oneIn} at 1.
 */
class CorruptedPlansTest {
    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
    private static final int ONE_IN = Integer.getInteger("freshfurrow.corruptions.oneIn", 211);

    /** A change that may pass: where, what, and why that is right. */
    private record Harmless(String where, String what, String because) {
        boolean covers(Corruptions.Corruption corruption) {
            return Pattern.matches(where, corruption.place()) && Pattern.matches(what, corruption.what());
        }
    }

    private static final List<Harmless> HARMLESS = List.of(
            new Harmless("/season/(file|sha256)", ".*", "the command compares them, or opens the file"),
            new Harmless("/season/units/.*", ".*", "how people are shown figures that are told in SI"),
            new Harmless("/start", "dropped", "a plan of a whole season that happens to hold"),
            new Harmless("/bounds.*|/limits.*", ".*", "what no plan in this file can show"),
            new Harmless(
                    "/planters/\\*/activities/\\*", "dropped", "a wait that is not counted is idle time, told or not"),
            new Harmless("/planters/\\*/fields/\\*", "dropped|changed places", "nothing is planted of that field"),
            new Harmless(
                    "/(planters|rigs)/\\*/activities/\\*/(start|end)",
                    "by .*",
                    "slower, or cleaner, than it has to be"),
            new Harmless(
                    "/planters/\\*/activities/\\*/why",
                    "is (rig|water|compost).*was (rig|water|compost)",
                    "they count alike"),
            new Harmless(
                    "/planters/\\*/activities/\\*/why", "is (hours|wet|window).*was (hours|wet|window)", "none counts"),
            new Harmless(
                    "/planters/\\*/activities/\\*/why",
                    "is hours.*",
                    "no fill fits the hours earlier, or none of it is work"),
            new Harmless("/planters/\\*/activities/\\*/why", ".*was hours", "none of it is working time"),
            new Harmless(
                    "/rigs/\\*/activities/\\*", "dropped|twice", "a clean that nothing follows, or that takes no time"),
            new Harmless("/rigs/\\*/activities/\\*/litres", ".*", "water drawn that nobody lacks"),
            new Harmless("/score/(medium|soft)", "by -?1", "one unit of rounding"),
            new Harmless("/totals/(compostKg|driveKm|dumpedL)", "by 0.1", "within the rounding of many figures"),
            new Harmless("/unserved/\\*", "changed places", "their order says nothing"),
            new Harmless("/unserved/\\*/why", ".*", "free text"),
            new Harmless("/start/now", "by .*", "nothing happens in between"),
            new Harmless("/start/logSha256", ".*", "only the log can tell"),
            new Harmless(
                    "/start/(lots|outages|rain|planted|batches)/\\*", "changed places", "their order says nothing"),
            new Harmless("/start/planted/\\*/date", "by .*", "only the log and people know"),
            new Harmless("/start/lots/\\*", "dropped", "it may have spoiled, and nothing takes of it"),
            new Harmless("/start/lots/\\*/kg", ".*", "some may have spoiled; more than was there is refused"),
            new Harmless("/start/(outages|rain).*", ".*", "the plan keeps its rules with it and without it"),
            new Harmless("/start/drawnL.*", ".*", "there is no limit, or room below it"),
            new Harmless(
                    "/start/promised.*",
                    ".*",
                    "only the plan before could tell; what is moved against it counts in the score"),
            new Harmless("/start/(planters|rigs)/\\*/freeFrom", "by .*", "it does nothing in between"),
            new Harmless("/start/planters/\\*/filledOn", "by .*|dropped", "only the plan before could tell"),
            new Harmless("/start/(planters|rigs)/\\*/at", "another", "it does nothing any more"),
            new Harmless(
                    "/start/planters/\\*/lines.*", ".*", "flushed on that day either way, or before the same recipe"),
            new Harmless(
                    "/start/rigs/\\*/setUpAt", "by .*", "earlier on the same day, or it does nothing more that day"),
            new Harmless("/start/rigs/\\*/cleanDue", ".*", "it cleans first either way, or does nothing any more"),
            new Harmless("/start/rigs/\\*/(waterL|mix/areaHa)", ".*", "room that the plan does not need"));

    @TempDir
    private Path folder;

    static Stream<ValidPlan> plans() {
        return ValidPlan.all().stream();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aPlanWithOneThingChangedBreaksARuleUnlessThatIsHarmless(ValidPlan valid) throws Exception {
        JsonNode tree = JSON.readTree(PlanFile.toJson(valid.plan()));
        assertThat(passes(valid.whole(), tree)).as("the plan as it is").isTrue();
        Map<String, Integer> passed = new TreeMap<>();
        int[] tried = new int[1];
        Corruptions.of(tree, corruption -> {
            boolean harmless = HARMLESS.stream().anyMatch(one -> one.covers(corruption));
            if (!harmless && tried[0]++ % ONE_IN == 0 && passes(valid.whole(), tree)) {
                passed.merge(corruption.toString(), 1, Integer::sum);
            }
        });
        assertThat(tried[0]).isGreaterThan(1000);
        assertThat(passed).isEmpty();
    }

    private boolean passes(Season whole, JsonNode tree) {
        try {
            Path file = Files.write(folder.resolve("plan.json"), JSON.writeValueAsBytes(tree));
            Plan plan = PlanFile.read(file);
            Season left = plan.start().map(start -> start.remaining(whole)).orElse(whole);
            return Audit.check(left, plan).isEmpty();
        } catch (PlanFileException | IllegalArgumentException refused) {
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

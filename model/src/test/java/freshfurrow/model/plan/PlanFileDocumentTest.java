package freshfurrow.model.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** docs/plan-file.md tells of each value that may stand in a plan file, and of no other. */
final class PlanFileDocumentTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "plan-file.md");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\|");

    /** What is in front of things that have the same parts wherever they stand. */
    private static final Pattern SAME =
            Pattern.compile("^(planters\\.ID\\.(?=activities)|rigs\\.ID\\.(?=activities)|start\\.(?=batches\\[))");

    private static final Set<String> BY_ID = Set.of(
            "season.names",
            "planters",
            "rigs",
            "batches[].lots",
            "chances.stale",
            "chances.inWindow",
            "start.planters",
            "start.rigs",
            "start.rigs.ID.compostKg",
            "start.drawnL",
            "start.promised",
            "start.batches[].lots",
            "start.fromLog.lotsKg");

    @Test
    void itTellsOfEachValue() throws Exception {
        Set<String> written = new TreeSet<>();
        for (long seed = 0; seed < 200; seed++) {
            collect(new ObjectMapper().readTree(PlanFile.toJson(RandomPlans.plan(seed))), "", written);
        }

        Set<String> told = ROW.matcher(Files.readString(DOCUMENT))
                .results()
                .map(row -> row.group(1))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(told).isEqualTo(written);
    }

    private static void collect(JsonNode node, String path, Set<String> written) {
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> under : node.properties()) {
                String key = BY_ID.contains(path) ? "ID" : under.getKey();
                collect(under.getValue(), path.isEmpty() ? key : path + "." + key, written);
            }
        } else if (node.isArray()) {
            node.forEach(one -> collect(one, path + "[]", written));
        } else {
            written.add(SAME.matcher(path).replaceFirst(""));
        }
    }
}

package freshfurrow.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The job files that docs/developing/scaling.md gives. Slurm's are run by {@code SlurmIT}; no cluster runs those of Kubernetes. */
final class ScalingDocumentTest {
    private static final Path DOCS = Path.of("..", "docs", "developing");
    private static final Path FILES = DOCS.resolve("scaling");

    @Test
    void theDocumentQuotesEveryJobFileToTheLetter() throws IOException {
        Map<String, String> quoted = new TreeMap<>();
        Pattern.compile("<!-- file: scaling/(\\S+) -->\\n```[a-z]+\\n(.*?)```\\n", Pattern.DOTALL)
                .matcher(Files.readString(DOCS.resolve("scaling.md")))
                .results()
                .forEach(block -> quoted.put(block.group(1), block.group(2)));
        Map<String, String> there = new TreeMap<>();
        try (Stream<Path> files = Files.list(FILES)) {
            for (Path file : files.toList()) {
                there.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        assertThat(quoted).isEqualTo(there).hasSize(5);
    }

    @Test
    void everySchedulerHasAsManyTasksAsThereAreSlices() throws IOException {
        int slices = Integer.parseInt(Pattern.compile("(?m)^slices=(\\d+)$")
                .matcher(text("comparison.sh"))
                .results()
                .findFirst()
                .orElseThrow()
                .group(1));
        assertThat(text("slices.sbatch")).contains("#SBATCH --array=0-" + (slices - 1) + "\n");
        assertThat(job("slices.yaml").at("/spec/completions").asInt()).isEqualTo(slices);
    }

    /** Names and values as in the reference of the API batch/v1 of Kubernetes, JobSpec, from memory. */
    @Test
    void theSlicesAreAnIndexedJobThatTriesKilledOnesAgainAndRefusedOnesNot() throws IOException {
        JsonNode spec = job("slices.yaml").at("/spec");
        assertThat(spec.at("/completionMode").asText()).isEqualTo("Indexed");
        assertThat(spec.at("/backoffLimitPerIndex").isInt()).isTrue();
        assertThat(spec.at("/podFailurePolicy/rules/0/action").asText()).isEqualTo("Ignore");
        assertThat(spec.at("/podFailurePolicy/rules/1/action").asText()).isEqualTo("FailIndex");
        assertThat(spec.at("/podFailurePolicy/rules/1/onExitCodes/values").toString())
                .isEqualTo("[1,2]");
        assertThat(command(spec)).last().asString().endsWith("comparison.sh slice \"$JOB_COMPLETION_INDEX\"");
        assertThat(command(job("merge.yaml").at("/spec"))).endsWith("/season/comparison.sh", "merge");
    }

    @ParameterizedTest
    @ValueSource(strings = {"slices.yaml", "merge.yaml"})
    void aJobMountsTheVolumeThatItNames(String file) throws IOException {
        JsonNode job = job(file);
        assertThat(job.at("/apiVersion").asText()).isEqualTo("batch/v1");
        assertThat(job.at("/kind").asText()).isEqualTo("Job");
        JsonNode pod = job.at("/spec/template/spec");
        assertThat(pod.at("/restartPolicy").asText()).isEqualTo("Never");
        assertThat(pod.at("/containers/0/volumeMounts/0/name").asText())
                .isEqualTo(pod.at("/volumes/0/name").asText())
                .isNotEmpty();
        assertThat(pod.at("/containers/0/volumeMounts/0/mountPath").asText()).isEqualTo("/season");
    }

    private static List<String> command(JsonNode spec) {
        return Stream.iterate(0, i -> i + 1)
                .map(i -> spec.at("/template/spec/containers/0/command/" + i))
                .takeWhile(JsonNode::isTextual)
                .map(JsonNode::asText)
                .toList();
    }

    private static JsonNode job(String file) throws IOException {
        return new YAMLMapper().readTree(text(file));
    }

    private static String text(String file) throws IOException {
        return Files.readString(FILES.resolve(file));
    }
}

package freshfurrow.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.ActivityKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KindsTest {
    private static final Pattern ROW =
            Pattern.compile("^ {4}(\\w+): \\{\\n(.*?)^ {4}}", Pattern.MULTILINE | Pattern.DOTALL);
    private static final Pattern KEYS = Pattern.compile("keys: \\[(.*?)]");

    @Test
    void thePageHasARowForEachKindOfActivityAndNoOther() throws IOException {
        assertThat(rows().keySet())
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(ActivityKind.values())
                        .map(ActivityKind::key)
                        .toList());
    }

    @ParameterizedTest
    @EnumSource
    void aRowSaysAllThatViewsAskFor(ActivityKind kind) throws IOException {
        assertThat(row(kind))
                .contains("name: \"", "letter: \"", "y: ", "height: ", "says: ", "belongs: ", "chooses: ")
                .containsAnyOf("look: \"look-", "fill: ");
    }

    @ParameterizedTest
    @EnumSource
    void aRowNamesAsManyPartsAsThePageIsGiven(ActivityKind kind) throws IOException {
        Matcher keys = KEYS.matcher(row(kind));
        assertThat(keys.find()).isTrue();
        assertThat(keys.group(1).split(", ")).hasSameSizeAs(kind.parts());
    }

    /** So that another kind of work on fields is counted and shown with it. */
    @Test
    void viewsKnowWhatCoversGroundByItsAreaAndNotByItsKind() {
        assertThat(PageFiles.script()).doesNotContain("\"plant\"");
    }

    private static String row(ActivityKind kind) throws IOException {
        return rows().getOrDefault(kind.key(), "");
    }

    private static Map<String, String> rows() throws IOException {
        Map<String, String> rows = new LinkedHashMap<>();
        try (var script = Objects.requireNonNull(KindsTest.class.getResourceAsStream("kinds.js"))) {
            Matcher row = ROW.matcher(new String(script.readAllBytes(), StandardCharsets.UTF_8));
            while (row.find()) {
                rows.put(row.group(1), row.group(2));
            }
        }
        return rows;
    }
}

package freshfurrow.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.app.SeasonCopy;
import freshfurrow.cli.command.Freshfurrow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What fields are called in the lists of the desk. */
final class DeskLabelsTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aNameThatSaysNoMoreThanTheIdIsSaidOnce() throws IOException {
        SeasonCopy season = SeasonCopy.of("first-season", folder);
        Path fields = folder.resolve("fields.csv");
        Files.writeString(fields, Files.readString(fields).replace("N80,North eighty", "North-eighty,North eighty"));
        assertThat(Freshfurrow.run("plan", folder.toString(), "--steps", "0")).isZero();
        try (Desk desk = Desk.open(new DeskOrder(season.given(), SeasonCopy.IN_ANOTHER_YEAR, 0, false))) {
            DeskClient owner = new DeskClient(desk.link());
            for (String part : List.of("/api/try", "/api/ask")) {
                assertThat(labels(owner.ask(part).json().get("fields")))
                        .as(part)
                        .contains("North-eighty", "S110 South flat");
            }
        }
    }

    private static List<String> labels(JsonNode fields) {
        List<String> labels = new ArrayList<>();
        fields.forEach(field -> labels.add(field.path("label").asText()));
        return labels;
    }
}

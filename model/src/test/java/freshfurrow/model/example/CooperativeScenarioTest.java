package freshfurrow.model.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class CooperativeScenarioTest {
    private static final Path FOLDER = Path.of("..", "scenarios", "cooperative");

    @Test
    void the_checked_in_fields_are_those_of_the_seed() {
        assertThat(FOLDER.resolve("fields.csv")).hasContent(CooperativeScenario.fields());
    }

    @Test
    void the_checked_in_season_is_the_generated_one() {
        assertThat(FOLDER.resolve("season.yaml")).hasContent(CooperativeScenario.season());
    }
}

package freshfurrow.model.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SeedsTest {
    private final List<Long> run = new ArrayList<>();

    @ParameterizedTest
    @Seeds({7, 3, 9, 4, 8})
    void theFirstOfTheSeedsAreRun(long seed) {
        run.add(seed);
    }

    @AfterAll
    void asManyAsTriesSays() {
        assertThat(run).isEqualTo(List.of(7L, 3L, 9L, 4L, 8L).subList(0, Tries.of(5)));
    }
}

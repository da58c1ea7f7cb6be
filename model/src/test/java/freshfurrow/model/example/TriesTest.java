package freshfurrow.model.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import org.junit.jupiter.api.Test;

class TriesTest {
    private static final AtomicInteger TRIED = new AtomicInteger();

    @Test
    void aFifthOfThreeHundredIsSixty() {
        assertThat(Tries.of(300, 20)).isEqualTo(60);
    }

    @Test
    void oneTryIsLeftOfFew() {
        assertThat(Tries.of(4, 20)).isEqualTo(1);
    }

    @Property(tries = 50)
    void propertiesRunTheirShare(@ForAll long number) {
        TRIED.incrementAndGet();
    }

    @AfterContainer
    static void asManyWereTried() {
        assertThat(TRIED).hasValue(Tries.of(50));
    }
}

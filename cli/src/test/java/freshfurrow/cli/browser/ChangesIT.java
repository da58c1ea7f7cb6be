package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import freshfurrow.cli.command.Freshfurrow;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@InBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ChangesIT {
    private static final Path SPRING = Path.of("..", "scenarios", "spring");

    private Path before = Path.of("");
    private Path after = Path.of("");

    @BeforeAll
    void planAndReplan(@TempDir Path folder) {
        before = Pages.of(SPRING, folder.resolve("before"));
        after = folder.resolve("after");
        assertThat(Freshfurrow.run(
                        "replan",
                        SPRING.toString(),
                        "--plan",
                        folder.resolve("before").toString(),
                        "--rain",
                        "2027-04-30T10:00=0.8in",
                        "--steps",
                        "0",
                        "--out",
                        after.toString()))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 360})
    void thePageOfAPlanMadeAgainTellsWhatChanged(int width, Browser browser) {
        browser.size(width, 900);
        browser.open(before);
        assertThat(browser.element("#changes").isDisplayed()).isFalse();
        browser.open(after.resolve("plan.html"));
        assertThat(browser.text("#changes-text"))
                .startsWith("From now on")
                .contains("Fields that move", "too wet until 2027-05-02", "What to do now");
        assertThat(new AxeBuilder().analyze(browser.driver()).getViolations()).isEmpty();
        assertThat((Boolean) browser.js("return document.documentElement.scrollWidth <= window.innerWidth"))
                .isTrue();
    }
}

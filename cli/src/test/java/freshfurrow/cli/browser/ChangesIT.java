package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import freshfurrow.cli.command.Freshfurrow;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ChangesIT {
    private static final Path SPRING = Path.of("..", "scenarios", "spring");

    @ParameterizedTest
    @ValueSource(ints = {1280, 360})
    void thePageOfAPlanMadeAgainTellsWhatChanged(int width, @TempDir Path folder) {
        Path before = folder.resolve("before");
        Path after = folder.resolve("after");
        Path page = Pages.of(SPRING, before);
        assertThat(Freshfurrow.run(
                        "replan",
                        SPRING.toString(),
                        "--plan",
                        before.toString(),
                        "--rain",
                        "2027-04-30T10:00=0.8in",
                        "--steps",
                        "0",
                        "--out",
                        after.toString()))
                .isZero();

        try (Browser browser = Browser.start(folder.resolve("browser"))) {
            browser.size(width, 900);
            browser.open(page);
            assertThat(browser.element("#changes").isDisplayed()).isFalse();
            browser.open(after.resolve("plan.html"));
            assertThat(browser.text("#changes-text"))
                    .startsWith("From now on")
                    .contains("Fields that move", "too wet until 2027-05-02", "What to do now");
            assertThat(new AxeBuilder().analyze(browser.driver()).getViolations())
                    .isEmpty();
            assertThat((Boolean) browser.js("return document.documentElement.scrollWidth <= window.innerWidth"))
                    .isTrue();
        }
    }
}

package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.desk.Desk;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the desk shows first. How soon it does, docs/developing/benchmarks.md says. */
@InBrowser
final class DeskFirstPageIT {
    /** Answers about the season in sums, which take all of its distances, come when the test lets them. */
    private static final String SLOW_SUMS = """
            const real = window.fetch;
            const mayGoOn = new Promise((done) => { window.letGo = done; });
            window.fetch = async (path, ...rest) => {
              if (String(path) === '/api/season/sums') await mayGoOn;
              return real(path, ...rest);
            };""";

    @TempDir
    private Path folder = Path.of("");

    private Desk desk;

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    @Test
    void theFormsAreDrawnWithoutWaitingForTheSums(Browser browser) {
        desk = Desks.open(Desks.copyOf("cooperative", folder), "2027-04-20T06:00");
        browser.command("Page.addScriptToEvaluateOnNewDocument", Map.of("source", SLOW_SUMS));
        browser.openDesk(desk.link());
        assertThat(browser.element("[data-path='season.name']").getAttribute("value"))
                .isEqualTo(browser.text("#season-name"));
        browser.click(browser.element("[data-section=fields]"));
        assertThat(browser.count("#section details")).isEqualTo(400);
        assertThat(browser.count("#sums details")).isZero();

        browser.js("letGo(); return true");
        browser.await("document.querySelector('#sums details') !== null");
        assertThat(browser.element("#sums pre").getAttribute("textContent")).startsWith("Season ");
        assertThat(browser.console()).isEmpty();
    }
}

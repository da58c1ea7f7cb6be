package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season of 400 fields. */
@InBrowser
final class LargeSeasonIT {
    private static final long MOST_BYTES = 3_000_000;

    /** Far more than it takes, as a busy machine is no reason to fail; docs/developing/benchmarks.md has the time measured. */
    private static final double MOST_MS = 30_000;

    @Test
    void thePageIsSmallAndAnswersBeforeAllOfItIsDrawn(Browser browser, @TempDir Path folder) throws Exception {
        Path page = Pages.ofScenario("cooperative", folder.resolve("plan"));
        assertThat(Files.size(page)).isLessThan(MOST_BYTES);

        browser.open(page);
        double answers = mark(browser, "answers");
        assertThat(answers).isLessThan(mark(browser, "drawn")).isLessThan(MOST_MS);
        assertThat(browser.count("#map-chart g.field")).isEqualTo(400);
        assertThat(browser.count("#fields tbody tr")).isEqualTo(60);
        assertThat(browser.text("#fields [role=status]")).isEqualTo("60 of 400 shown");
        browser.element("#fields .more").click();
        assertThat(browser.count("#fields tbody tr")).isEqualTo(400);
        assertThat(browser.count("#day-chart g.mark"))
                .as("one day only")
                .isLessThan(((Long) browser.js("return plan.work.length")).intValue() / 10);
        assertThat(browser.console()).isEmpty();
    }

    private static double mark(Browser browser, String name) {
        return ((Number) browser.js("return performance.getEntriesByName(arguments[0])[0].startTime", name))
                .doubleValue();
    }
}

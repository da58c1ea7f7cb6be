package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.text.Figures;
import freshfurrow.model.quantity.DisplayUnits;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page's script writes figures as the program's text does. */
final class FiguresIT {
    private static final double[] AMOUNTS = {0, 0.004, 0.07, 0.4, 1, 9.96, 12.34, 99.94, 100, 640.25, 2271.2, 98_765.4};

    @Test
    void figuresOfThePageReadLikeThoseOfTheText(@TempDir Path folder) {
        try (Browser browser = Browser.start(folder.resolve("profile"))) {
            browser.open(Pages.ofScenario("first-season", folder.resolve("us")));
            assertSame(browser, new Figures(DisplayUnits.US));
            browser.open(Pages.ofScenario("metric", folder.resolve("metric")));
            assertSame(browser, new Figures(DisplayUnits.METRIC));

            assertThat(browser.js("return figures.day(0)")).isEqualTo(Figures.day(LocalDate.of(2027, 4, 12)));
            assertThat(browser.js("return figures.clockOn(86400, 0)")).isEqualTo("24:00");
            assertThat(browser.js("return figures.clockOn(2 * 86400 - 60, 0)")).isEqualTo("23:59 on Tue 2027-04-13");
            for (int seconds : new int[] {0, 59, 60, 3_599, 3_600, 36_061}) {
                assertThat(browser.js("return figures.span(arguments[0])", seconds))
                        .isEqualTo(Figures.span(Duration.ofSeconds(seconds)));
            }
        }
    }

    private static void assertSame(Browser browser, Figures figures) {
        for (double amount : AMOUNTS) {
            assertThat(browser.js("return figures.area(arguments[0])", amount)).isEqualTo(figures.area(amount));
            assertThat(browser.js("return figures.volume(arguments[0])", amount))
                    .isEqualTo(figures.volume(amount));
            assertThat(browser.js("return figures.mass(arguments[0])", amount)).isEqualTo(figures.mass(amount));
            assertThat(browser.js("return figures.distance(arguments[0])", amount))
                    .isEqualTo(figures.distance(amount));
        }
    }
}

package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.text.CrewClock;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.quantity.DisplayUnits;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page's script writes figures as the program's text does. */
@InBrowser
final class FiguresIT {
    private static final double[] AMOUNTS = {0, 0.004, 0.07, 0.4, 1, 9.96, 12.34, 99.94, 100, 640.25, 2271.2, 98_765.4};

    @Test
    void figuresOfThePageReadLikeThoseOfTheText(Browser browser, @TempDir Path folder) {
        browser.open(Pages.ofScenario("first-season", folder.resolve("us")));
        assertSame(browser, new Figures(DisplayUnits.US));
        assertSameTimes(browser, new Figures(DisplayUnits.US), LocalDate.of(2027, 4, 19));
        browser.open(Pages.ofScenario("metric", folder.resolve("metric")));
        assertSame(browser, new Figures(DisplayUnits.METRIC));
        assertSameTimes(browser, new Figures(DisplayUnits.METRIC), LocalDate.of(2027, 4, 12));

        assertThat(browser.js("return figures.day(0)")).isEqualTo(Figures.day(LocalDate.of(2027, 4, 12)));
        for (int seconds : new int[] {0, 59, 60, 3_599, 3_600, 36_061}) {
            assertThat(browser.js("return figures.span(arguments[0])", seconds))
                    .isEqualTo(Figures.span(Duration.ofSeconds(seconds)));
        }
    }

    private static void assertSameTimes(Browser browser, Figures figures, LocalDate first) {
        CrewClock crew = figures.crewClock(first);
        for (int seconds :
                new int[] {0, 149, 150, 299, 43_200, 43_229, 43_349, 68_733, 86_399, 86_400, 86_401, 172_740}) {
            LocalDateTime time = first.atStartOfDay().plusSeconds(seconds);
            assertThat(browser.js("return figures.clockOn(arguments[0], 0)", seconds))
                    .isEqualTo(figures.clock(time, first));
            assertThat(browser.js("return figures.about(arguments[0], 0)", seconds))
                    .isEqualTo(crew.about(time));
            assertThat(browser.js("return figures.by(arguments[0], 0)", seconds))
                    .isEqualTo(crew.by(time));
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

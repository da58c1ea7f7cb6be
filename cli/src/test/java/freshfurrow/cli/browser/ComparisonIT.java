package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import freshfurrow.cli.compare.ComparedExample;
import freshfurrow.cli.page.ComparisonPage;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.quantity.DisplayUnits;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.WebElement;

/** The page of a comparison in a browser: all there, by day and by night, on a phone, for a screen reader. */
@InBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ComparisonIT {
    private Path page = Path.of("");
    private Browser browser;

    @BeforeAll
    void makePage(Browser tab, @TempDir Path folder) throws Exception {
        browser = tab;
        page = folder.resolve("compare.html");
        Files.writeString(page, ComparisonPage.html(ComparedExample.springs(1, 40)));
    }

    @Test
    void everyMeasureHasARowAndADrawing() {
        browser.open(page);

        assertThat(browser.all("#charts svg")).hasSize(Measure.of(false, false).size());
        assertThat(browser.all("#figures tbody tr"))
                .hasSize(Measure.of(false, false).size() + 2);
        assertThat(browser.js("return document.querySelector('#charts svg').getAttribute('aria-label')"))
                .asString()
                .contains("finish", "<b>base</b>");
    }

    @Test
    void datesAreWrittenAsOnOtherPages(@TempDir Path folder) throws Exception {
        browser.open(page);
        assertThat(finishes()).isNotEmpty().allSatisfy(label -> assertThat(label)
                .matches("May \\d+"));

        Path metric = folder.resolve("metric.html");
        Files.writeString(metric, ComparisonPage.html(ComparedExample.springsIn(DisplayUnits.METRIC, 1, 40)));
        browser.open(metric);
        assertThat(finishes()).isNotEmpty().allSatisfy(label -> assertThat(label)
                .matches("\\d+ May"));
    }

    /** The dates under the first drawing. */
    private List<String> finishes() {
        return browser.all("#charts figure:first-child .axis text").stream()
                .map(WebElement::getText)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void axeFindsNothing(String theme) {
        browser.open(page);
        browser.js("return document.documentElement.dataset.theme = '" + theme + "'");

        assertThat(new AxeBuilder().analyze(browser.driver()).getViolations())
                .extracting(Rule::getId)
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 1280})
    void nothingScrollsThePageSideways(int width) {
        browser.size(width, 800);
        browser.open(page);

        assertThat(browser.js("return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .isEqualTo(0L);
    }
}

package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The views of the page, and what a reader can choose in them, on the plan of the first season. */
@InBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ViewsIT {
    private Path page = Path.of("");
    private Browser browser;

    @BeforeAll
    void makePage(Browser tab, @TempDir Path folder) {
        browser = tab;
        page = Pages.ofScenario("first-season", folder.resolve("plan"));
    }

    @BeforeEach
    void open() {
        browser.open(page);
    }

    @AfterEach
    void nothingIsWrittenToTheConsole() {
        assertThat(browser.console()).isEmpty();
    }

    @Test
    void everyViewIsDrawnFromAFileWithoutANetwork() {
        assertThat(browser.text("h1")).isEqualTo("First season");
        assertThat(browser.text("#ledger")).contains("planted", "655.0 ac", "planter fills", "the proven minimum");
        assertThat(browser.text("#limits"))
                .contains("No bottleneck", "up to the end of planting", "stopped until work resumes");
        assertThat(browser.count("#limits table")).isZero();
        assertThat(browser.count("#season-chart g.day")).isEqualTo(41);
        assertThat(browser.count("#season-chart rect.part")).isPositive();
        assertThat(browser.count("#day-chart g.mark.plant")).isPositive();
        assertThat(browser.count("#day-chart g.mark.transfer"))
                .isEqualTo(browser.count("#day-chart line.thread"))
                .isPositive();
        assertThat(browser.text(".cautions"))
                .contains(
                        "Local codes, manufacturers' manuals and licensed professionals come first",
                        "Drawing at well",
                        "Weight of R1");
        assertThat(browser.count("#map-chart g.field")).isEqualTo(8);
        assertThat(browser.count("#curves .curve svg[role=group]")).isEqualTo(4);
        assertThat(browser.count("#fields tbody tr")).isEqualTo(8);
        assertThat(browser.count("#loads tbody tr"))
                .isEqualTo(((Long) browser.js("return plan.loads.length")).intValue());
        assertThat(browser.count("#batches tbody tr")).isPositive();
        browser.js("document.querySelector('#season-chart').scrollIntoView(); return true");
        Pictures.keep("plan", browser);
    }

    @Test
    void aFieldOfAMapFileIsDrawnInItsOutline(@TempDir Path folder) {
        browser.open(Pages.ofScenario("metric", folder));
        assertThat(browser.text("#map-lead")).contains("outlines");
        assertThat(browser.element("#map-chart g.field path").getDomAttribute("d"))
                .matches("M[-0-9.,]+(L[-0-9.,]+){4,}Z");
    }

    @Test
    void aClickOnADayOpensIt() {
        WebElement friday = browser.element("#season-chart g.day[data-day='4']");
        friday.click();
        assertThat(browser.text("#day-title")).isEqualTo("Friday, April 23, 2027");
        assertThat(friday.getDomAttribute("aria-pressed")).isEqualTo("true");
        assertThat(browser.count("#season-chart g.day[aria-pressed=true]")).isEqualTo(1);
    }

    @Test
    void aDayWithoutWorkSaysSo() {
        browser.element("#season-chart g.day[data-day='6']").click();
        assertThat(browser.text("#day-chart")).contains("Closed");
    }

    @Test
    void choosingALoadShowsAllThatBelongsToItAndNothingElse() {
        browser.element("#day-loads button[data-index='1']").click();
        assertThat(chosenWork()).isEqualTo(browser.js("""
                const load = plan.loads[1];
                return plan.work.filter((a) => dayOf(a.start) === choice.day() && (a.load === 1 || load.batches.includes(a.batch)))
                    .map((a) => a.what).sort()"""));
        assertThat(chosenWork()).asString().contains("extract", "fill", "plant", "transfer");
        assertThat(browser.count("#day-chart g.mark.chosen.dim")).isZero();
        assertThat(browser.text("#chosen-text")).contains("Load L0002", "last drop", "use by");
        assertThat(browser.count("#loads tbody tr.chosen")).isEqualTo(1);

        browser.element("#chosen-clear").click();
        assertThat(browser.count(".chosen, .dim")).isZero();
        assertThat(browser.element("#chosen").isDisplayed()).isFalse();
    }

    @Test
    void aClickOnWorkChoosesItsLoad() {
        browser.element("#day-chart g.mark.transfer").click();
        assertThat(browser.text("#chosen-text")).startsWith("Load L0001");
        assertThat(browser.count("#day-chart line.thread.chosen")).isEqualTo(1);
    }

    @Test
    void choosingAFieldShowsItsPlantingAndItsLoadsOnEveryView() {
        browser.element("#map-chart g.field[data-field='2']").click();
        String field = (String) browser.js("return plan.fields[2].id");
        assertThat(browser.text("#chosen-text")).startsWith("Field " + field);
        browser.js("choice.openDay(choice.firstDay()); return true");
        assertThat(browser.count("#day-chart g.mark.plant.chosen"))
                .isEqualTo(browser.count("#day-chart g.mark.plant[data-field='2']"))
                .isPositive();
        assertThat(browser.all("#fields tbody tr.chosen th").stream().map(WebElement::getText))
                .containsExactly(field);
        assertThat(browser.count("#loads tbody tr.chosen"))
                .isEqualTo(((Long) browser.js("return plan.fields[2].loads.size")).intValue());
    }

    @Test
    void theDayOfWhatIsChosenIsOneClickAway() {
        browser.element("#fields tbody tr[data-index='7'] button").click();
        browser.element("#chosen-day").click();
        assertThat(browser.count("#day-chart g.mark.plant[data-field='7'].chosen"))
                .isPositive();
    }

    @Test
    void pointingAtWorkTellsItsAmounts() {
        browser.js(
                "arguments[0].dispatchEvent(new PointerEvent('pointerenter')); return true",
                browser.element("#day-chart g.mark.fill"));
        assertThat(browser.text("#day-readout")).contains("fills with load L0001", "gal", "use by");
    }

    @Test
    void everyChartIsOneStopOfTheTabKeyAndArrowsGoInside() {
        for (String chart : List.of(
                "#season-chart",
                "#day-chart",
                "#map-chart",
                "#curve-compost",
                "#curve-water",
                "#curve-freshness",
                "#curve-progress")) {
            assertThat(browser.count(chart + " [role=button][tabindex='0']"))
                    .as(chart)
                    .isEqualTo(1);
        }
        browser.js("document.querySelector('#season-chart [tabindex=\"0\"]').focus(); return true");
        press(Keys.ARROW_RIGHT);
        press(Keys.ENTER);
        assertThat(browser.text("#day-title")).isEqualTo("Friday, April 23, 2027");

        browser.js("document.querySelector('#day-chart [tabindex=\"0\"]').focus(); return true");
        press(Keys.END);
        press(Keys.ARROW_DOWN);
        assertThat(focus()).startsWith("R1, ");
        press(Keys.HOME);
        press(Keys.ARROW_UP);
        assertThat(focus()).startsWith("P1, ");
        press(Keys.ARROW_RIGHT);
        press(Keys.SPACE);
        assertThat(browser.element("#chosen").isDisplayed()).isTrue();
    }

    @Test
    void pointsOfTheCurvesAreReachedAndToldWithTheKeyboard() {
        browser.js("document.querySelector('#curve-compost [tabindex=\"0\"]').focus(); return true");
        press(Keys.END);
        assertThat(browser.text("#curve-compost .readout"))
                .contains("left", "used so far")
                .isEqualTo(focus());

        browser.js("document.querySelector('#curve-water [tabindex=\"0\"]').focus(); return true");
        press(Keys.HOME);
        press(Keys.ENTER);
        assertThat(browser.js("return choice.day()")).isEqualTo(0L);
        assertThat(browser.text("#curve-water .readout")).contains("gal drawn");

        browser.js("document.querySelector('#curve-freshness [tabindex=\"0\"]').focus(); return true");
        press(Keys.HOME);
        press(Keys.ARROW_RIGHT);
        press(Keys.ENTER);
        assertThat(browser.text("#curve-freshness .readout")).startsWith("Load L0002 of P1: ");
        assertThat(browser.text("#chosen-text")).startsWith("Load L0002: ");

        browser.js("document.querySelector('#curve-progress [tabindex=\"0\"]').focus(); return true");
        press(Keys.END);
        assertThat(browser.text("#curve-progress .readout")).contains("ac of corn planted", "ac of beans planted");
    }

    @Test
    void tablesAreSortedAndSearched() {
        browser.all("#fields thead button").get(3).click();
        assertThat(column("#fields", 4)).first().isEqualTo("45.0 ac");
        browser.all("#fields thead button").get(3).click();
        assertThat(column("#fields", 4)).first().isEqualTo("120.0 ac");
        assertThat(browser.count("#fields th[aria-sort=descending]")).isEqualTo(1);

        browser.element("#fields input").sendKeys("beans hill");
        assertThat(column("#fields", 2)).containsExactly("Hill quarter");
        assertThat(browser.text("#fields [role=status]")).isEqualTo("1 of 1 shown");
    }

    @Test
    void colourByFieldIsOneClickAway() {
        assertThat(browser.text("#season-legend")).contains("corn", "beans");
        browser.all("#season-tools button").get(1).click();
        assertThat(browser.text("#season-legend")).doesNotContain("beans");
        assertThat(browser.count("#season-chart rect.part[data-field]")).isPositive();
    }

    private Object chosenWork() {
        return browser.js(
                "return [...document.querySelectorAll('#day-chart g.mark.chosen')].map((m) => m.__data__.what).sort()");
    }

    private List<String> column(String table, int number) {
        return browser.all(table + " tbody tr > :nth-child(" + number + ")").stream()
                .map(WebElement::getText)
                .toList();
    }

    private void press(Keys key) {
        browser.driver().switchTo().activeElement().sendKeys(key);
    }

    private String focus() {
        return String.valueOf(browser.driver().switchTo().activeElement().getDomAttribute("aria-label"));
    }
}

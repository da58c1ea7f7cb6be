package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.print.PrintOptions;

/** The page for people with a phone, in the dark, on paper, or with a screen reader. */
@InBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ReadersIT {
    private Path page = Path.of("");
    private Path wet = Path.of("");
    private Browser browser;

    @BeforeAll
    void makePages(Browser tab, @TempDir Path folder) {
        browser = tab;
        page = Pages.ofScenario("first-season", folder.resolve("first-season"));
        wet = Pages.ofScenario("spring", folder.resolve("spring"));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 768, 1280})
    void nothingScrollsThePageSideways(int width) {
        browser.size(width, 800);
        browser.open(wet);
        browser.element("#day-loads button").click();
        assertThat(browser.js("return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .isEqualTo(0L);
    }

    @Test
    void onAPhoneNoTextOfTheMapIsCutOffByItsEdge() {
        browser.size(400, 800);
        browser.open(wet);
        browser.js("""
                plan.fields.forEach((field) => { field.id += ' by the river'; });
                plan.points.concat(plan.places).forEach((spot) => { spot.id += ' behind the mill'; });
                return true""");
        browser.size(390, 800);
        browser.await("document.querySelector('#map-chart').textContent.includes('mill')");
        assertThat(browser.js("""
                const map = document.querySelector('#map-chart').getBoundingClientRect();
                return [...document.querySelectorAll('#map-chart text')]
                    .filter((text) => { const box = text.getBoundingClientRect(); return box.left < map.left || box.right > map.right; })
                    .map((text) => text.textContent)""")).isEqualTo(List.of());
    }

    @Test
    void onAPhoneTheWordsBesideWhatLimitsTheSeasonAreWhole() {
        browser.size(390, 800);
        browser.open(wet);
        assertThat((Boolean) browser.js("""
                const words = document.querySelector('#limits-how');
                return words.textContent.startsWith('What would change')
                    && words.getBoundingClientRect().right <= document.documentElement.clientWidth""")).isTrue();
    }

    @Test
    void onAWideScreenEveryColumnOfTheTablesShows() {
        browser.size(1400, 800);
        browser.open(wet);
        assertThat(browser.js("""
                return [...document.querySelectorAll('#fields .wide, #loads .wide, #batches .wide')]
                    .map((box) => box.scrollWidth - box.clientWidth)""")).isEqualTo(List.of(0L, 0L, 0L));
    }

    @Test
    void onAPhoneTheDayMovesToWhatIsChosen() {
        browser.size(360, 800);
        browser.open(page);
        browser.click(browser.all("#day-loads button").get(3));
        assertThat(browser.js("return document.querySelector('#day-chart .scroll').scrollLeft"))
                .asString()
                .isNotEqualTo("0");
        assertThat((Boolean) browser.js("""
                const mark = document.querySelector('#day-chart g.mark.chosen').getBoundingClientRect();
                return mark.left >= 0 && mark.left < document.documentElement.clientWidth""")).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"light,1280", "dark,1280", "light,360", "dark,360"})
    void axeFindsNothing(String light, int width) {
        browser.size(width, 900);
        browser.prefers(light);
        browser.open(wet);
        browser.element("#day-loads button").click();
        assertThat(Axe.findings(browser)).isEmpty();
    }

    @Test
    void theSwitchGoesBeforeTheSystemsSetting() {
        browser.size(1280, 900);
        browser.prefers("dark");
        browser.open(page);
        assertThat(background()).isEqualTo("rgb(25, 24, 21)");
        browser.js(
                "const s = document.getElementById('theme'); s.value = 'light'; s.dispatchEvent(new Event('change')); return true");
        assertThat(background()).isEqualTo("rgb(246, 242, 233)");
    }

    private Object background() {
        return browser.js("return getComputedStyle(document.body).backgroundColor");
    }

    @Test
    void printedItFitsPagesAndLeavesControlsOut() {
        browser.size(1280, 900);
        browser.open(page);
        byte[] pdf = Base64.getDecoder()
                .decode(browser.driver().print(new PrintOptions()).getContent());
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");

        browser.js("window.dispatchEvent(new Event('beforeprint')); return true");
        for (String chart : List.of("#season-chart", "#day-chart", "#map-chart")) {
            // A4 and US Letter upright are at least 210 mm, 793 px at 96 to the inch, less margins of 1 cm on both
            // sides
            assertThat(browser.all(chart + " svg").stream()
                            .mapToInt(svg -> svg.getSize().getWidth())
                            .sum())
                    .as(chart)
                    .isBetween(600, 718);
        }
        browser.command("Emulation.setEmulatedMedia", Map.of("media", "print"));
        assertThat(browser.element("nav").isDisplayed()).isFalse();
        assertThat(browser.element("#day-tools").isDisplayed()).isFalse();
        assertThat(browser.element("#fields table").isDisplayed()).isTrue();
        assertThat(browser.element("#loads").isDisplayed()).isFalse();
        assertThat(browser.text(".on-paper")).contains("Loads and batches", "Crew sheets", "loads.csv");
        assertThat(browser.element(".cautions").isDisplayed()).isTrue();
        browser.command("Emulation.setEmulatedMedia", Map.of("media", ""));
    }
}

package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;

/**
 * Names come from files of others; on the page they are text and nothing else. The season has the usual rates, drum and batch: common
 * practice, no source.
 */
@InBrowser
final class HostileNamesIT {
    private static final String SCRIPT = "</script><script>document.hacked = 1</script><!-- [[data]] ]]>";
    private static final String IMAGE = "<img src=x onerror='document.hacked = 1'>";
    private static final String QUOTES = "& \"quoted\" 'it' \\u003c ${x} `y` </title>";
    private static final String LETTERS = "\uD83C\uDF3D \u05E9\u05D3\u05D4 \u0639\u0631\u0628 =1+1";

    private static final String SEASON = """
            season: {name: %s, first: 2027-04-19, last: 2027-04-30, timezone: UTC}
            hours: ["07:00/20:00"]
            places: {yard: {lat: 41.0, lon: -97.0}}
            recipes: {standard: {mix: 20 gal/ac, compost: 2 lb/ac, hold: 5 h}}
            crops: {corn: {window: 2027-04-20/2027-05-01}}
            fields:
              N40: {name: %s, area: 42 ac, lat: 41.02, lon: -97.01, crop: corn}
              S40: {name: %s, area: 42 ac, lat: 41.03, lon: -97.01, crop: corn}
              W40: {name: %s, area: 42 ac, lat: 41.04, lon: -97.01, crop: corn}
            planters:
              P1: {width: 40 ft, rowSpacing: 30 in, speed: 5 mph, fieldEfficiency: 0.65, tank: 600 gal, roadSpeed: 15 mph,
                   fillSetup: 6 min, moveTime: 12 min, at: yard}
            rigs:
              R1: {drum: 40 gal, batchCompost: 30 lb, batchTime: 15 min, cleanTime: 3 min, nurseTank: 1200 gal,
                   transferRate: 60 gal/min, roadSpeed: 35 mph, extractAt: field, at: yard}
            waterPoints: {well: {lat: 41.01, lon: -97.02, flow: 40 gal/min, hoses: 1}}
            compost: {windrow: {mass: 4000 lb, from: 2027-04-01}}
            """;

    @Test
    void aNameThatWouldBeMarkupOrScriptIsShownAsItIsWritten(Browser browser, @TempDir Path folder) throws Exception {
        Files.writeString(
                folder.resolve("season.yaml"),
                SEASON.formatted(quoted(SCRIPT), quoted(IMAGE), quoted(QUOTES), quoted(LETTERS)));
        browser.open(Pages.of(folder, folder.resolve("plan")));
        for (WebElement field : browser.all("#fields tbody button")) {
            browser.click(field);
        }

        assertThat(browser.js("return document.hacked === undefined")).isEqualTo(true);
        assertThat(browser.js("return document.querySelector('h1').textContent"))
                .isEqualTo(SCRIPT);
        assertThat(browser.js("return document.title")).isEqualTo("Season plan: " + SCRIPT);
        assertThat(
                        browser.js(
                                "return [...document.querySelectorAll('#fields tbody td:nth-child(2)')].map((e) => e.textContent)"))
                .isEqualTo(List.of(IMAGE, QUOTES, LETTERS));
        assertThat(browser.js("return document.getElementById('chosen-text').textContent"))
                .asString()
                .contains(LETTERS);
        assertThat(browser.count("img")).isZero();
        assertThat(browser.count("script")).isEqualTo(2);
        assertThat(browser.console()).isEmpty();
    }

    /** As YAML's double-quoted text. */
    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}

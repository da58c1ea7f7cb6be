package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.command.Freshfurrow;
import freshfurrow.desk.Desk;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.support.ui.Select;

/** One rig or two, asked by clicks. */
@InBrowser
final class DeskComparisonIT {
    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        season = Desks.copyOf("weather-spring", folder);
        desk = Desks.open(season, "2027-04-20T06:00");
        browser = tab.openDesk(desk.link());
        browser.goTo("ask");
    }

    @AfterEach
    void closeDesk() {
        assertThat(browser.console()).isEmpty();
        desk.close();
    }

    private void start(String springs) {
        new Select(browser.element("#compare-with")).selectByVisibleText("one more rig like R1");
        new Select(browser.element("#springs")).selectByVisibleText(springs);
        browser.click(browser.element("#compare-start"));
        browser.await("document.querySelector('#comparison').dataset.state === 'underway'");
    }

    @Test
    void oneRigMoreOverSpringsIsToldAsTheCommandTellsIt() throws InterruptedException {
        start("20 springs");
        while (state().equals("underway")) {
            Thread.sleep(200);
        }
        assertThat(state()).isEqualTo("made");
        List<String> shown = String.valueOf(browser.js("return document.querySelector('#comparison pre').textContent"))
                .lines()
                .filter(line -> !line.isBlank())
                .toList();
        assertThat(shown).hasSizeGreaterThan(5);
        assertThat(printed().lines()).containsSubsequence(shown);
        browser.driver().switchTo().frame(browser.element("#comparison iframe"));
        browser.await("document.body !== null && document.body.textContent.includes('second-R1')");
        browser.driver().switchTo().defaultContent();
    }

    private String state() {
        return String.valueOf(browser.js("return document.querySelector('#comparison').dataset.state"));
    }

    /** By the command, with the variant that the desk wrote. */
    private String printed() {
        StringWriter out = new StringWriter();
        int code = Freshfurrow.run(
                new PrintWriter(out),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                "compare",
                season.toString(),
                "--variant",
                season.resolve("second-R1.json").toString(),
                "--springs",
                "20",
                "--steps",
                "5000",
                "--seed",
                "1",
                "--out",
                folder.resolve("compared").toString());
        assertThat(code).isZero();
        return out.toString();
    }

    @Test
    void aComparisonIsStoppedAndSaysThatNothingWasWritten() {
        start("300 springs");
        browser.click(browser.element("#compare-stop"));
        browser.await("document.querySelector('#comparison').dataset.state === 'stopped'");
        assertThat(browser.text("#comparison")).contains("The comparison was stopped. Nothing of it was written.");
        assertThat(season.resolve("second-R1.json")).doesNotExist();
        assertThat(browser.count("#compare-start")).as("to be asked again").isEqualTo(1);
    }
}

package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.desk.Desk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A season file that is changed in an editor while its forms are open. */
@InBrowser
final class DeskConflictIT {
    @TempDir
    private Path folder = Path.of("");

    private Path file = Path.of("");
    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        Path season = Desks.copyOf("first-season", folder);
        file = season.resolve("season.yaml");
        desk = Desks.open(season, "2027-04-22T11:00");
        browser = tab.openDesk(desk.link());
        browser.click(browser.element("[data-section=planters]"));
        browser.click(browser.element("[data-entry=P1] summary"));
        browser.await("document.querySelector(\"[data-path='planters.P1.tank']\") !== null");
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private void typeTank(String text) {
        WebElement tank = browser.element("[data-path='planters.P1.tank']");
        tank.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    @Test
    void bothTextsAreShownAndTheWorkGoesOnWithTheFileAsItIsNow() throws IOException {
        String outside = Files.readString(file).replace("tank: 600 gal", "tank: 700 gal");
        Files.writeString(file, outside);
        typeTank("800");
        browser.await("document.querySelector('#see-now') !== null");
        assertThat(browser.text("#missing"))
                .contains("season.yaml was changed elsewhere meanwhile", "nothing was written");
        assertThat(browser.text(".both figure:nth-child(1) pre")).contains("tank: 700 gal");
        assertThat(browser.text(".both figure:nth-child(2) pre")).contains("tank: 800 gal");
        assertThat(file).hasContent(outside);
        Pictures.keep("desk-conflict", browser);

        browser.click(browser.element("#see-now"));
        browser.await("document.querySelector('#see-now') === null");
        assertThat(browser.element("[data-path='planters.P1.tank']").getAttribute("value"))
                .isEqualTo("700 gal");
        typeTank("800");
        browser.awaitSaid("Saved");
        assertThat(file).hasContent(outside.replace("tank: 700 gal", "tank: 800 gal"));
    }

    @Test
    void takingBackOverWhatWasWrittenOutsideShowsBothTextsToo() throws IOException {
        typeTank("800");
        browser.awaitSaid("Saved");
        String outside = Files.readString(file) + "# from an editor\n";
        Files.writeString(file, outside);
        browser.click(browser.element("#undo"));
        browser.await("document.querySelector('#see-now') !== null");
        assertThat(browser.text(".both figure:nth-child(1) pre")).contains("# from an editor");
        assertThat(browser.text(".both figure:nth-child(2) pre")).contains("tank: 600 gal");
        assertThat(file).hasContent(outside);
    }

    @Test
    void anotherWindowIsToldOfAChange() {
        browser.js("""
                return fetch('/api/season').then((response) => response.json()).then(({ files }) => fetch('/api/season/change',
                    { method: 'POST', headers: { 'Content-Type': 'application/json' },
                      body: JSON.stringify({ files, edits: [{ do: 'set', path: ['planters', 'P1', 'tank'], value: '700 gal' }] }) }))
                    .then((response) => response.status)""");
        browser.awaitSaid("The season was changed elsewhere");
    }
}

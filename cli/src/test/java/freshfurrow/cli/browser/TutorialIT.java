package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.documents.Document;
import freshfurrow.desk.Desk;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.support.ui.Select;

/** docs/tutorial.md, step by step: what it says to press and to look for is there, and its pictures are made here. */
@InBrowser
final class TutorialIT {
    private static final Document TUTORIAL = Document.read(Path.of("docs", "tutorial.md"));

    private final StringBuilder seen = new StringBuilder();

    @TempDir
    private Path folder = Path.of("");

    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        desk = Desks.open(folder.resolve("my-farm"), "2027-04-18T18:00");
        browser = tab.openDesk(desk.link());
    }

    @AfterEach
    void closeDesk() {
        assertThat(browser.console()).isEmpty();
        desk.close();
    }

    @Test
    void whoFollowsItHasAPlanAndASheet() {
        look();
        press("#units-us");
        type("season.name", "First season of my own");
        browser.js("document.querySelector(\"[data-path='season.first']\").focus(); return true");
        browser.element("[data-path='season.first']").sendKeys("04192027");
        browser.element("[data-path='season.last']").sendKeys("05292027");
        type("season.timezone", "America/Chicago");
        type("hours", "7-12, 12:30 to 8 pm");
        Pictures.keep("tutorial-season", browser);
        next();
        type("places.yard", "41, -97");
        browser.await("document.querySelector('#map-places') !== null");
        next();
        browser.element("#paste").sendKeys(pasted().strip().replace("\n", Keys.ENTER));
        browser.await("document.querySelector('#use-table') !== null");
        look();
        press("#use-table");
        browser.await("document.querySelectorAll('#field-rows tbody tr').length === 3");
        Pictures.keep("tutorial-fields", browser);
        for (int step = 0; step < 5; step++) {
            next();
        }
        browser.await("document.querySelector('#begin-text').textContent.includes('North-forty') || "
                + "document.querySelector('#part').dataset.problems === '0'");
        look();
        Pictures.keep("tutorial-look", browser);
        press("#begin-write");
        browser.await(
                "document.documentElement.dataset.shown === 'season' && document.querySelector('#section') !== null");
        look();
        assertThat(folder.resolve("my-farm").resolve("season.yaml")).exists();
        assertThat(folder.resolve("my-farm").resolve("fields.csv")).exists();

        plan();
        Pictures.keep("tutorial-plan", browser);
        sheet();

        assertThat(TUTORIAL.bold()).hasSizeGreaterThan(10).allSatisfy(words -> assertThat(seen)
                .contains(words));
    }

    private static String pasted() {
        return TUTORIAL.blocks().stream()
                .filter(block -> block.kind().equals("text"))
                .map(Document.Block::text)
                .findFirst()
                .orElseThrow();
    }

    private void plan() {
        browser.goTo("plan");
        new Select(browser.element("#plan-time")).selectByValue("10");
        look();
        press("#plan-whole");
        browser.await("document.querySelector('#part').dataset.state === 'proposed'");
        look();
        press("#plan-take");
        browser.await("document.querySelector('#part').dataset.state === 'still'");
        browser.await(
                "document.querySelector('iframe.plan').contentDocument.documentElement.dataset.drawn !== undefined");
    }

    private void sheet() {
        browser.goTo("ask");
        new Select(browser.element("#sheet-day")).selectByIndex(1);
        look();
        Set<String> before = new TreeSet<>(browser.driver().getWindowHandles());
        press("#sheets");
        Set<String> opened = new TreeSet<>(browser.driver().getWindowHandles());
        opened.removeAll(before);
        String desks = browser.driver().getWindowHandle();
        browser.driver().switchTo().window(opened.iterator().next());
        browser.await(
                "document.readyState === 'complete' && document.body.textContent.includes('First season of my own')");
        Pictures.keep("tutorial-sheet", browser);
        browser.driver().close();
        browser.driver().switchTo().window(desks);
    }

    private void next() {
        look();
        press("#step-next");
        look();
    }

    private void press(String button) {
        browser.click(browser.element(button));
    }

    private void type(String path, String text) {
        browser.element("[data-path='" + path + "']").sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    private void look() {
        seen.append(browser.driver().findElement(By.tagName("body")).getText()).append('\n');
    }
}

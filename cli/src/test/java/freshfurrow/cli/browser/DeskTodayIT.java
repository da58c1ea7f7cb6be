package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.desk.Desk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A crew's phone: the day's work, and what is tapped on it. */
@InBrowser
final class DeskTodayIT {
    private static final String NOW = "2027-04-22T11:00";

    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        season = Desks.plannedCopyOf("first-season", folder);
        desk = Desks.openShared(season, NOW, 0);
        browser = tab;
        browser.size(390, 800);
        browser.openDesk(Desks.crewLink(desk, season));
        browser.js("localStorage.clear(); return true");
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private List<String> log() throws IOException {
        return Files.readAllLines(season.resolve("log.csv"));
    }

    private String last() throws IOException {
        return log().get(log().size() - 1);
    }

    private void type(String css, String text) {
        WebElement input = browser.element(css);
        browser.js(
                "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('change', { bubbles: true })); return true",
                input,
                text);
    }

    /** Opens one of what happens besides, fills it in, and logs it. */
    private void say(String id, String css, String text) {
        browser.click(browser.element("[data-say=" + id + "] summary"));
        if (!css.isEmpty()) {
            type(css, text);
        }
        browser.js("document.querySelector('#said').textContent = ''; return true");
        browser.click(browser.element("[data-say=" + id + "] .chief"));
        browser.awaitSaid("Logged");
    }

    @Test
    void aCrewSeesTheDayAndNothingElse() {
        assertThat(browser.all("#parts a").stream().map(WebElement::getText)).containsExactly("Today");
        assertThat(browser.element("#end").isDisplayed()).isFalse();
        assertThat(browser.count("#again")).isZero();
        assertThat(browser.console()).isEmpty();
    }

    @Test
    void whatWasDoneAsPlannedIsOneTap() throws IOException {
        int open = browser.count("[data-done]");
        browser.click(browser.element("[data-done]"));
        browser.awaitSaid("Logged");
        browser.await("document.querySelectorAll('[data-done]').length === " + (open - 1));
        assertThat(log()).hasSize(2);
        assertThat(browser.text("#entries")).isNotEmpty();
        assertThat(browser.console()).isEmpty();
    }

    @Test
    void whatWasDoneOtherwiseIsLoggedWithItsAmountAndTime() throws IOException {
        browser.click(browser.element("[aria-label^=planter] [data-otherwise]"));
        type(".otherwise input[id^=amount-]", "12.5");
        type(".otherwise input[id^=at-]", "2027-04-22T10:40");
        browser.click(browser.element(".otherwise .chief"));
        browser.awaitSaid("Logged");
        assertThat(last()).contains("2027-04-22T10:40", "planted", "12.5 ac");
    }

    @Test
    void whatWasNotDoneIsLoggedWithWhatCameBetween() throws IOException {
        browser.click(browser.element("[aria-label^=planter] [data-not-done]"));
        type(".otherwise input[id^=behind-]", "50");
        browser.click(browser.element(".otherwise .tools button"));
        browser.awaitSaid("Logged");
        assertThat(last()).contains("2027-04-22T11:00", "behind", "50 min");
    }

    @Test
    void whenRainStopsWorkWhatIsLeftInTheTankIsAsked() throws IOException {
        browser.click(browser.element("[data-say=stopped] summary"));
        browser.await("document.querySelector('#left-0') !== null");
        assertThat(browser.element("#left-0").getAttribute("value")).endsWith(" gal");
        assertThat(browser.element("[data-say=stopped]").getText()).contains("Left in P1's tank, of load L000");
        assertThat(browser.sideways()).isEqualTo(0L);
        browser.element("#left-0").sendKeys(Keys.chord(Keys.CONTROL, "a"), "5000");
        browser.click(browser.element("[data-say=stopped] .chief"));
        browser.awaitSaid("No 5000 can be left in P1's tank");
        browser.element("#left-0").sendKeys(Keys.chord(Keys.CONTROL, "a"), "150");
        type("#stopped-rain", "0.4");
        Pictures.keep("desk-stopped", browser);
        browser.click(browser.element("[data-say=stopped] .chief"));
        browser.awaitSaid("Logged");
        assertThat(last()).contains("2027-04-22T11:00", "rain", "0.4 in");
        assertThat(log()).anySatisfy(line -> assertThat(line).contains("2027-04-22T11:00", "planted", "P1,L000"));
        assertThat(Axe.findings(browser)).isEmpty();
    }

    @Test
    void whatHappensBesidesIsTapped() throws IOException {
        say("rain", "#rain", "0.4");
        assertThat(last()).contains("rain", "0.4 in");
        say("down", "#down-until", "2027-04-22T15:00");
        assertThat(last()).contains("down", "2027-04-22T15:00");
        say("behind", "#behind-by", "1.5 h");
        assertThat(last()).contains("behind", "1.5 h");
        say("unfit", "#unfit-until", "2027-04-25");
        assertThat(last()).contains("unfit", "2027-04-25");
        say("fit", "#fit", "S110");
        assertThat(last()).contains("fit", "S110");
        say("note", "#note", "the gate sticks, \"again\"");
        assertThat(browser.text("#entries")).contains("the gate sticks, \"again\"");
        assertThat(log()).hasSize(7);
        assertThat(browser.console()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1280})
    void whatIsBeingTypedStaysWhenATapDrawsThePageAnew(int width) throws IOException {
        browser.size(width, 800);
        browser.click(browser.element("[data-say=note] summary"));
        WebElement note = browser.element("#note");
        note.sendKeys("the gate sticks", Keys.ARROW_LEFT, Keys.ARROW_LEFT);
        browser.js("document.querySelector('[data-say=down] summary').click(); return true");
        new Select(browser.element("#down")).selectByValue("R1");
        browser.js("document.querySelector('#note').focus(); return true");
        int open = browser.count("[data-done]");
        browser.js("document.querySelector('[data-done]').click(); return true"); // as another finger does, without
        // leaving the note
        browser.await("document.querySelectorAll('[data-done]').length === " + (open - 1));
        browser.awaitSaid("Logged");
        assertThat(browser.js("return document.activeElement.id")).isEqualTo("note");
        browser.driver().switchTo().activeElement().sendKeys("!");
        assertThat(browser.element("#note").getAttribute("value")).isEqualTo("the gate stic!ks");
        assertThat(browser.element("#down").getAttribute("value")).isEqualTo("R1");
        assertThat(browser.count("[data-say=note][open]")).isEqualTo(1);

        browser.click(browser.element("[data-say=note] .chief"));
        browser.await("document.querySelectorAll('#entries li').length === 2");
        assertThat(last()).contains("the gate stic!ks");
        assertThat(browser.element("#note").getAttribute("value"))
                .as("what is logged is not kept")
                .isEmpty();
        assertThat(browser.element("#down").getAttribute("value")).isEqualTo("R1");
    }

    @Test
    void anAmountThatIsBeingTypedStaysWhenAnotherStepIsTapped() {
        browser.click(browser.element("[aria-label^=planter] [data-otherwise]"));
        WebElement amount = browser.element(".otherwise input[id^=amount-]");
        amount.sendKeys(Keys.chord(Keys.CONTROL, "a"), "12.5");
        String id = amount.getAttribute("id");
        browser.click(browser.element("[aria-label^=rig] [data-done]"));
        browser.await("document.querySelector('#entries') !== null");
        assertThat(browser.element("#" + id).getAttribute("value")).isEqualTo("12.5");
    }

    @Test
    void aTapByMistakeIsVoided() throws IOException {
        say("fit", "", "");
        browser.click(browser.element("[data-void='1']"));
        browser.awaitSaid("Void now.");
        assertThat(last()).contains("void", ",1");
        assertThat(browser.count("[data-void='1']")).isZero();
    }

    @Test
    void whatIsRefusedIsShownAndNotLogged() {
        browser.click(browser.element("[data-say=rain] summary"));
        type("#rain", "much");
        browser.click(browser.element("[data-say=rain] .chief"));
        browser.awaitSaid("much");
        assertThat(browser.text("#waiting")).contains("Not logged", "much");
        assertThat(browser.element("[data-say=rain][open] #rain").getAttribute("value"))
                .as("to be corrected")
                .isEqualTo("much");
        assertThat(season.resolve("log.csv")).doesNotExist();
        browser.click(browser.element("#waiting button"));
        assertThat(browser.text("#waiting")).isEmpty();
    }

    @Test
    void aTapWhileTheDeskIsAwayIsKeptAndSentOnce() throws IOException {
        int port = Desks.port(desk);
        int open = browser.count("[data-done]");
        desk.close();
        browser.click(browser.element("[data-done]"));
        browser.awaitSaid("The tap is kept here");
        assertThat(browser.text("#waiting")).isEqualTo("One tap waits to be sent.");
        assertThat(browser.count("[data-done]"))
                .as("what waits is not tapped again")
                .isEqualTo(open - 1);
        assertThat(browser.text(".is-waiting .state")).isEqualTo("waits to be sent");

        desk = Desks.openShared(season, NOW, port);
        browser.await("document.querySelector('#waiting').textContent === ''");
        browser.await("document.querySelector('.is-logged') !== null");
        assertThat(log()).hasSize(2);
        browser.driver().navigate().refresh();
        browser.await("document.querySelector('.is-logged') !== null");
        assertThat(log()).hasSize(2);
    }

    @Test
    void aTapIsKeptOverAReloadOfThePage() throws IOException {
        browser.offline(true);
        browser.click(browser.element("[data-done]"));
        browser.awaitSaid("The tap is kept here");
        browser.offline(false);
        browser.driver().navigate().refresh();
        browser.await("document.querySelector('.is-logged') !== null");
        assertThat(log()).hasSize(2);
    }

    @Test
    void aBrowserThatKeepsNothingSendsTapsWhileItIsOpen() throws IOException {
        browser.js("Storage.prototype.setItem = () => { throw new Error('full'); }; return true");
        browser.offline(true);
        browser.click(browser.element("[data-done]"));
        browser.awaitSaid("The tap is kept here");
        browser.offline(false);
        browser.await("document.querySelector('.is-logged') !== null");
        assertThat(log()).hasSize(2);
    }

    @Test
    void whatOthersLogIsShown() throws IOException {
        assertThat(browser.count("#entries")).isZero();
        browser.js("""
                return fetch('/api/log', { method: 'POST', headers: { 'Content-Type': 'application/json' },
                    body: JSON.stringify({ lines: [{ at: '2027-04-22T10:00', fact: 'note', note: 'from another phone' }] }) })
                    .then((response) => response.status)""");
        browser.await("document.querySelector('#entries') !== null");
        assertThat(browser.text("#entries")).contains("from another phone");
    }
}

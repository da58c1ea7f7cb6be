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
import org.openqa.selenium.Keys;

/** Each part of the desk by keyboard alone: where one is can be seen, and what is drawn anew leaves one there or near it. */
@InBrowser
final class DeskKeyboardIT {
    @TempDir
    private Path folder = Path.of("");

    private Browser browser;
    private Keyboard keys;
    private Desk desk;

    @BeforeEach
    void takeKeyboard(Browser tab) {
        browser = tab;
        keys = new Keyboard(tab);
    }

    @AfterEach
    void closeDesk() {
        assertThat(browser.console()).isEmpty();
        desk.close();
    }

    private Path openPlanned() {
        Path season = Desks.plannedCopyOf("first-season", folder);
        desk = Desks.openShared(season, "2027-04-22T11:00", 0);
        browser.openDesk(desk.link());
        return season;
    }

    private void goTo(String part) {
        browser.js("delete document.documentElement.dataset.shown; return true");
        keys.backTo("#parts a[href='#" + part + "']");
        keys.press(Keys.ENTER);
        browser.await("document.documentElement.dataset.shown === '" + part + "'");
        keys.assertSeen();
    }

    @Test
    void aSeasonIsBegun() {
        desk = Desks.open(folder, "2027-04-18T18:00");
        browser.openDesk(desk.link());
        keys.to("#units-us");
        keys.press(Keys.ENTER);
        keys.assertSeen();
        keys.to("[data-path='season.name']");
        keys.type("By keyboard");
        keys.to("#step-next");
        keys.press(Keys.SPACE);
        keys.to("[data-path='places.yard']");
        keys.type("41, -97");
        browser.await("document.querySelector('#begin-missing').textContent === 'Still missing: fields.'");
        keys.to("#step-next");
        keys.press(Keys.ENTER);
        keys.to("#paste");
        keys.press("Field,Acres,Lat,Lng,Crop", Keys.ENTER, "South flat,80,40.98,-96.99,corn");
        browser.await("document.querySelector('#use-table') !== null");
        keys.to("#use-table");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#use-table') === null");
        keys.assertSeen();
        keys.to("#add-field");
        keys.press(Keys.ENTER);
        assertThat(keys.isAt("[data-field='1'][data-cell=name]")).isTrue();
        keys.to("[aria-label='Take field 2 out']");
        keys.press(Keys.ENTER);
        keys.assertSeen();
        keys.backTo("[data-step=look]");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#part').dataset.problems === '0'");
        keys.to("#begin-write");
        keys.press(Keys.ENTER);
        browser.await("document.documentElement.dataset.shown === 'season'");
        browser.await("document.querySelector('#section') !== null");
        keys.to("#parts a[href='#plan'], [data-section=fields]");
        assertThat(folder.resolve("season.yaml")).content().contains("name: By keyboard\n");
        assertThat(folder.resolve("fields.csv")).content().contains("South flat,80,");
    }

    @Test
    void aValueIsChangedAndUndoneAndChangedAgain() throws IOException {
        Path season = Desks.copyOf("first-season", folder);
        desk = Desks.open(season, "2027-04-22T11:00");
        browser.openDesk(desk.link());
        Path file = season.resolve("season.yaml");
        String before = Files.readString(file);
        keys.to("[data-section=planters]");
        keys.press(Keys.SPACE);
        assertThat(keys.isAt("[data-section=planters]")).isTrue();
        keys.to("[data-entry=P1] summary");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector(\"[data-path='planters.P1.tank']\") !== null");
        assertThat(keys.isAt("[data-entry=P1] summary")).isTrue();
        keys.to("[data-path='planters.P1.tank']");
        keys.press("1,200", Keys.TAB);
        browser.awaitSaid("Saved");
        keys.assertSeen();
        String after = before.replace("tank: 600 gal", "tank: 1200 gal");
        assertThat(file).hasContent(after);

        keys.backTo("#undo");
        keys.press(Keys.ENTER);
        browser.awaitSaid("Undone");
        assertThat(keys.isAt("#undo")).isTrue();
        assertThat(file).hasContent(before);
        keys.press(Keys.ENTER);
        assertThat(browser.text("#said")).as("nothing is left to undo").isEqualTo("Undone.");
        keys.to("#redo");
        keys.press(Keys.SPACE);
        browser.awaitSaid("Redone");
        assertThat(keys.isAt("#redo")).isTrue();
        assertThat(file).hasContent(after);
    }

    @Test
    void anEntryIsAddedAndTakenOut() throws IOException {
        Path season = Desks.copyOf("first-season", folder);
        desk = Desks.open(season, "2027-04-22T11:00");
        browser.openDesk(desk.link());
        keys.to("[data-section=places]");
        keys.press(Keys.ENTER);
        keys.to("#new-id");
        keys.press("creek", Keys.TAB, Keys.ENTER);
        browser.await("document.querySelector('[data-entry=creek]') !== null");
        keys.assertSeen();
        keys.backTo("[data-entry=creek] .take-out");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('[data-entry=creek]') === null");
        keys.assertSeen();
        assertThat(season.resolve("season.yaml")).content().doesNotContain("creek:");
    }

    @Test
    void aPlanIsStartedStoppedAndTaken() {
        Path season = Desks.copyOf("first-season", folder);
        desk = Desks.open(season, "2027-04-20T06:00");
        browser.openDesk(desk.link());
        goTo("plan");
        keys.to("#plan-time");
        keys.press(Keys.ARROW_UP);
        assertThat(browser.element("#plan-time").getAttribute("value")).isEqualTo("10");
        keys.to("#plan-whole");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#part').dataset.state === 'underway'");
        keys.assertSeen();
        browser.await("document.querySelector('#underway .best').textContent.includes('Fills')");
        keys.to("#plan-stop");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#part').dataset.state === 'proposed'");
        keys.assertSeen();
        assertThat(keys.isAt("button")).as("a key held down takes nothing").isFalse();
        keys.to("#plan-take");
        keys.press(Keys.SPACE);
        browser.await("document.querySelector('#part').dataset.state === 'still'");
        keys.assertSeen();
        assertThat(season.resolve("plan/plan.json")).exists();
    }

    @Test
    void aFieldIsTriedAndKept() {
        Path season = openPlanned();
        goTo("try");
        keys.to(".board .chip");
        String field = String.valueOf(browser.js("return document.activeElement.dataset.field"));
        keys.press(Keys.ENTER, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ENTER);
        browser.await("document.querySelector('#trial').dataset.tried === '1'");
        assertThat(keys.isAt("[data-field=" + field + "]")).isTrue();
        keys.to("#spring-back");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#trial').dataset.tried === '0'");
        keys.assertSeen();
        keys.to("#try-day");
        keys.to("#try-it");
        keys.press(Keys.SPACE);
        browser.await("document.querySelector('#trial').dataset.tried === '1'");
        keys.assertSeen();
        keys.to("#keep");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#kept') !== null");
        keys.assertSeen();
        assertThat(season.resolve("season.yaml")).content().contains("fixed:");
    }

    @Test
    void workIsTickedOff() throws IOException {
        Path season = openPlanned();
        goTo("today");
        keys.to("[data-done]");
        String first = String.valueOf(browser.js("return document.activeElement.dataset.done"));
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#entries') !== null");
        assertThat(keys.isAt(".is-logged[data-step='" + first + "']"))
                .as("at the step, not at the next one's button")
                .isTrue();
        keys.assertSeen();
        keys.to("[data-done]");
        keys.press(Keys.SPACE);
        browser.await("document.querySelectorAll('#entries li').length === 2");
        keys.to("[data-otherwise]");
        keys.press(Keys.ENTER);
        assertThat(keys.isAt("[data-otherwise][aria-expanded=true]")).isTrue();
        keys.to(".otherwise .chief");
        keys.press(Keys.ENTER);
        browser.await("document.querySelectorAll('#entries li').length === 3");
        keys.assertSeen();
        keys.to("[data-say=rain] summary");
        keys.press(Keys.ENTER);
        keys.to("#rain");
        keys.press("0.4 in", Keys.TAB, Keys.ENTER);
        browser.await("document.querySelectorAll('#entries li').length === 4");
        assertThat(keys.isAt("[data-say=rain] summary")).isTrue();
        keys.to("[data-void='4']");
        keys.press(Keys.ENTER);
        browser.awaitSaid("Void now.");
        keys.assertSeen();
        keys.backTo("#day-after");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#part').dataset.day === '2027-04-23'");
        assertThat(keys.isAt("#day-after")).isTrue();
        assertThat(Files.readAllLines(season.resolve("log.csv"))).hasSize(6);
    }

    @Test
    void questionsAreAsked() {
        Path season = openPlanned();
        goTo("ask");
        keys.to("#why-field");
        keys.press(Keys.ARROW_DOWN);
        keys.to("#why-ask");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#why-answer pre') !== null");
        assertThat(keys.isAt("#why-ask")).isTrue();
        keys.to("[aria-label='What each bottleneck costs'], #sheet-day");
        keys.to("#export");
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#export-answer ul') !== null");
        assertThat(keys.isAt("#export")).isTrue();
        keys.press(Keys.ENTER);
        browser.await("document.querySelector('#export-replace') !== null");
        keys.to("#export-replace");
        keys.press(Keys.SPACE);
        browser.await("document.querySelector('#export-replace') === null");
        keys.assertSeen();
        assertThat(season.resolve("plan").toFile().list()).contains("plan.ics");
        assertThat(browser.console())
                .as("that files are there already")
                .singleElement()
                .asString()
                .contains("/api/export", "409");
    }

    @Test
    void phonesAreShownTheirWayAndTheDeskIsClosed() {
        openPlanned();
        goTo("share");
        assertThat(browser.text("#part h2")).isEqualTo("Share");
        List.of("#parts a[href='#season']", "#end", "#theme").forEach(keys::backTo);
        keys.backTo(".skip");
        keys.press(Keys.ENTER);
        assertThat(keys.isAt("#part")).isTrue();
        keys.backTo("#end");
        keys.press(Keys.ENTER);
        browser.await("document.body.textContent.includes('The desk is closed')");
    }
}

package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.cli.text.PlanTotals;
import freshfurrow.desk.Desk;
import freshfurrow.model.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A plan made at the desk. */
@InBrowser
final class DeskPlanIT {
    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        season = Desks.copyOf("first-season", folder);
        desk = Desks.open(season, "2027-04-20T06:00");
        browser = tab.openDesk(desk.link());
        browser.goTo("plan");
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    private void plan() {
        new Select(browser.element("#plan-time")).selectByValue("10");
        browser.click(browser.element("#plan-whole"));
        browser.await("document.querySelector('#part').dataset.state === 'underway'");
        browser.await("document.querySelector('#underway .best') !== null");
        browser.await("document.querySelector('#underway .best').textContent.includes('Fills')");
        browser.click(browser.element("#plan-stop"));
        browser.await("document.querySelector('#part').dataset.state === 'proposed'");
    }

    /** Answers to a path come when the test says so. */
    private void hold(String path) {
        browser.js("""
                const [held] = arguments;
                const now = window.fetch;
                const released = new Promise((done) => { window.release = done; });
                window.fetch = async (path, ...rest) => {
                    const answer = await now(path, ...rest);
                    if (path !== held) return answer;
                    await released;
                    setTimeout(() => { window.released = true; }, 200);
                    return answer;
                };
                return true""", path);
    }

    private void release() {
        browser.js("window.release(); return true");
        browser.await("window.released === true");
    }

    @Test
    void aNewPlanIsAProposalUntilItIsTaken() throws IOException {
        plan();
        assertThat(season.resolve("plan/plan.json")).doesNotExist();
        browser.click(browser.element("#plan-take"));
        browser.await("document.querySelector('#part').dataset.state === 'still'");
        assertThat(season.resolve("plan/plan.json")).hasSameTextualContentAs(season.resolve("plan/plans/001.json"));
        Plan taken = new GivenPlan(season.resolve("plan")).read();
        assertThat(browser.all("#totals tbody td").stream().map(WebElement::getText))
                .containsExactlyElementsOf(PlanTotals.of(taken).lines().stream()
                        .map(PlanTotals.Line::figure)
                        .toList());
        browser.driver().switchTo().frame(browser.element("iframe.plan"));
        browser.await("'drawn' in document.documentElement.dataset");
        assertThat(browser.text("h1")).isEqualTo("First season");
        browser.driver().switchTo().defaultContent();
        Pictures.keep("desk-plan", browser);
        assertThat(browser.console()).isEmpty();
        assertThat(Files.readString(season.resolve("plan/plan.html"))).contains("<h1 dir=\"auto\">First season</h1>");
    }

    @Test
    void anAnswerThatComesLateTakesNoPlanAway() {
        hold("/api/plan/start");
        plan();
        release();
        assertThat(browser.element("#part").getAttribute("data-state")).isEqualTo("proposed");
    }

    @Test
    void aPlanThatIsReadyWhileThePageIsOpenedIsShown() {
        browser.goTo("ask");
        hold("/api/plan");
        browser.click(browser.element("#parts a[href='#plan']"));
        browser.await("document.querySelector('#part').textContent === 'One moment…'");
        browser.js("""
                return fetch("/api/plan/start", { method: "POST", headers: { "Content-Type": "application/json" },
                    body: JSON.stringify({ seconds: 2, again: false }) }).then((response) => response.status)""");
        browser.await("document.querySelector('#part').dataset.state === 'proposed'");
        release();
        assertThat(browser.count("#plan-take")).isOne();
    }

    @Test
    void aPlanThatIsLeftChangesNothing() {
        plan();
        browser.click(browser.element("#plan-leave"));
        browser.await("document.querySelector('#part').dataset.state === 'still'");
        assertThat(season.resolve("plan")).doesNotExist();
        assertThat(browser.text("#part")).contains("The season has no plan yet.");
    }
}

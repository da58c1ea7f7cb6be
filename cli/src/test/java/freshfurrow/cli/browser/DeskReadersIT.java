package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.desk.Desk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** Every part of the desk for people with a phone, in the dark, with a screen reader, or without a mouse. */
@InBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class DeskReadersIT {
    private static final List<String> PARTS = List.of("season", "plan", "try", "today", "ask", "share");

    private Desk desk;
    private Browser browser;

    @BeforeAll
    void openDesk(Browser tab, @TempDir Path folder) {
        Path season = Desks.plannedCopyOf("first-season", folder);
        desk = Desks.openShared(season, "2027-04-22T11:00", 0);
        browser = tab.openDesk(desk.link());
    }

    @AfterAll
    void closeDesk() {
        assertThat(browser.console()).isEmpty();
        desk.close();
    }

    private void open(String part) {
        browser.goTo(part);
        if (part.equals("try")) {
            browser.js("document.querySelector('#try-it').click(); return true");
            browser.await("document.querySelector('#answer') !== null");
        }
        if (part.equals("today")) {
            browser.js("""
                    document.querySelectorAll('details').forEach((one) => { one.open = true; });
                    document.querySelector('[data-not-done]').click();
                    return true""");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 768, 1280})
    void nothingScrollsAPartSideways(int width) {
        browser.size(width, 800);
        List<String> wide = new ArrayList<>();
        for (String part : PARTS) {
            open(part);
            if (!browser.sideways().equals(0L)) {
                wide.add(part + " by " + browser.sideways());
            }
            Pictures.keep("desk-" + part + "-" + width, browser);
        }
        assertThat(wide).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"light,1280", "dark,390"})
    void axeFindsNothing(String light, int width) {
        browser.size(width, 900);
        browser.prefers(light);
        List<String> findings = new ArrayList<>();
        for (String part : PARTS) {
            open(part);
            Axe.findings(browser).forEach(finding -> findings.add(part + ": " + finding));
        }
        browser.prefers("light");
        assertThat(findings).isEmpty();
    }

    @Test
    void byKeyboardAloneOneSkipsToTheWorkAndGoesToAPart() {
        browser.size(1280, 900);
        browser.goTo("plan");
        browser.js("document.activeElement.blur(); document.querySelector('.skip').focus(); return true");
        browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
        assertThat(browser.js("return document.activeElement.id")).isEqualTo("part");
        assertThat(browser.js("return document.documentElement.dataset.shown")).isEqualTo("plan");
        browser.js("document.querySelector('#parts a[href=\"#ask\"]').focus(); return true");
        browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
        browser.await("document.documentElement.dataset.shown === 'ask'");
    }

    @Test
    void aPartThatIsSlowToReadIsNotDrawnOverTheNext() {
        browser.size(1280, 900);
        browser.goTo("plan");
        browser.js("""
                const real = window.fetch;
                window.fetch = async (path, ...rest) => {
                  const answer = await real(path, ...rest);
                  if (String(path) === '/api/ask') await new Promise((done) => setTimeout(done, 600));
                  return answer;
                };
                location.hash = '#ask';
                setTimeout(() => { location.hash = '#share'; }, 100);
                return true""");
        browser.await("(document.querySelector('#part h2') || {}).textContent === 'Share'");
        browser.js("return new Promise((done) => setTimeout(() => done(true), 900))");
        assertThat(browser.text("#part h2")).isEqualTo("Share");
    }

    @Test
    void withoutTheDeskAPartSaysSoAndTheOthersStayInReach() {
        browser.goTo("plan");
        browser.js("""
                window.kept = window.fetch;
                window.fetch = () => Promise.reject(new TypeError('away'));
                location.hash = '#ask';
                return true""");
        browser.await("document.querySelector('#part .problems') !== null");
        browser.js("location.hash = '#plan'; return true");
        browser.await("document.documentElement.dataset.shown === 'plan'");
        assertThat(browser.text("#part .problems")).contains("The desk does not answer");
        browser.js("window.fetch = window.kept; return true");
        browser.goTo("today");
        assertThat(browser.count("[data-done]")).isPositive();
    }
}

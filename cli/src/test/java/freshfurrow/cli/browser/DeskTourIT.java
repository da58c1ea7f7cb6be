package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.command.Freshfurrow;
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
import org.openqa.selenium.support.ui.Select;

/** A season with a plan at the desk: changed, tried with, worked through, asked about. */
@InBrowser
final class DeskTourIT {
    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        season = Desks.copyOf("first-season", folder);
        assertThat(Freshfurrow.run("plan", season.toString(), "--steps", "500", "--seed", "1"))
                .isZero();
        desk = Desks.open(season, "2027-04-22T11:00");
        browser = tab.openDesk(desk.link());
    }

    @AfterEach
    void closeDesk() {
        assertThat(browser.console()).isEmpty();
        desk.close();
    }

    private void awaitSaid(String words) {
        browser.await("document.querySelector('#said').textContent.includes('" + words + "')");
    }

    @Test
    void aFigureTypedAsPeopleTypeItIsSavedAsTheFileHasIt() throws IOException {
        String before = Files.readString(season.resolve("season.yaml"));
        browser.click(browser.element("[data-section=planters]"));
        browser.click(browser.element("[data-entry=P1] summary"));
        browser.await("document.querySelector(\"[data-path='planters.P1.tank']\") !== null");
        WebElement tank = browser.element("[data-path='planters.P1.tank']");
        tank.sendKeys(Keys.chord(Keys.CONTROL, "a"), "1,200", Keys.TAB);
        awaitSaid("Saved");
        Pictures.keep("desk-season", browser);
        assertThat(tank.getAttribute("value")).isEqualTo("1200 gal");
        assertThat(Files.readString(season.resolve("season.yaml")))
                .isEqualTo(before.replace("tank: 600 gal", "tank: 1200 gal"));
        browser.click(browser.element("#undo"));
        awaitSaid("Undone");
        assertThat(Files.readString(season.resolve("season.yaml"))).isEqualTo(before);
    }

    @Test
    void aFieldDraggedByKeysIsAnsweredAndKept() throws IOException {
        browser.goTo("try");
        Pictures.keep("desk-try", browser);
        WebElement chip = browser.element(".board .chip");
        String field = chip.getAttribute("data-field");
        chip.sendKeys(Keys.ENTER);
        browser.element("[data-field=" + field + "]").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ENTER);
        browser.await("document.querySelector('#trial').dataset.tried === '1'");
        Pictures.keep("desk-tried", browser);
        assertThat(browser.text("#answer")).contains("What it would change");
        browser.click(browser.element("#keep"));
        browser.await("document.querySelector('#kept') !== null");
        assertThat(Files.readString(season.resolve("season.yaml"))).contains("fixed:", field);
    }

    @Test
    void aTapIsALineOfTheLog() throws IOException {
        browser.goTo("today");
        Pictures.keep("desk-today", browser);
        browser.click(browser.element("[data-done]"));
        awaitSaid("Logged");
        browser.await("document.querySelector('#entries') !== null");
        assertThat(Files.readAllLines(season.resolve("log.csv"))).hasSize(2);
        browser.size(390, 800);
        Pictures.keep("desk-today-phone", browser);
    }

    @Test
    void aFieldIsAskedAbout() {
        browser.goTo("ask");
        browser.click(browser.element("#why-ask"));
        browser.await("document.querySelector('#why-answer pre') !== null");
        Pictures.keep("desk-ask", browser);
        assertThat(browser.text("#why-answer")).contains("field");
        assertThat(new Select(browser.element("#why-field")).getOptions()).hasSize(8);
    }
}

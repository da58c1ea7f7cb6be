package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.trial.Placing;
import freshfurrow.app.trial.Trial;
import freshfurrow.cli.text.PlanTotals;
import freshfurrow.desk.Desk;
import freshfurrow.model.plan.Plan;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;

/** Fields dragged about on the board: by mouse, by touch, by keys. */
@InBrowser
final class DeskTrialIT {
    @TempDir
    private Path folder = Path.of("");

    private Path season = Path.of("");
    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        season = Desks.plannedCopyOf("first-season", folder);
        desk = Desks.open(season, "2027-04-22T11:00");
        browser = tab.openDesk(desk.link());
        browser.goTo("try");
    }

    @AfterEach
    void closeDesk() {
        assertThat(browser.console()).isEmpty();
        desk.close();
    }

    private String dayOf(String field) {
        return String.valueOf(browser.js(
                "return document.querySelector('.board [data-field=' + arguments[0] + ']').closest('td').dataset.day",
                field));
    }

    /** The board's cells with nothing or something in them, days after a field's. */
    private WebElement cellAfter(String field, int days) {
        String day = LocalDate.parse(dayOf(field)).plusDays(days).toString();
        WebElement cell = browser.element("td[data-day='" + day + "']");
        browser.js("arguments[0].scrollIntoView({block: 'center', inline: 'center'}); return true", cell);
        return cell;
    }

    private void drag(WebElement chip, WebElement cell) {
        PointerInput pointer = new PointerInput(PointerInput.Kind.MOUSE, "mouse");
        Sequence moves = new Sequence(pointer, 0)
                .addAction(pointer.createPointerMove(Duration.ZERO, PointerInput.Origin.fromElement(chip), 0, 0))
                .addAction(pointer.createPointerDown(PointerInput.MouseButton.LEFT.asArg()))
                .addAction(
                        pointer.createPointerMove(Duration.ofMillis(200), PointerInput.Origin.fromElement(cell), 0, 0))
                .addAction(pointer.createPointerUp(PointerInput.MouseButton.LEFT.asArg()));
        browser.driver().perform(List.of(moves));
    }

    private void dragByTouch(WebElement chip, WebElement cell) {
        touch("touchStart", List.of(middle(chip)));
        touch("touchMove", List.of(middle(cell)));
        touch("touchMove", List.of(middle(cell)));
        touch("touchEnd", List.of());
    }

    private void touch(String type, List<Object> points) {
        browser.command("Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", points));
    }

    private Object middle(WebElement element) {
        return browser.js(
                "const box = arguments[0].getBoundingClientRect(); return { x: box.left + box.width / 2, y: box.top + box.height / 2 }",
                element);
    }

    private void awaitTried(int fields) {
        browser.await("document.querySelector('#trial').dataset.tried === '" + fields + "'");
    }

    @Test
    void aFieldDraggedByMouseIsAnsweredWithTheFiguresOfItsLists() {
        WebElement chip = browser.all(".board .chip").get(2);
        String field = chip.getAttribute("data-field");
        WebElement cell = cellAfter(field, 3);
        String machine = cell.getAttribute("data-machine");
        String day = cell.getAttribute("data-day");
        drag(chip, cell);
        awaitTried(1);

        GivenPlan given = new GivenPlan(season.resolve("plan"));
        SeasonOfPlan of = new SeasonOfPlan(Optional.of(season), List.of());
        Plan then = Trial.of(given, of)
                .with(List.of(new Placing(
                        field, Optional.of(machine), Optional.of(LocalDate.parse(day)), OptionalInt.empty())))
                .plan();
        Map<String, List<String>> expected = new LinkedHashMap<>();
        PlanTotals.of(given.read()).lines().forEach(line -> expected.put(line.name(), List.of(line.figure(), "none")));
        PlanTotals.of(then)
                .lines()
                .forEach(line -> expected.merge(
                        line.name(),
                        List.of("none", line.figure()),
                        (now, after) -> List.of(now.get(0), after.get(1))));
        Map<String, List<String>> shown = new LinkedHashMap<>();
        browser.all("#answer tbody tr")
                .forEach(row -> shown.put(
                        text(row, "th"), List.of(text(row, "td:nth-of-type(1)"), text(row, "td:nth-of-type(2)"))));
        assertThat(shown).isEqualTo(expected);
    }

    private static String text(WebElement row, String css) {
        return String.valueOf(
                row.findElement(org.openqa.selenium.By.cssSelector(css)).getDomProperty("textContent"));
    }

    @Test
    void aFieldDraggedByTouchOnAPhoneIsAnswered() {
        browser.size(390, 800);
        browser.command("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
        WebElement chip = browser.all(".board .chip").get(0);
        dragByTouch(chip, cellAfter(String.valueOf(chip.getAttribute("data-field")), 1));
        awaitTried(1);
        assertThat(browser.text("#answer")).contains("What it would change");
        assertThat(browser.sideways()).isEqualTo(0L);
    }

    @Test
    void fieldsAreCalledByTheirNamesToo() {
        assertThat(browser.text(".board .chip[data-field=N80]")).contains("North eighty");
    }

    @Test
    void aFieldLetGoBesideTheBoardIsWhereItWas() {
        WebElement chip = browser.element(".board .chip");
        String field = chip.getAttribute("data-field");
        String day = dayOf(field);
        drag(chip, browser.element("#trial h2"));
        assertThat(dayOf(field)).isEqualTo(day);
        assertThat(browser.count("#answer")).isZero();
        assertThat(browser.count(".dragged")).isZero();
    }

    @Test
    void byKeysAFieldIsPickedUpMovedAndPutDownAndEscapeLetsItGo() {
        WebElement chip = browser.element(".board .chip");
        String field = chip.getAttribute("data-field");
        chip.sendKeys(Keys.ENTER);
        browser.awaitSaid("is picked up");
        browser.element("[data-field=" + field + "]").sendKeys(Keys.ARROW_RIGHT, Keys.ESCAPE);
        assertThat(browser.count(".aimed")).isZero();
        assertThat(browser.count("#answer")).isZero();
        browser.element("[data-field=" + field + "]").sendKeys(Keys.ENTER);
        browser.element("[data-field=" + field + "]").sendKeys(Keys.ARROW_RIGHT, Keys.ENTER);
        awaitTried(1);
        assertThat(browser.js("return document.activeElement.dataset.field")).isEqualTo(field);
    }

    @Test
    void twoFieldsMovedBeforeTheFirstIsAnsweredAreBothTried() {
        browser.js("""
                const ids = shown => [...shown].slice(0, 2).map((chip) => chip.dataset.field);
                const [one, two] = ids(document.querySelectorAll('.board .chip'));
                const day = '2027-04-26';
                for (const id of [one, two]) {
                  document.querySelector('#try-field').value = id;
                  document.querySelector('#try-day').value = day;
                  document.querySelector('#try-it').click();
                }
                return true""");
        awaitTried(2);
        browser.click(browser.element("#spring-back"));
        awaitTried(0);
        assertThat(browser.count("#answer")).isZero();
    }

    @Test
    void aDayWithoutWorkIsRefusedAndTheFieldSpringsBack() {
        WebElement chip = browser.element(".board .chip");
        String field = chip.getAttribute("data-field");
        String day = dayOf(field);
        // a Sunday, on which this season is closed: the file may not say it, so it is not tried either
        assertThat(browser.all("thead th").stream().map(WebElement::getText)).anyMatch(name -> name.endsWith("closed"));
        browser.js("""
                document.querySelector('#try-field').value = arguments[0];
                document.querySelector('#try-day').value = '2027-04-25';
                document.querySelector('#try-it').click();
                return true""", field);
        browser.awaitSaid("No machine works on 2027-04-25");
        assertThat(dayOf(field)).isEqualTo(day);
        // Chromium writes each refused request to the console
        assertThat(browser.console()).allMatch(line -> line.contains("/api/try") && line.contains("409"));
    }

    @Test
    void whatWasKeptIsPlannedAroundFromNow() {
        String field = String.valueOf(browser.all(".board .chip").get(2).getAttribute("data-field"));
        drag(browser.element("[data-field=" + field + "]"), cellAfter(field, 1));
        awaitTried(1);
        browser.click(browser.element("#keep"));
        browser.await("document.querySelector('#kept') !== null");
        assertThat(season.resolve("season.yaml")).content().contains("fixed:", field);
        browser.goTo("plan");
        assertThat(browser.text("#part")).contains("The season was changed after this plan was made.");
        browser.click(browser.element("#plan-again"));
        browser.await(
                "document.querySelector('#plan-again') === null || document.querySelector('#part .problems') !== null");
        // a search may be done before it is stopped
        browser.js("const stop = document.querySelector('#plan-stop'); if (stop) stop.click(); return true");
        browser.await("document.querySelector('#part').dataset.state !== 'underway'");
        assertThat(browser.all("#part .problems").stream().map(WebElement::getText))
                .isEmpty();
        browser.await("document.querySelector('#part').dataset.state === 'proposed'");
        browser.click(browser.element("#plan-take"));
        browser.await("document.querySelector('#part').dataset.state === 'still'");
        assertThat(browser.text("#part")).doesNotContain("The season was changed");
        browser.goTo("try");
        assertThat(browser.text("[data-field=" + field + "]")).contains("fixed");
    }
}

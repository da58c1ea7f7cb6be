package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.desk.Desk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** From an empty folder to a printed sheet, by clicks and typing alone. */
@InBrowser
final class DeskBeginIT {
    @TempDir
    private Path folder = Path.of("");

    private Desk desk;
    private Browser browser;

    @BeforeEach
    void openDesk(Browser tab) {
        desk = Desks.open(folder, "2027-04-18T18:00");
        browser = tab.openDesk(desk.link());
    }

    @AfterEach
    void closeDesk() {
        assertThat(browser.console()).isEmpty();
        desk.close();
    }

    private void step(String id) {
        browser.click(browser.element("button[data-step=" + id + "]"));
        browser.await("document.querySelector('#part').dataset.step === '" + id + "'");
    }

    private void type(String path, String text) {
        WebElement input = browser.element("[data-path='" + path + "']");
        input.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    private void cell(int row, String name, String text) {
        browser.element("[data-field='" + row + "'][data-cell=" + name + "]").sendKeys(text);
    }

    private String said() {
        return browser.text("#begin-missing");
    }

    @Test
    void fromAnEmptyFolderToTheSheetForTheNextDay() {
        assertThat(browser.all("#parts a")).extracting(WebElement::getText).containsExactly("Begin");
        browser.await("document.querySelector('#begin-missing').textContent.includes('where the yard is')");
        Pictures.keep("desk-begin", browser);
        browser.click(browser.element("#units-us"));

        type("season.name", "Begun at the desk <b>");
        browser.js("document.querySelector(\"[data-path='season.first']\").focus(); return true");
        browser.element("[data-path='season.first']").sendKeys("04192027");
        type("season.timezone", "America/Chicago");
        type("hours", "7-12, 12:30 to 8 pm");
        browser.click(browser.element("#step-next"));

        type("places.yard", "41, -97");
        browser.await("document.querySelector('#begin-missing').textContent === 'Still missing: fields.'");
        browser.click(browser.element("#map-places"));
        assertThat(browser.element("[data-path='places.yard']").getAttribute("value"))
                .matches("4[01]\\.\\d{5}, -9[67]\\.\\d{5}");
        Pictures.keep("desk-begin-yard", browser);

        step("fields");
        cell(0, "name", "North forty");
        cell(0, "area", "1,200");
        cell(0, "crop", "corn");
        cell(0, "lat", "41.02");
        browser.await("document.querySelector('#begin-missing').textContent.includes('the longitude of North forty')");
        cell(0, "lon", "-97.01");
        browser.element("#paste")
                .sendKeys(
                        "Field,Acres,Lat,Lng,Crop",
                        Keys.ENTER,
                        "South flat,80,40.98,-96.99,corn",
                        Keys.ENTER,
                        "East slope,60,41.003,-96.962,beans");
        browser.await(
                "document.querySelector('#use-table') !== null && document.querySelector('#use-table').textContent.includes('2 fields')");
        Pictures.keep("desk-begin-fields", browser);
        browser.click(browser.element("#use-table"));
        browser.await("document.querySelectorAll('#field-rows tbody tr').length === 3");
        browser.await("document.querySelector('#begin-missing').textContent.includes('Nothing is missing')");
        WebElement area = browser.element("[data-field='0'][data-cell=area]");
        area.sendKeys(Keys.chord(Keys.CONTROL, "a"), "40");

        step("crops");
        assertThat(browser.text("[data-entry=corn]")).contains("Default 2027-04-19 to 2027-06-05: the whole season");
        browser.js("document.getElementById('answer-crops.corn.window-0').focus(); return true");
        browser.element("[id='answer-crops.corn.window-0']").sendKeys("04192027");
        browser.await(
                "document.querySelector('#begin-missing').textContent === 'Still missing: the last day of the window of corn.'");
        step("planters");
        step("crops");
        assertThat(browser.element("[id='answer-crops.corn.window-0']").getAttribute("value"))
                .isEqualTo("2027-04-19");
        browser.js("document.getElementById('answer-crops.corn.window-1').focus(); return true");
        browser.element("[id='answer-crops.corn.window-1']").sendKeys("06052027");
        browser.await("document.querySelector('#begin-missing').textContent.includes('Nothing is missing')");
        step("planters");
        type("planters.P1.tank", "600 bushels");
        browser.await(
                "document.querySelector('.problem').parentElement.parentElement.textContent.includes('bushels is not a unit of a volume')");
        browser.await("document.querySelector('button[data-step=planters]').textContent === '6 Planters (1 wrong)'");
        assertThat(browser.text("#begin-unusable")).isEqualTo("1 answer cannot be used: 1 at Planters.");
        type("planters.P1.tank", "600 gal");
        browser.await("document.querySelector('button[data-step=planters]').textContent === '6 Planters'");
        assertThat(browser.text("[data-entry=P1]")).contains("usual 4 to 7 mph (ASABE D497, row-crop planters)");
        Pictures.keep("desk-begin-planters", browser);
        type("planters.P1", "Old blue");
        browser.await("document.querySelector('[data-entry=Old-blue] legend') !== null");
        browser.click(browser.element("[data-more=planters]"));
        type("planters.P2", "old-blue");
        browser.await("document.querySelector('button[data-step=planters]').textContent === '6 Planters (1 wrong)'");
        assertThat(browser.text("[data-entry=old-blue-2]"))
                .contains("the id old-blue is a planter's already; give every planter a name of its own");
        type("planters.old-blue-2", "Old green");
        browser.await("document.querySelector('button[data-step=planters]').textContent === '6 Planters'");
        assertThat(browser.text("[data-entry=Old-green]")).contains("Plans and sheets call it Old-green.");
        browser.click(browser.element("[data-out=planters]"));
        browser.await("document.querySelectorAll('[data-entry]').length === 1");
        step("rigs");
        type("rigs.R1.batchTime", "10 min");
        type("rigs.R1.nurseTank", "1,200");
        step("water");
        type("compost.windrow.mass", "1,200");
        browser.await("document.querySelector('#begin-sums pre') !== null");

        step("look");
        browser.await("document.querySelector('#part').dataset.problems === '0'");
        browser.await("document.querySelector('#begin-text').textContent.includes('mass: 1200 lb')");
        assertThat(browser.text("#begin-text"))
                .contains(
                        "tank: 600 gal",
                        "batchTime: 10 min",
                        "nurseTank: 1200 gal",
                        "speed: 5 mph  # default",
                        "  Old-blue:  # Old blue");
        Pictures.keep("desk-begin-look", browser);
        assertThat(said()).isEqualTo("Nothing is missing.");
        assertThat(folder).isEmptyDirectory();
        browser.click(browser.element("#begin-write"));
        browser.await(
                "document.documentElement.dataset.shown === 'season' && document.querySelector('#section') !== null");
        assertThat(folder.resolve("season.yaml"))
                .content()
                .contains(
                        "name: Begun at the desk <b>",
                        "first: 2027-04-19\n",
                        "hours: [\"07:00/12:00\", \"12:30/20:00\"]");
        assertThat(folder.resolve("fields.csv")).content().contains("North-forty,North forty,40,41.02,-97.01,corn");
        assertThat(browser.text("#missing")).isEmpty();
        assertThat(browser.text("#season-name")).isEqualTo("Begun at the desk <b>");

        plan();
        assertThat(Files.exists(folder.resolve("plan/plan.json"))).isTrue();
        sheet();
    }

    @Test
    void fieldsOfAMapAreTakenFromItsFile(@TempDir Path elsewhere) throws IOException {
        Path map = elsewhere.resolve("fields.geojson");
        Files.writeString(
                map,
                "{\"type\": \"FeatureCollection\", \"features\": [{\"type\": \"Feature\", \"properties\":"
                        + " {\"name\": \"<img src=x onerror=alert(1)>\", \"crop\": \"maize\"}, \"geometry\": {\"type\": \"Polygon\","
                        + " \"coordinates\": [[[2.30, 48.60], [2.31, 48.60], [2.31, 48.61], [2.30, 48.61], [2.30, 48.60]]]}}]}");
        browser.click(browser.element("#units-metric"));
        step("yard");
        type("places.yard", "48.6, 2.3");
        step("fields");
        browser.element("#field-file").sendKeys(map.toString());
        browser.await("document.querySelectorAll('#field-rows input[disabled]').length === 3");
        assertThat(browser.element("[data-field='0'][data-cell=name]").getAttribute("value"))
                .startsWith("<img");
        for (String each : List.of("season", "yard", "fields", "crops", "planters", "rigs", "water", "look")) {
            step(each);
            assertThat(Axe.findings(browser)).as(each).isEmpty();
        }
        browser.await("document.querySelector('#part').dataset.problems === '0'");
        browser.click(browser.element("#begin-write"));
        browser.await("document.documentElement.dataset.shown === 'season'");
        assertThat(folder.resolve("fields.geojson")).content().contains("<img src=x onerror=alert(1)>");
        assertThat(folder.resolve("season.yaml"))
                .content()
                .contains("fields: fields.geojson\n", "width: 9 m  # default");
    }

    @Test
    void fieldsOfAKmlFileAreTakenWithTheirNames(@TempDir Path elsewhere) throws IOException {
        Path map = elsewhere.resolve("fields.kml");
        String square =
                "<Polygon><outerBoundaryIs><LinearRing><coordinates>2.30,48.60,0 2.31,48.60,0 2.31,48.61,0 2.30,48.61,0"
                        + " 2.30,48.60,0</coordinates></LinearRing></outerBoundaryIs></Polygon>";
        Files.writeString(
                map,
                "<!DOCTYPE kml><kml xmlns=\"http://www.opengis.net/kml/2.2\"><Placemark>" + square
                        + "</Placemark></kml>");
        browser.click(browser.element("#units-metric"));
        step("yard");
        type("places.yard", "48.6, 2.3");
        step("fields");
        browser.element("#field-file").sendKeys(map.toString());
        browser.await("document.querySelector('#given .problems') !== null");
        assertThat(browser.text("#given")).contains("document type declaration");
        assertThat(browser.console())
                .as("that it is refused")
                .singleElement()
                .asString()
                .contains("400");

        browser.js(
                "const paste = document.querySelector('#paste'); paste.value = arguments[0]; paste.dispatchEvent(new Event('input')); return true",
                "<kml><Placemark><name>Long <![CDATA[<i>]]> acre</name>" + square + "</Placemark></kml>");
        browser.await("document.querySelectorAll('#field-rows input[disabled]').length === 3");
        assertThat(browser.element("[data-field='0'][data-cell=name]").getAttribute("value"))
                .isEqualTo("Long <i> acre");
        step("look");
        browser.await("document.querySelector('#part').dataset.problems === '0'");
        browser.click(browser.element("#begin-write"));
        browser.await("document.documentElement.dataset.shown === 'season'");
        assertThat(folder.resolve("fields.geojson")).content().contains("Long <i> acre", "\"Polygon\"");
    }

    private void plan() {
        browser.goTo("plan");
        new Select(browser.element("#plan-time")).selectByValue("10");
        // all plans of three fields are tried in a second or so, too soon for a look at the search
        browser.click(browser.element("#plan-whole"));
        browser.await("document.querySelector('#part').dataset.state === 'proposed'");
        browser.click(browser.element("#plan-take"));
        browser.await("document.querySelector('#part').dataset.state === 'still'");
    }

    /** The sheets of the next day with work, in a window of their own. */
    private void sheet() {
        browser.goTo("ask");
        Select days = new Select(browser.element("#sheet-day"));
        days.selectByIndex(1);
        assertThat(days.getFirstSelectedOption().getText()).contains("2027-04-19");
        Set<String> before = new TreeSet<>(browser.driver().getWindowHandles());
        browser.click(browser.element("#sheets"));
        browser.await("true");
        Set<String> after = new TreeSet<>(browser.driver().getWindowHandles());
        after.removeAll(before);
        String desks = browser.driver().getWindowHandle();
        browser.driver().switchTo().window(after.iterator().next());
        browser.await(
                "document.readyState === 'complete' && document.body !== null && document.body.textContent.includes('Old-blue')");
        assertThat(browser.driver().findElement(By.tagName("body")).getText())
                .contains("Monday, April 19, 2027", "Rig R1", "Planter Old-blue", "Begun at the desk <b>");
        assertThat(browser.printed()).startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        browser.driver().close();
        browser.driver().switchTo().window(desks);
    }
}

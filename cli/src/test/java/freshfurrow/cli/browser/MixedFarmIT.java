package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.WebElement;

/** The page of a farm that plants and sprays, where there is extract for some of its fields: B2 in part, B1 not at all. */
@InBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class MixedFarmIT {
    private static final String WITHOUT = "url(#over-without)";
    private static final String PARTLY = "url(#over-partly-without)";

    private Path page = Path.of("");
    private Browser browser;

    @BeforeAll
    void makePage(Browser tab, @TempDir Path folder) {
        browser = tab;
        page = Pages.ofScenario("mixed-farm", folder.resolve("plan"));
    }

    @BeforeEach
    void open() {
        browser.size(1280, 900);
        browser.open(page);
    }

    @AfterEach
    void nothingIsWrittenToTheConsole() {
        assertThat(browser.console()).isEmpty();
    }

    @Test
    void theMapMarksWhatIsPlantedWithoutExtractByATextureAndAWord() {
        assertThat(over("B1")).isEqualTo(WITHOUT);
        assertThat(over("B2")).isEqualTo(PARTLY);
        assertThat(over("C1")).isEqualTo("");
        assertThat(browser.text("#map-legend")).contains("planted without extract", "planted in part without extract");
        assertThat(said("B1")).contains("planted Fri 2027-05-07 to Sat 2027-05-08 by P1 without extract;");
        assertThat(said("B2")).contains(" by P1, 10.5 ac of it without extract;");
        assertThat(said("C1")).contains(" by P1; ").doesNotContain("extract");
        assertThat(label("B1")).endsWith("without extract").doesNotContain("part");
        assertThat(label("B2")).endsWith("part without extract");
    }

    @Test
    void whatIsSprayedIsCalledSprayed() {
        assertThat(said("M1")).contains(": 18.0 ac of pasture, sprayed Tue 2027-04-20 by boom (sprayer);");
        assertThat(label("M1")).endsWith("sprayed");
        assertThat(row("M1")).contains("sprayed Tue 2027-04-20", "boom");
        assertThat(row("C1")).contains("planted Tue 2027-04-27 to Apr 28", "P1");
    }

    @Test
    void whatIsFixedIsToldOfItsField() {
        assertThat(said("O1"))
                .contains("sprayed Wed 2027-05-05 by boom (sprayer);")
                .endsWith("; fixed to boom, to start on Wed 2027-05-05");
        assertThat(row("O1")).endsWith("fixed to boom, to start on Wed 2027-05-05");
    }

    @Test
    void theTableOfFieldsHasTheAreaWithoutExtract() {
        assertThat(browser.text("#fields thead")).contains("without extract");
        assertThat(row("B1")).contains("41.0 ac", "P1");
        assertThat(without("B1")).isEqualTo("41.0 ac");
        assertThat(without("B2")).isEqualTo("10.5 ac");
        assertThat(without("C1")).isEqualTo("-");
        assertThat(browser.text("#ledger")).contains("without extract\n51.5 ac\nof all planted");
    }

    @Test
    void daysOfPlantingWithoutExtractOpenAndAddUp() {
        openDay("2027-05-07");
        assertThat(browser.text("#day-sums")).startsWith("51.8 ac planted or sprayed, 51.3 ac of it without extract");
        assertThat(browser.count("#day-chart g.mark.plantWithout")).isEqualTo(3);
        assertThat(browser.text("#day-fields")).contains("B1", "B2");
        assertThat(browser.text("#day-loads")).contains("L0016");
        openDay("2027-05-08");
        assertThat(browser.text("#day-sums")).startsWith("0.2 ac planted or sprayed, 0.2 ac of it without extract");
        assertThat(browser.text("#day-loads")).isEmpty();
    }

    @Test
    void theSeasonMarksWhatIsPlantedWithoutExtractByATextureAndAWord() {
        assertThat(browser.count("#season-chart rect.part.without")).isEqualTo(2);
        assertThat(browser.text("#season-legend")).contains("planted without extract");
        assertThat(day("2027-05-07"))
                .contains("P1 51.8 ac planted, 51.3 ac of it without extract, R1 10 gal transferred");
        assertThat(day("2027-04-20")).contains("boom 46.1 ac sprayed, R1 692 gal transferred");
        browser.all("#season-tools button").get(1).click();
        assertThat(browser.count("#season-chart rect.part.without[data-field]")).isEqualTo(3);
    }

    @Test
    void aChosenFieldSaysWhatOfItIsWithoutExtract() {
        choose("B1");
        assertThat(browser.text("#chosen-text")).contains("planted from Fri 2027-05-07 9:4", " without extract");
        choose("B2");
        assertThat(browser.text("#chosen-text")).contains(" with 2 loads, 10.5 ac of it without extract");
        openDay("2027-05-07");
        assertThat(browser.count("#day-chart g.mark.plantWithout.chosen")).isEqualTo(1);
    }

    @Test
    void aSprayerIsCalledSprayerInItsRowAndToThoseWhoHearThePage() {
        openDay("2027-04-20");
        assertThat(texts("#day-chart svg.labels text"))
                .containsExactly("P1", "planter", "boom", "sprayer", "on R1", "R1", "rig");
        assertThat(browser.all("#day-chart g[role=group]").stream().map(row -> row.getDomAttribute("aria-label")))
                .containsExactly("P1, planter", "boom, sprayer on R1", "R1, rig");
        assertThat(texts("#season-chart svg.labels text.machine")).containsExactly("P1", "boom", "R1");
        assertThat(texts("#season-chart svg.labels")).asString().contains("planter", "sprayer", "rig");
        assertThat(heard("#day-chart g.mark.plant"))
                .startsWith("boom (sprayer), about 7:05 am to 8:20 am: sprays 12.0 ac in M3");
        assertThat(heard("#day-chart g.mark.fill"))
                .startsWith(
                        "boom (sprayer), about 7:00 am to 7:05 am: gets ready to spray load L0001, 300 gal out of R1 at M3");
        assertThat(heard("#day-chart g.mark.transfer"))
                .isEqualTo(
                        "R1, about 7:00 am to 7:05 am: gets ready to spray 300 gal with boom at M3, load L0001; use by 11:00 am");
        assertThat(texts("#map-tools option")).containsExactly("all machines", "P1", "boom (sprayer)", "R1");
        assertThat(browser.text("#curve-freshness .legend")).contains("boom (sprayer)");
    }

    @Test
    void aSprayerWaitsForItsSprayingWindow() {
        assertThat(browser.js("return controls.waits({ machine: 'boom', why: 'window' })"))
                .isEqualTo("for its spraying window to open");
        assertThat(browser.js("return controls.waits({ machine: 'P1', why: 'window' })"))
                .isEqualTo("for its planting window to open");
    }

    @Test
    void onAWideScreenEveryColumnOfTheFieldsShows() {
        browser.size(1400, 900);
        browser.open(page);
        assertThat(
                        browser.js(
                                "const box = document.querySelector('#fields .wide'); return box.scrollWidth - box.clientWidth"))
                .isEqualTo(0L);
    }

    @Test
    void onAPhoneNothingOfTheMapIsCutOff() {
        browser.size(390, 800);
        browser.open(page);
        assertThat(browser.js("return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .isEqualTo(0L);
        assertThat(browser.js("""
                const map = document.querySelector('#map-chart').getBoundingClientRect();
                return [...document.querySelectorAll('#map-chart text')]
                    .filter((text) => { const box = text.getBoundingClientRect(); return box.left < map.left || box.right > map.right || box.bottom > map.bottom; })
                    .map((text) => text.textContent)""")).isEqualTo(List.of());
    }

    @ParameterizedTest
    @CsvSource({"light,1280", "dark,360"})
    void axeFindsNothing(String light, int width) {
        browser.size(width, 900);
        browser.prefers(light);
        browser.open(page);
        openDay("2027-05-07");
        choose("B2");
        assertThat(Axe.findings(browser)).isEmpty();
    }

    @Test
    void onPaperTextureAndWordsAreThere() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(browser.printed())) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains(
                            "planted without extract",
                            "planted in part without extract",
                            "sprayer",
                            "sprayed Tue 2027-04-20")
                    .containsPattern("B1 Long beans beans 41\\.0 ac planted Fri 2027-05-07 to May 8 P1 41\\.0 ac");
        }
    }

    @Test
    void theCurveOfACropHasTheWordOfItsWork() {
        assertThat(browser.text("#curve-progress .legend"))
                .contains("corn planted", "orchard sprayed")
                .doesNotContain("planted or sprayed");
    }

    private String field(String id, String then) {
        return String.valueOf(
                browser.js("const i = plan.fields.findIndex((field) => field.id === arguments[0]); " + then, id));
    }

    private String over(String id) {
        return field(
                id,
                "return document.querySelector(`#map-chart g.field[data-field='${i}'] .over`)?.getAttribute('fill') ?? ''");
    }

    private String said(String id) {
        return field(
                id,
                "return document.querySelector(`#map-chart g.field[data-field='${i}']`).getAttribute('aria-label')");
    }

    private String label(String id) {
        return field(
                id,
                "return [...document.querySelectorAll('#map-chart .names text')].find((text) => text.__data__.index === i)?.textContent ?? ''");
    }

    private String row(String id) {
        return field(id, "return document.querySelector(`#fields tbody tr[data-index='${i}']`).innerText");
    }

    private String without(String id) {
        return field(id, """
                const column = [...document.querySelectorAll('#fields thead th')].findIndex((head) => head.innerText.startsWith('without extract'));
                return document.querySelector(`#fields tbody tr[data-index='${i}']`).children[column].innerText""");
    }

    private void choose(String id) {
        field(id, "choice.choose('field', i); return true");
    }

    private void openDay(String date) {
        browser.js(
                "choice.openDay((Date.parse(arguments[0]) - Date.parse(plan.season.first)) / 86400000); return true",
                date);
    }

    private String day(String date) {
        return String.valueOf(browser.js("""
                const day = (Date.parse(arguments[0]) - Date.parse(plan.season.first)) / 86400000;
                return document.querySelector(`#season-chart g.day[data-day='${day}']`).getAttribute('aria-label')""", date));
    }

    private String heard(String mark) {
        return String.valueOf(browser.element(mark).getDomAttribute("aria-label"));
    }

    private List<String> texts(String css) {
        return browser.all(css).stream().map(WebElement::getText).toList();
    }
}

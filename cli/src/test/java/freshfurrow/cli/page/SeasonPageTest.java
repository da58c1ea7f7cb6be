package freshfurrow.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

class SeasonPageTest {
    private static final Pattern DATA =
            Pattern.compile("<script type=\"application/json\" id=\"plan-data\">(.*?)</script>", Pattern.DOTALL);

    private final String page = SeasonPage.html(ExampleSeason.season(), ExamplePlan.plan());

    @Test
    void thePageAsksForNothingBesideItself() {
        assertThat(page)
                .doesNotContain("<link", "<img", "@import", "url(http", "src=\"")
                .contains("default-src 'none'");
    }

    @Test
    void aDayOfWetGroundIsClosedAndSaysWhy() throws Exception {
        LocalDate tuesday = LocalDate.of(2027, 4, 20);
        List<WetDay> wet = List.of(new WetDay(tuesday, 45, 39, 12));
        Map<Drainage, List<WetDay>> everywhere = Map.of(Drainage.WELL, wet, Drainage.MODERATE, wet, Drainage.POOR, wet);
        Season season = ExampleSeason.season()
                .inSpring(new GroundRecord("2019 in station.csv", Map.of(tuesday, 12.0), everywhere));
        JsonNode data = data(SeasonPage.html(season, ExamplePlan.plan()));

        assertThat(data.get("rain")).hasToString("[{\"at\":86400,\"depth\":\"12 mm\",\"daily\":true}]");
        assertThat(data.get("wet").get(0).get("times")).hasToString("[[86400,172800]]");
        assertThat(data.get("wet").get(0).get("why").get("1").textValue())
                .endsWith("fields closed: 45 mm of water in the topsoil (limit for a planter 39 mm)");
    }

    @Test
    void theLicenceOfTheDrawingLibraryIsInThePage() {
        assertThat(page).contains("D3, Copyright", "Permission to use, copy, modify", "d3js.org v");
    }

    @Test
    void theSameSeasonAndPlanGiveTheSamePage() {
        assertThat(SeasonPage.html(ExampleSeason.season(), ExamplePlan.plan())).isEqualTo(page);
    }

    @Test
    void activitiesAreShortListsWithTimesInSecondsSinceTheSeasonsFirstMidnight() throws Exception {
        JsonNode data = data();
        JsonNode planter = data.get("planters").get(0).get("activities");
        // Tuesday is day 1: 86,400 s + 6:40 h is 110,400 s; spots are N40, S80, E20, well, yard
        assertThat(planter.get(0)).hasToString("[\"move\",110400,111480,4,0,4]");
        assertThat(planter.get(1)).hasToString("[\"wait\",111480,111600,0,\"rig\"]");
        assertThat(planter.get(2)).hasToString("[\"fill\",111600,112560,0,0]");
        assertThat(planter.get(3)).hasToString("[\"plant\",112560,119760,0,0,8]");
        JsonNode rig = data.get("rigs").get(0).get("activities");
        assertThat(rig.get(1)).hasToString("[\"draw\",58200,60000,3,3000]");
        assertThat(rig.get(3)).hasToString("[\"extract\",110700,111600,0,0]");
        assertThat(rig.get(4)).hasToString("[\"transfer\",111600,112560,0,0,1600]");
        assertThat(rig.get(5)).hasToString("[\"clean\",112560,112740,0]");
    }

    @Test
    void aFieldTellsItsWindowItsPlantingAndWhyItIsLateOrLeft() throws Exception {
        JsonNode fields = data().get("fields");
        assertThat(fields.get(1).get("id").textValue()).isEqualTo("S80");
        assertThat(fields.get(1).get("closes").intValue()).isEqualTo(1);
        assertThat(fields.get(1).get("lastDay").intValue()).isEqualTo(2);
        assertThat(fields.get(1).get("why").textValue()).contains("P1");
        assertThat(fields.get(2).get("leftHa").doubleValue()).isEqualTo(2);
        assertThat(fields.get(2).get("why").textValue()).isEqualTo("no compost left after 2027-04-21: 4 kg short");
        assertThat(fields.get(0).has("why")).isFalse();
    }

    @Test
    void theLedgerSaysValueAndBoundInTheSeasonsUnits() throws Exception {
        // stock 20 + 6 kg, 24 kg used; margins 164 min and 3 h 48 min
        List<String> entries = data().get("ledger").findParents("name").stream()
                .map(entry -> entry.get("name").textValue() + ": "
                        + entry.get("value").textValue() + " | "
                        + entry.get("note").textValue())
                .toList();
        assertThat(entries)
                .contains(
                        "planted: 12.00 ha | of 14.00 ha in 3 fields",
                        "unplanted: 2.00 ha | 1 field",
                        "late: 4.00 ha-days | area times days after its window",
                        "corn finished: Tue 2027-04-20 | at 09:16; its last window closes on Sun 2027-04-25",
                        "planter fills: 2 | of all planters",
                        "tightest margin: 2 h 44 min | L0001 on Tue 2027-04-20; a typical load has 3 h 48 min",
                        "compost left: 2 kg | of 26 kg; 24 kg used",
                        "planters wait: 2 min | for a rig, water or compost, in total");
    }

    @Test
    void theLedgerSaysOfBoundsWhatTheTextSays() throws Exception {
        Plan plan = ExamplePlan.plan().withBounds(new Plan.Bounds(1, 1, 0.5, 4, -2000, false));
        JsonNode data = data(SeasonPage.html(ExampleSeason.season(), plan));
        assertThat(data.get("ledger").findValuesAsText("note"))
                .contains(
                        "proven minimum 0.50 ha; at most 1.50 ha more could be planted",
                        "the proven minimum for a plan that plants as much",
                        "1 is the proven minimum for a plan that plants as much and is no later, so at most 1 could be saved",
                        "the proven minimum for a plan that plants as much");
        assertThat(data.get("besides").textValue())
                .endsWith(
                        "Proven: no plan for this season can have less late or unplanted area (as weighted by its goals).");
    }

    @Test
    void noCautionStandsTwiceOnADay() throws Exception {
        JsonNode cautions = data().get("cautions");
        JsonNode tuesday = data().get("cautionsByDay").get("1");
        List<String> texts = StreamSupport.stream(tuesday.spliterator(), false)
                .map(position -> cautions.get(position.intValue()).get("text").textValue())
                .toList();
        assertThat(texts).doesNotHaveDuplicates();
        assertThat(texts.stream().filter(text -> text.startsWith("On the road")))
                .hasSize(1);
    }

    @Test
    void closedDaysAndUnitsAreTold() throws Exception {
        assertThat(data().get("closed")).hasToString("[6]");
        assertThat(data().get("units").get("area")).hasToString("{\"symbol\":\"ha\",\"perSi\":1.0,\"decimals\":2}");
    }

    private JsonNode data() throws Exception {
        return data(page);
    }

    private static JsonNode data(String html) throws Exception {
        Matcher data = DATA.matcher(html);
        assertThat(data.find()).isTrue();
        return new ObjectMapper().readTree(data.group(1));
    }
}

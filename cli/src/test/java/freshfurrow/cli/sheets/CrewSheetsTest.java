package freshfurrow.cli.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.HostileNames;
import freshfurrow.cli.text.DaySheet;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClockChanges;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class CrewSheetsTest {
    static List<String> hostileNames() {
        return HostileNames.ALL;
    }

    @Test
    void aRigsSheetSaysForEachBatchWhatToMeasureAndByWhenToUseIt() {
        // 16 kg in buckets of 12 kg: one and 4 kg
        String sheet = sheet(withBuckets(12), 1);
        assertThat(sheet)
                .contains("Rig R1", "Tuesday 20 April 2027")
                .containsSubsequence(
                        "Bring Compost 10 kg of windrow, 6 kg of bought Water 3,000 L on board",
                        "06:35 Drive to N40",
                        "06:45 Batch B0001: 16 kg: 10 kg from windrow, 6 kg from bought (1 bucket + 4 kg) in 150 L",
                        "12:00",
                        "kg L",
                        "07:00 Transfer L0001 to P1: 150 L + 1,450 L; clean",
                        "12:00",
                        "of 1,600 L");
    }

    @Test
    void aPlantersSheetSaysForEachFillHowFarItGoes() {
        assertThat(sheet(ExamplePlan.plan(), 2))
                .contains("Planter P1", "tank 2,000 L")
                .containsSubsequence(
                        "06:40 Drive to N40, 4.0 km",
                        "07:00 Fill 1,600 L from R1, load L0001: enough for 8.00 ha, empty about 09:15",
                        "12:00",
                        "07:15 Plant 8.00 ha in N40, load L0001",
                        "09:15 Done for the day. Park at N40; next drive about 06:40 on Wed 21 Apr");
    }

    @Test
    void aDriveToWaterStandsWithItsDrawAndTheLotOnceWhereThereIsOne() {
        assertThat(sheet(ExamplePlan.plan(), 0)).contains("16:00 Drive to well, 5.0 km; 16:10 Draw 3,000 L");
        assertThat(sheet(ExamplePlan.plan(), 3)).contains("8 kg of bought").doesNotContain("compost from bought");
    }

    @Test
    void noCautionStandsTwiceOnASheet() {
        for (String sheet : sheets(ExamplePlan.plan())) {
            assertThat(sheet.split("On the road:", -1)).hasSizeLessThanOrEqualTo(2);
        }
    }

    @Test
    void figuresAreInTheUnitsOfThePlan() {
        // 1,600 L = 422.7 gal, 8 ha = 19.8 ac
        assertThat(sheet(ExamplePlan.plan(DisplayUnits.US), 2)).contains("423 gal from R1", "19.8 ac in N40");
    }

    @Test
    void everyMachineAndDayHasItsSectionAndABoxForEachBatchLoadDrawAndPlanting() {
        Plan plan = ExamplePlan.plan();
        String html = html(plan);
        assertThat(html.split("<section ", -1)).hasSize(1 + 5);
        int batches = 2;
        int transfersAndFills = 2 + 2;
        int draws = 1;
        int plantings = 2;
        assertThat(html.split("class=\"box\"", -1)).hasSize(1 + batches + transfersAndFills + draws + plantings);
    }

    @Test
    void whatIsPlantedIsTickedTimedAndMeasuredAsFillsAre() {
        List<String> rows =
                Arrays.stream(html(ExamplePlan.plan()).split("<tr ", -1)).toList();
        String ticked = "class=\"main\"><td class=\"when\"><span class=\"box\"></span>";
        assertThat(rows)
                .filteredOn(row -> row.contains("<b>Plant</b>") || row.contains("<b>Fill</b>"))
                .hasSizeGreaterThan(2)
                .allSatisfy(
                        row -> assertThat(row).startsWith(ticked).containsPattern("class=\"rule\".*class=\"rule\""));
    }

    @Test
    void cautionsStandOnEverySheetAndWhatIsOverALimitStandsFirst() {
        String html = html(withBuckets(30));
        assertThat(html.split("Local codes, manufacturers&#39; manuals and licensed professionals come first", -1))
                .hasSize(1 + 5);
        assertThat(sheet(withBuckets(30), 1))
                .containsSubsequence("TOO HEAVY TO LIFT: a full 30 kg bucket", "Drive to", "Cautions");
    }

    @Test
    void aDayBeginsWithWhatIsInTheTank() {
        Plan plan = ExamplePlan.overnight();
        assertThat(String.join("", sheets(plan)))
                .contains("In the tank 600 L from the day before for 3.00 ha, load L0001");
    }

    @ParameterizedTest
    @MethodSource("hostileNames")
    void aNameIsTextAndNothingElse(String name) {
        String harmless = html(HostileNames.plan("North"));
        String hostile = html(HostileNames.plan(name));
        assertThat(tags(hostile)).isEqualTo(tags(harmless));
        assertThat(text(hostile))
                .contains(("N40 " + name.replaceAll("\\p{Cntrl}+", " "))
                        .replaceAll("\\s+", " ")
                        .strip());
    }

    @Test
    void theFileNeedsNoScriptAndNoNetwork() {
        assertThat(html(ExamplePlan.plan()))
                .doesNotContain("<script", "http:", "https:", "url(", "src=", "href=", "@import")
                .contains("default-src 'none'");
    }

    @Test
    void theSamePlanGivesTheSameText() {
        assertThat(html(ExamplePlan.plan())).isEqualTo(html(ExamplePlan.plan()));
    }

    @Test
    void sheetsTellOfClocksThatAreChangedWhileMixGetsOld() {
        Plan plan = ExamplePlan.withClockChanges(List.of(new ClockChanges.Change(
                LocalDateTime.parse("2027-04-20T09:00"), LocalDateTime.parse("2027-04-20T08:00"))));
        String caution =
                "Clocks go back on Tue 2027-04-20 at 09:00, to 08:00: use-by times after that are in the new time.";
        List<String> told =
                sheets(plan).stream().filter(sheet -> sheet.contains(caution)).toList();
        assertThat(told).hasSize(2).allSatisfy(sheet -> assertThat(sheet).contains("2027-04-20"));
        assertThat(String.join("\n", DaySheet.lines(plan, LocalDate.of(2027, 4, 20))))
                .contains(caution);
    }

    private static Plan withBuckets(double kg) {
        Plan plan = ExamplePlan.plan();
        Plan.RigPlan rig = new Plan.RigPlan(
                OptionalDouble.of(3_000),
                OptionalDouble.of(4_000),
                OptionalDouble.of(kg),
                plan.rigs().get("R1").activities());
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                plan.planters(),
                Map.of("R1", rig),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }

    private static String html(Plan plan) {
        return CrewSheets.html(plan, MachineDay.allOf(plan));
    }

    private static String sheet(Plan plan, int number) {
        return sheets(plan).get(number);
    }

    /** The text of each sheet, one blank between what is apart. */
    private static List<String> sheets(Plan plan) {
        String html = html(plan);
        return Pattern.compile("<section .*?</section>", Pattern.DOTALL)
                .matcher(html)
                .results()
                .map(MatchResult::group)
                .map(CrewSheetsTest::text)
                .toList();
    }

    private static List<String> tags(String html) {
        return Pattern.compile("<[^>]*>")
                .matcher(html)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    /** What a browser shows of it, but for the names of characters and the layout. */
    private static String text(String html) {
        return html.replaceAll("</(?:p|td|th|h1|h2|li|div)>", " ")
                .replaceAll("<[^>]*>", "")
                .replaceAll(" {2,}", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }
}

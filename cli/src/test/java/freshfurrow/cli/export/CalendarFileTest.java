package freshfurrow.cli.export;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.cli.example.HostileNames;
import freshfurrow.cli.example.MixedExample;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Calendars against RFC 5545, and as a general-purpose library reads them. */
final class CalendarFileTest {
    private static final Season SEASON = ExampleSeason.season();
    private static final Plan PLAN = ExamplePlan.plan();

    static List<String> hostileNames() {
        return HostileNames.ALL;
    }

    @Test
    void eachMachineHasAnEntryADayFromItsFirstWorkToItsLast() throws Exception {
        List<VEvent> events = events(CalendarFile.text(in("America/Chicago"), PLAN, Optional.empty()));
        assertThat(events.stream().map(event -> value(event, Property.SUMMARY)))
                .containsExactly(
                        "R1: 1 water trip",
                        "R1: 1 batch, 16 kg of compost",
                        "P1: N40 8.00 ha",
                        "R1: 1 batch, 8 kg of compost",
                        "P1: S80 4.00 ha");
        // 5 hours behind UTC in summer
        assertThat(start(events.get(2))).isEqualTo(Instant.parse("2027-04-20T11:40:00Z"));
        assertThat(end(events.get(2))).isEqualTo(Instant.parse("2027-04-20T14:16:00Z"));
    }

    @Test
    void anEntrySaysWhatIsPlantedWithoutExtractAndWhatIsSprayed() throws Exception {
        List<VEvent> events = events(CalendarFile.text(MixedExample.season(), MixedExample.plan(), Optional.empty()));
        assertThat(events.stream().map(event -> value(event, Property.SUMMARY)))
                .containsExactly(
                        "R1: 1 water trip",
                        "R1: 1 batch, 16 kg of compost",
                        "P1: N40 8.00 ha, 3.00 ha of it without extract",
                        "R1: S80 4.00 ha sprayed, 1 batch, 8 kg of compost",
                        "P1: E20 2.00 ha without extract");
        assertThat(value(events.get(2), Property.DESCRIPTION)).contains("08:30 PLANT 3.00 ha in N40 without extract");
        assertThat(value(events.get(3), Property.DESCRIPTION))
                .contains("07:10 READY 800 L to spray with boom at S80", "07:20 SPRAY 4.00 ha in S80, load L0002");
    }

    @Test
    void anEntryTellsTheDaysStepsAndWhatComesFirst() throws Exception {
        assertThat(value(events(text(PLAN)).get(2), Property.DESCRIPTION).lines())
                .containsExactly(
                        "Times are rounded to 5 minutes. A use-by time is a limit: the last drop is in the ground by then.",
                        "06:40 drive to N40, 4.0 km",
                        "07:00 FILL 1,600 L from R1 at N40, load L0001: tank 80 % full; enough for 8.00 ha,"
                                + " empty about 09:15; USE BY 12:00",
                        "07:15 PLANT 8.00 ha in N40, load L0001",
                        "Local codes, manufacturers' manuals and licensed professionals come first.");
    }

    @Test
    void whatTheStandardAsksOfACalendarIsThere() {
        // RFC 5545, sections 3.6 (PRODID and VERSION) and 3.6.1 (UID and DTSTAMP)
        String text = text(PLAN);
        assertThat(text)
                .startsWith("BEGIN:VCALENDAR\r\nPRODID:")
                .endsWith("END:VCALENDAR\r\n")
                .contains("VERSION:2.0\r\n");
        List<String> events = List.of(text.split("BEGIN:VEVENT\r\n", -1));
        assertThat(events.subList(1, events.size())).hasSize(5).allSatisfy(event -> assertThat(event)
                .containsOnlyOnce("\r\nDTSTAMP:")
                .containsOnlyOnce("UID:")
                .containsOnlyOnce("\r\nSEQUENCE:0\r\n"));
    }

    @ParameterizedTest
    @MethodSource("hostileNames")
    void linesEndAndFoldAsTheStandardSaysWhateverTheNames(String name) {
        // RFC 5545, section 3.1: CRLF, and at most 75 octets without it
        String text = CalendarFile.text(HostileNames.season(name), HostileNames.plan(name), Optional.empty());
        assertThat(text.replace("\r\n", ""))
                .doesNotContain("\r", "\n")
                .doesNotContainPattern("[\\x00-\\x08\\x0b-\\x1f\\x7f]");
        assertThat(text.split("\r\n", -1)).allSatisfy(line -> assertThat(line.getBytes(StandardCharsets.UTF_8))
                .hasSizeLessThanOrEqualTo(75));
    }

    @ParameterizedTest
    @MethodSource("hostileNames")
    void aNameStaysANameAndMakesNoEntriesOrProperties(String name) throws Exception {
        String text = CalendarFile.text(HostileNames.season(name), HostileNames.plan(name), Optional.empty());
        List<VEvent> events = events(text);
        assertThat(events).hasSize(5);
        String seen = name.replaceAll("\\p{Cntrl}", " ");
        assertThat(value(events.get(2), Property.SUMMARY)).isEqualTo("P1: N40 " + seen + " 8.00 ha");
        assertThat(events).allSatisfy(event -> assertThat(event.getProperties()).hasSize(9));
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        Optional<Property> title = calendar.getProperty("X-WR-CALNAME");
        assertThat(title.map(Property::getValue)).contains(seen.strip());
    }

    @Test
    void entriesKeepTheirIdsInAReplan() throws Exception {
        assertThat(uids(text(PLAN))).doesNotHaveDuplicates().isEqualTo(uids(text(later())));
    }

    @Test
    void anotherSeasonHasOtherIds() throws Exception {
        assertThat(uids(text(PLAN)))
                .doesNotContainAnyElementsOf(
                        uids(CalendarFile.text(HostileNames.season("other"), PLAN, Optional.empty())));
    }

    @Test
    void theSameTextComesOutEveryTimeAlsoOverItself() {
        String text = text(PLAN);
        assertThat(text(PLAN)).isEqualTo(text);
        assertThat(over(text, PLAN)).isEqualTo(text);
    }

    @Test
    void aReplanRaisesTheSequenceOfWhatChangedAndOfNothingElse() throws Exception {
        String replanned = over(text(PLAN), later());
        assertThat(sequences(replanned)).containsExactly("0", "0", "1", "0", "0");
        assertThat(value(events(replanned).get(2), Property.DTSTAMP)).isEqualTo("20270419T000100Z");
        assertThat(sequences(over(replanned, PLAN))).containsExactly("0", "0", "2", "0", "0");
    }

    @Test
    void whatIsNoMoreIsCancelledAndMayComeBack() throws Exception {
        String first = text(PLAN);
        String without = over(first, withoutRig());
        List<VEvent> events = events(without);
        assertThat(uids(without)).containsExactlyInAnyOrderElementsOf(uids(first));
        assertThat(events.subList(2, 5)).allSatisfy(event -> {
            assertThat(value(event, Property.STATUS)).isEqualTo("CANCELLED");
            assertThat(value(event, Property.SEQUENCE)).isEqualTo("1");
        });
        assertThat(over(without, withoutRig())).as("cancelled once").isEqualTo(without);
        assertThat(over(without, PLAN)).doesNotContain("CANCELLED");
        assertThat(sequences(over(without, PLAN))).containsExactly("2", "2", "0", "2", "0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mine",
                "BEGIN:VCALENDAR\r\nPRODID:-//other//EN\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n",
                "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nDTSTART:soon\r\n"
            })
    void whatIsNoCalendarOfAPlanIsNotCarriedOn(String text) {
        assertThat(CalendarBefore.read(text)).isEmpty();
    }

    @Test
    void aZoneComesWithItsDefinition() throws Exception {
        String text = CalendarFile.text(in("America/Chicago"), PLAN, Optional.empty());
        assertThat(text).containsOnlyOnce("BEGIN:VTIMEZONE").contains("DTSTART;TZID=America/Chicago:20270420T064000");
        assertThat(start(events(text).get(2))).isEqualTo(Instant.parse("2027-04-20T11:40:00Z"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"+02:00", "UTC+2", "Z"})
    void aZoneWithoutDefinitionGivesTimesInUtc(String zone) throws Exception {
        String text = CalendarFile.text(in(zone), PLAN, Optional.empty());
        Instant start = at(TUESDAY, "06:40").atZone(ZoneId.of(zone)).toInstant();
        assertThat(text).doesNotContain("TZID");
        assertThat(start(events(text).get(2))).isEqualTo(start);
    }

    private static String text(Plan plan) {
        return CalendarFile.text(SEASON, plan, Optional.empty());
    }

    private static String over(String before, Plan plan) {
        Optional<CalendarBefore> read = CalendarBefore.read(before);
        assertThat(read).isPresent();
        return CalendarFile.text(SEASON, plan, read);
    }

    /** The planter's Tuesday ends half an hour later. */
    private static Plan later() {
        List<Activity> activities = new ArrayList<>(PLAN.planters().get("P1").activities());
        activities.set(3, new Activity.Plant(at(TUESDAY, "07:16"), at(TUESDAY, "09:46"), "N40", "L0001", 8));
        return with(
                Map.of("P1", new Plan.PlanterPlan(2_000, List.of("N40", "S80"), List.of(), activities)), PLAN.rigs());
    }

    private static Plan withoutRig() {
        return with(PLAN.planters(), Map.of());
    }

    private static Plan with(Map<String, Plan.PlanterPlan> planters, Map<String, Plan.RigPlan> rigs) {
        return new Plan(
                PLAN.season(),
                PLAN.score(),
                PLAN.totals(),
                planters,
                rigs,
                PLAN.loads(),
                PLAN.batches(),
                PLAN.unserved(),
                PLAN.bounds(),
                PLAN.limits());
    }

    private static Season in(String zone) {
        return SEASON.change().first(MONDAY).timezone(ZoneId.of(zone)).season();
    }

    private static List<VEvent> events(String text) throws Exception {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertThat(calendar.validate().hasErrors()).as("valid for the library").isFalse();
        return calendar.getComponents(Component.VEVENT);
    }

    private static List<String> uids(String text) throws Exception {
        return events(text).stream().map(event -> value(event, Property.UID)).toList();
    }

    private static List<String> sequences(String text) throws Exception {
        return events(text).stream()
                .map(event -> value(event, Property.SEQUENCE))
                .toList();
    }

    private static Instant start(VEvent event) {
        Optional<DtStart<Temporal>> start = event.getProperty(Property.DTSTART);
        return OffsetDateTime.from(start.orElseThrow().getDate()).toInstant();
    }

    private static Instant end(VEvent event) {
        Optional<DtEnd<Temporal>> end = event.getProperty(Property.DTEND);
        return OffsetDateTime.from(end.orElseThrow().getDate()).toInstant();
    }

    private static String value(VEvent event, String property) {
        Optional<Property> found = event.getProperty(property);
        return found.map(Property::getValue).orElse("");
    }
}

package freshfurrow.app.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of seasons that are begun. */
final class NewSeasonTest {
    static final Surroundings HERE = new Surroundings(LocalDate.of(2027, 3, 1), ZoneId.of("America/Chicago"));

    private static NewSeason begun(UnitSystem units, Map<Section, List<Entry>> entries, FieldRow... rows) {
        return NewSeason.of(new Answers(units, entries, GivenFields.table(List.of(rows)), false), HERE);
    }

    private static List<Entry> one(String key, String typed) {
        return List.of(new Entry("", Map.of(key, typed)));
    }

    private static FieldRow field(String id, String name) {
        return new FieldRow(id, name, "40", "41.02", "-97.01", "corn", "");
    }

    private static Season season(NewSeason begun) {
        assertThat(begun.problems()).isEmpty();
        return ((Reading.Valid) begun.reading()).season();
    }

    @Test
    void figuresTypedAsPeopleTypeThemAreWrittenAsTheFileHasThem() {
        NewSeason begun = begun(
                UnitSystem.US,
                Map.of(
                        Section.SEASON,
                        List.of(new Entry(
                                "",
                                Map.of(
                                        "name",
                                        "River: #1",
                                        "hours",
                                        "7-12, 12:30 to 8 pm",
                                        "closed",
                                        "sundays, 5/31/2027"))),
                        Section.PLACES,
                        one("at", "41.00 N, 97.00 W"),
                        Section.CROPS,
                        List.of(new Entry("corn", Map.of("window", "4/22/2027 to 5/8/2027"))),
                        Section.PLANTERS,
                        List.of(new Entry("", Map.of("tank", "1,200", "width", "40 feet", "fieldEfficiency", "70 %"))),
                        Section.RIGS,
                        List.of(new Entry(
                                "",
                                Map.of("batchTime", "10 minutes", "nurseTank", "1500 gallons", "payload", "14,000")))),
                field("N40", "North forty"));
        assertThat(begun.text())
                .contains(
                        "  name: \"River: #1\"\n",
                        "  first: 2027-04-19  # default\n",
                        "hours: [\"07:00/12:00\", \"12:30/20:00\"]\n",
                        "closed: [SUNDAY, 2027-05-31]\n",
                        "  yard: {lat: 41.00, lon: -97.00}\n",
                        "    window: 2027-04-22/2027-05-08\n",
                        "    width: 40 ft\n",
                        "    tank: 1200 gal\n",
                        "    fieldEfficiency: 0.70\n",
                        "    speed: 5 mph  # default; usual 4 to 7 mph (ASABE D497, row-crop planters)\n",
                        "    batchTime: 10 min\n",
                        "    nurseTank: 1500 gal\n",
                        "    payload: 14000 lb\n",
                        "    # bucket: 25 lb  (not given)\n",
                        "    lat: 41.00  # default: at the yard\n");
        assertThat(begun.fieldsText())
                .isEqualTo("id,name,area (ac),lat,lon,crop\nN40,North forty,40,41.02,-97.01,corn\n");
        assertThat(season(begun).applicators().get(0).tankL()).isCloseTo(1200 * 3.785411784, within(1e-9));
    }

    @Test
    void aMetricSeasonIsWrittenInHectaresAndLitres() {
        NewSeason begun = begun(
                UnitSystem.METRIC,
                Map.of(
                        Section.PLACES,
                        one("at", "48.6 2.3"),
                        Section.RECIPES,
                        one("mix", "160"),
                        Section.PLANTERS,
                        one("rowSpacing", "0.5 m")),
                new FieldRow("", "Über dem Hang", "16,5", "48,62", "2.29", "Silage maize", "well"));
        assertThat(begun.text())
                .contains("mix: 160 L/ha\n", "rowSpacing: 0.5 m\n", "width: 9 m  # default", "  Silage-maize:\n")
                .doesNotContain("gal", "mph");
        assertThat(begun.fieldsText())
                .isEqualTo(
                        "id,name,area (ha),lat,lon,crop,drainage\nUber-dem-Hang,Über dem Hang,16.5,48.62,2.29,Silage-maize,well\n");
        assertThat(season(begun).fields().get(0).areaHa()).isEqualTo(16.5);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void anExampleIsASeasonOfDefaultsThatAreAllSaidToBeSome(UnitSystem units) {
        NewSeason example = NewSeason.of(ExampleFarm.in(units), HERE);
        assertThat(season(example).fields()).hasSize(3);
        assertThat(example.missing()).isEmpty();
        assertThat(example.text()
                        .lines()
                        .filter(line -> line.matches(" +[a-zA-Z]+: .+|(hours|closed): .+"))
                        .filter(line -> !line.matches(" +at: .*")))
                .hasSizeGreaterThan(30)
                .allMatch(line -> line.contains("# default") || line.contains("# invented"));
        assertThat(example.text().lines().filter(line -> line.contains("; usual ")))
                .hasSizeGreaterThan(15)
                .allMatch(
                        line -> line.matches(
                                ".*\\((common practice, no source|ASABE D497, row-crop planters|no public figure is known; .*)\\)"));
    }

    /** Field efficiency 0.50 to 0.75, typically 0.65, and 4 to 7 mph: ASABE D497, row-crop planters, from memory. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void defaultsOfAPlanterAreWithinThePublishedRange(UnitSystem units) {
        Planter planter = (Planter)
                season(NewSeason.of(ExampleFarm.in(units), HERE)).applicators().get(0);
        assertThat(planter.fieldEfficiency()).isBetween(0.50, 0.75).isEqualTo(0.65);
        assertThat(planter.speedMPerS() / 0.44704).isBetween(4.0, 7.0);
    }

    @Test
    void aHalfMadeSeasonSaysWhatIsMissing() {
        NewSeason begun = begun(UnitSystem.US, Map.of(), new FieldRow("S80", "", "", "", "", "", ""), field("N40", ""));
        assertThat(begun.missing())
                .containsExactly("where the yard is", "the area of S80", "the latitude of S80", "the longitude of S80");
        assertThat(begun.text())
                .contains(
                        "  yard: {}  # still missing: where it is",
                        "fields: fields.csv  # still missing: the area of S80; the latitude of S80; the longitude of S80\n",
                        "    # still missing: where it is, like lat: 41.02 and lon: -97.01\n");
        assertThat(begun.problems())
                .extracting(problem -> problem.file() + " " + problem.path())
                .contains(
                        "season.yaml places.yard.lat",
                        "season.yaml waterPoints.well.lon",
                        "fields.csv area",
                        "fields.csv lat");
        assertThat(begun(UnitSystem.US, Map.of()).missing()).containsExactly("where the yard is", "fields");
        assertThat(begun(UnitSystem.US, Map.of()).text()).contains("fields: fields.csv  # still missing: fields\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=HYPERLINK(\"x\")",
                "a, \"b\"\nc",
                "<script>alert(1)</script>",
                "\u202eback\u0007",
                "- x: {y",
                "'",
                "# no",
                "&a *b !!c |",
                "\ud800",
                "+@-="
            })
    void hostileNamesAreTextAndNothingElse(String name) {
        NewSeason begun = begun(
                UnitSystem.US,
                Map.of(Section.SEASON, one("name", "S" + name), Section.PLACES, one("at", "41,-97")),
                field("N40", name));
        Season season = season(begun);
        assertThat(season.name()).isEqualTo(Names.name("S" + name));
        assertThat(season.fields()).hasSize(1);
        assertThat(begun.fieldsText().lines().skip(1))
                .allMatch(line -> !line.split(",", -1)[1].replace("\"", "").matches("[=+@-].*"));
    }

    @ParameterizedTest
    @CsvSource({
        "tank, soon",
        "tank, 12 bushels",
        "tank, 0 gal",
        "speed, -5",
        "fieldEfficiency, 1e999999999",
        "width, '{a: [b'"
    })
    void whatIsNotUnderstoodIsWrittenAsItWasTypedAndRefusedAtItsPlace(String key, String typed) {
        NewSeason begun = begun(
                UnitSystem.US,
                Map.of(Section.PLACES, one("at", "41,-97"), Section.PLANTERS, one(key, typed)),
                field("N40", "North forty"));
        assertThat(begun.problems()).singleElement().satisfies(problem -> assertThat(problem.path())
                .isEqualTo("planters.P1." + key));
        assertThat(begun.problemsAt("planters.P1." + key)).hasSize(1);
    }

    @Test
    void halfAWindowIsKeptAndItsOtherEndIsMissing() {
        NewSeason begun = begun(
                UnitSystem.METRIC,
                Map.of(
                        Section.PLACES,
                        one("at", "41,-97"),
                        Section.CROPS,
                        List.of(
                                new Entry("szója", Map.of("window", "2027-04-26 to ")),
                                new Entry("corn", Map.of("window", " to 2027-05-20")))),
                field("N40", "").withCrop("szója"));
        assertThat(begun.missing())
                .containsExactly("the last day of the window of szója", "the first day of the window of corn");
        assertThat(begun.text())
                .contains(
                        "    window: 2027-04-26 to  # still missing: its last day\n",
                        "    window: to 2027-05-20  # still missing: its first day\n");
        assertThat(begun.problems()).hasSize(2);
        assertThat(begun.unusable()).isEmpty();
    }

    @Test
    void anAnswerThatCannotBeUsedIsToldFromOneThatIsMissingAndByItsField() {
        NewSeason begun = begun(
                UnitSystem.METRIC,
                Map.of(Section.PLANTERS, one("tank", "soon")),
                new FieldRow("", "Akácos tag", "", "146.6702", "20.1311", "corn", ""),
                new FieldRow("", "Nagyrét", "x", "46.6", "20.1", "corn", ""));
        assertThat(begun.missing()).containsExactly("where the yard is", "the area of Akácos tag");
        assertThat(begun.unusable())
                .extracting(
                        problem -> begun.fieldOf(problem).map(FieldRow::label).orElse("-") + ": " + problem.path())
                .containsExactlyInAnyOrder("-: planters.P1.tank", "Akácos tag: lat", "Nagyrét: area");
    }

    @Test
    void aNameThatTwoThingsHaveIsWrongAtTheSecondOfThem() {
        NewSeason begun = begun(
                UnitSystem.US,
                Map.of(
                        Section.PLACES,
                        one("at", "41,-97"),
                        Section.PLANTERS,
                        List.of(new Entry("Old blue", Map.of()), new Entry("old  BLUE", Map.of("tank", "soon"))),
                        Section.COMPOST,
                        List.of(
                                new Entry("", Map.of()),
                                new Entry("Old-Blue", Map.of()),
                                new Entry("Old Blue", Map.of()))),
                field("N40", ""));
        assertThat(begun.unusable())
                .extracting(problem -> problem.path() + ": " + problem.reason())
                .containsExactly(
                        "planters.old-BLUE-2: the id old-BLUE is a planter's already",
                        "compost.Old-Blue-2: the id Old-Blue is a compost lot's already",
                        "planters.old-BLUE-2.tank: 'soon' is not a quantity");
        assertThat(begun.text())
                .contains(
                        "  Old-blue:  # Old blue\n",
                        "  old-BLUE-2:  # old BLUE\n",
                        "  windrow:  # default\n",
                        "  Old-Blue:\n",
                        "  Old-Blue-2:  # Old Blue\n");
    }

    @ParameterizedTest
    @EnumSource(
            value = Section.class,
            names = {"PLANTERS", "RIGS", "WATER", "COMPOST"})
    void hostileNamesOfThingsAreCommentsAndNothingElse(Section section) {
        for (String name : List.of("x: {y", "# no", "\u202eback\u0007", "a\n  P7: {}", "\ud800", "&a *b !!c |")) {
            NewSeason begun = begun(
                    UnitSystem.US,
                    Map.of(Section.PLACES, one("at", "41,-97"), section, List.of(new Entry(name, Map.of()))),
                    field("N40", ""));
            assertThat(season(begun).applicators()).as(name).hasSize(1);
            assertThat(begun.text()).doesNotContain("  P7", "\u202e", "\u0007");
        }
    }

    @Test
    void aFileOfFieldsAloneDodgesNoNamesOfThingsThatItsSeasonMayNotHave() {
        GivenFields given = GivenFields.table(
                List.of(field("yard", ""), field("", "Well"), field("", "Far").withCrop("")));
        FieldsText fields = FieldsText.of(given, UnitSystem.US, Optional.empty(), HERE);

        assertThat(fields.rows()).extracting(FieldRow::id).containsExactly("yard", "Well", "Far");
        assertThat(fields.text()).contains("\nyard,,40,", "\nWell,Well,40,");
        assertThat(fields.problems()).isEmpty();
    }

    @Test
    void aDrawnFieldIsKnownByItsProblemToo() throws UnusableMap {
        GivenFields drawn = DrawnFields.read("""
                {"type": "FeatureCollection", "features": [
                  {"type": "Feature", "properties": {"name": "Nagyrét", "crop": "corn"},
                    "geometry": {"type": "Polygon", "coordinates": [[[20, 46], [20.01, 46], [20.01, 46.01], [20, 46]]]}},
                  {"type": "Feature", "properties": {"name": "Kútágas", "crop": "corn"}, "geometry": null}]}
                """);
        NewSeason begun = NewSeason.of(
                new Answers(UnitSystem.METRIC, Map.of(Section.PLACES, one("at", "46.0, 20.0")), drawn, false), HERE);
        assertThat(begun.problems()).isNotEmpty().allSatisfy(problem -> assertThat(
                        begun.fieldOf(problem).map(FieldRow::label))
                .contains("Kútágas"));
    }

    @Test
    void aDecimalCommaIsUnderstoodWhereItCanBeNothingElse() {
        NewSeason begun = begun(
                UnitSystem.METRIC,
                Map.of(
                        Section.PLACES,
                        one("at", "46,6541; 20,1502"),
                        Section.PLANTERS,
                        List.of(new Entry("", Map.of("speed", "7,5", "width", "6,25 m"))),
                        Section.RECIPES,
                        one("compost", "2,5 kg/ha")),
                new FieldRow("", "Akácos tag", "42,5 ha", "46,6702", "20,1311", "corn", ""));
        assertThat(begun.text())
                .contains(
                        "yard: {lat: 46.6541, lon: 20.1502}",
                        "speed: 7.5 km/h\n",
                        "width: 6.25 m\n",
                        "compost: 2.5 kg/ha\n");
        assertThat(season(begun).fields().get(0).areaHa()).isEqualTo(42.5);
    }

    @Test
    void aCommaThatCouldPartThousandsOrDecimalsIsRefused() {
        NewSeason begun = begun(
                UnitSystem.METRIC,
                Map.of(Section.PLACES, one("at", "41,-97"), Section.PLANTERS, one("tank", "1,500 L")),
                field("N40", ""));
        assertThat(begun.unusable()).singleElement().satisfies(problem -> assertThat(problem.toString())
                .contains("planters.P1.tank: '1,500 L' is not a quantity")
                .endsWith(", with a point in decimals and nothing between thousands"));
    }

    @Test
    void noTwoThingsHaveTheSameId() {
        NewSeason begun = begun(
                UnitSystem.US,
                Map.of(Section.PLACES, one("at", "41,-97")),
                field("yard", ""),
                field("", "Well"),
                field("", "well"),
                field("", "???"));
        assertThat(season(begun).fields())
                .extracting(field -> field.id())
                .containsExactly("yard-2", "Well-2", "well-3", "F04");
    }

    @Test
    void idsAreTheNamesWithoutMarksOnTheirLetters() {
        NewSeason begun = begun(
                UnitSystem.METRIC,
                Map.of(Section.PLACES, one("at", "41,-97")),
                field("", "Hosszú-dűlő").withCrop("szója"),
                field("", "Akácos tag").withCrop("kukorica"),
                field("", "Kút - gas").withCrop("SZOJA"));
        assertThat(season(begun).fields())
                .extracting(field -> field.id(), field -> field.name(), field -> field.crop())
                .containsExactly(
                        tuple("Hosszu-dulo", "Hosszú-dűlő", "szoja"),
                        tuple("Akacos-tag", "Akácos tag", "kukorica"),
                        tuple("Kut-gas", "Kút - gas", "szoja"));
    }

    @Test
    void namesInOtherScriptsHaveNumberedIdsAndStayApart() {
        NewSeason begun = begun(
                UnitSystem.METRIC,
                Map.of(
                        Section.PLACES,
                        one("at", "41,-97"),
                        Section.CROPS,
                        List.of(new Entry("соя", Map.of("window", "2027-05-01 to 2027-05-10")))),
                field("", "Поле 7").withCrop("жито"),
                field("", "Нива 7").withCrop("Соя"));
        assertThat(season(begun).fields())
                .extracting(field -> field.id(), field -> field.name(), field -> field.crop())
                .containsExactly(tuple("F01", "Поле 7", "crop-2"), tuple("F02", "Нива 7", "crop-1"));
        assertThat(begun.text()).contains("  crop-1:\n    window: 2027-05-01/2027-05-10\n");
    }

    @Test
    void oneCropHasOneSpelling() {
        NewSeason begun = begun(
                UnitSystem.US,
                Map.of(
                        Section.PLACES,
                        one("at", "41,-97"),
                        Section.CROPS,
                        List.of(
                                new Entry("Corn", Map.of("window", "2027-05-01 to 2027-05-10")),
                                new Entry("CORN", Map.of()))),
                field("N40", "North forty"),
                field("S80", "South eighty").withCrop(""));
        assertThat(season(begun).fields()).extracting(field -> field.crop()).containsOnly("Corn");
        assertThat(begun.text()).contains("crops:\n  Corn:\n    window: 2027-05-01/2027-05-10\n\n");
    }

    @Test
    void defaultDatesFollowWhatIsKnown() {
        assertThat(begun(UnitSystem.US, Map.of(Section.SEASON, one("first", "2027-09-01")))
                        .text())
                .contains(
                        "last: 2027-10-18  # default", "from: 2027-09-01  # default", "window: 2027-09-01/2027-10-18");
        Surroundings summer = new Surroundings(LocalDate.of(2027, 7, 1), HERE.zone());
        assertThat(NewSeason.of(ExampleFarm.in(UnitSystem.US), summer).text())
                .contains("name: Season 2028", "first: 2028-04-19");
    }
}

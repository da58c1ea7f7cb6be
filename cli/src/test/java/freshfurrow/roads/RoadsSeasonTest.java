package freshfurrow.roads;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.editing.Draft;
import freshfurrow.app.editing.EditAnswer;
import freshfurrow.app.editing.SeasonEditing;
import freshfurrow.cli.command.Freshfurrow;
import freshfurrow.model.edit.Edit;
import freshfurrow.model.edit.Value;
import freshfurrow.model.read.Problem;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seasons whose distances come from a map of roads, with the usual rates, drum and batch: common practice, no source. */
class RoadsSeasonTest {
    /** All on one meridian at the equator: a hundredth of a degree is 1,111.949 m on the sphere, and a constant factor less on WGS84. */
    private static final String SEASON = """
            season: {name: By roads, first: 2027-04-19, last: 2027-05-08, timezone: Africa/Nairobi}
            hours: ["07:00/12:00", "12:30/20:00"]
            places: {yard: {lat: 0.00, lon: 37.0}}
            recipes:
              standard: {mix: 20 gal/ac, compost: 2 lb/ac, hold: 5 h}
            crops:
              corn: {window: 2027-04-20/2027-05-01}
            fields:
              N40: {area: 42 ac, crop: corn, lat: 0.03, lon: 37.0}
              S80: {area: 78 ac, crop: corn, lat: -0.02, lon: 37.0}
            planters:
              P1: {width: 40 ft, rowSpacing: 30 in, speed: 5 mph, fieldEfficiency: 0.65, tank: 600 gal, roadSpeed: 15 mph,
                   fillSetup: 6 min, moveTime: 12 min, at: yard}
            rigs:
              R1: {drum: 40 gal, batchCompost: 30 lb, batchTime: 15 min, cleanTime: 3 min, nurseTank: 1200 gal,
                   transferRate: 60 gal/min, roadSpeed: 35 mph, extractAt: field, at: yard}
            waterPoints:
              well: {flow: 40 gal/min, lat: 0.01, lon: 37.0}
            compost:
              windrow: {mass: 4000 lb, from: 2027-04-01}
            travel: %s
            """;

    private static final OsmMap MERIDIAN = new OsmMap()
            .point(1, -0.05, 37)
            .point(2, 0.01, 37)
            .point(3, 0.05, 37)
            .point(4, 0.01, 37.01)
            .way(List.of(1, 2, 3), "highway=tertiary")
            .way(List.of(2, 4), "highway=track");

    /** In hundredths of a degree: 1, 3, 2; 2, 3; 5. */
    private static final String MATRIX = """
            from,to,distance
            yard,well,1112 m
            yard,N40,3336 m
            yard,S80,2224 m
            well,N40,2224 m
            well,S80,3336 m
            N40,S80,5560 m
            """;

    /** Of the sphere of 6,371,000 m by the radius of the meridian of WGS84 at the equator, 6,378,137 x (1 - 0.00669437999014). */
    private static final double SPHERE_BY_ELLIPSOID = 6_371_000 / (6_378_137 * (1 - 0.00669437999014));

    @TempDir
    private Path folder = Path.of("");

    private Path season(String name, String travel) throws IOException {
        Path own = Files.createDirectories(folder.resolve(name));
        MERIDIAN.writtenTo(own.resolve("county.osm"));
        Files.writeString(own.resolve("ways.csv"), MATRIX);
        Files.writeString(own.resolve("season.yaml"), SEASON.formatted(travel));
        return own;
    }

    private record Result(int code, String out, String err) {}

    private static Result run(Object... command) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] arguments = List.of(command).stream().map(String::valueOf).toArray(String[]::new);
        PrintWriter printed = new PrintWriter(out);
        PrintWriter said = new PrintWriter(err);
        int code = Freshfurrow.run(printed, said, arguments);
        printed.flush();
        said.flush();
        return new Result(code, out.toString(), err.toString());
    }

    private static ObjectNode plan(Path season) throws IOException {
        Result result = run("plan", season, "--steps", "300", "--seed", "7", "--out", season.resolve("plan"));
        assertThat(result.code()).as(result.err()).isZero();
        assertThat(run("audit", season, season.resolve("plan")).out()).startsWith("No problems found.");
        ObjectNode plan = (ObjectNode)
                new ObjectMapper().readTree(season.resolve("plan/plan.json").toFile());
        ((ObjectNode) plan.get("season")).remove("sha256");
        return plan;
    }

    @Test
    void equalDistancesMakeTheSamePlanWhereverTheyComeFrom() throws Exception {
        String byRoads = plan(season("roads", "{roads: county.osm}")).toString();

        assertThat(plan(season("matrix", "{matrix: ways.csv}")).toString()).isEqualTo(byRoads);
        assertThat(plan(season("straight", "{roadFactor: " + SPHERE_BY_ELLIPSOID + "}"))
                        .toString())
                .isEqualTo(byRoads);
        assertThat(plan(season("farther", "{roadFactor: 1.3}")).toString()).isNotEqualTo(byRoads);
    }

    @Test
    void keptDistancesMakeTheSamePlanToTheByte() throws Exception {
        Path season = season("roads", "{roads: county.osm, width: 12 ft, weight: 20000 lb}");
        plan(season);
        byte[] first = Files.readAllBytes(season.resolve("plan/plan.json"));
        byte[] page = Files.readAllBytes(season.resolve("plan/plan.html"));
        Files.delete(season.resolve("county.osm"));
        run("plan", season, "--steps", "300", "--seed", "7", "--out", season.resolve("again"));

        assertThat(season.resolve("again/plan.json")).hasBinaryContent(first);
        assertThat(season.resolve("again/plan.html")).hasBinaryContent(page);
    }

    @Test
    void aPlanIsOfItsSeasonAsLongAsTheDistancesAreTheSame() throws Exception {
        Path season = season("roads", "{roads: county.osm}");
        plan(season);
        Files.writeString(season.resolve("county.osm"), MERIDIAN.xml() + "<!-- newer -->\n");
        assertThat(run("page", season.resolve("plan"), "--force").code()).isZero();

        Files.writeString(
                season.resolve("county.osm"),
                MERIDIAN.xml().replace("lat='0.01' lon='37.0'", "lat='0.01' lon='37.001'"));
        assertThat(run("page", season.resolve("plan"), "--force").err()).contains("different checksum");
    }

    @Test
    void thePageDrawsDrivesAlongRoadsAndSaysWhoseMapItIs() throws Exception {
        Path season = season("roads", "{roads: county.osm}");
        plan(season);
        String page = Files.readString(season.resolve("plan/plan.html"));
        plan(season("straight", "{roadFactor: 1.3}"));

        assertThat(page).contains("\"ways\":[[").contains("© OpenStreetMap contributors");
        assertThat(Files.readString(folder.resolve("straight/plan/plan.html"))).doesNotContain("\"ways\":[[");
    }

    @Test
    void metricSeasonsHaveRoadsToo() throws Exception {
        Path season = Files.createDirectories(folder.resolve("metric"));
        for (String name : List.of("season.yaml", "fields.geojson")) {
            Files.copy(Path.of("../scenarios/metric").resolve(name), season.resolve(name));
        }
        GridMap.of(48.4, 2.1, 48.8, 2.6, 0.01).writtenTo(season.resolve("roads.osm"));
        withTravel(season, "{roads: roads.osm, width: 3.5 m, weight: 12 t}");

        plan(season);
        assertThat(run("check", season).out()).contains("  machines as they drive: 3.5 m wide, 12,000 kg");
    }

    @Test
    void editsLeaveTheMapOfRoadsAsItIs() throws Exception {
        Path season = season("edited", "{roads: county.osm, width: 12 ft} # the county's");
        SeasonEditing editing = new SeasonEditing(season);
        Draft before = editing.draft();
        EditAnswer answer = editing.apply(
                List.of(
                        new Edit.Set(List.of("travel", "weight"), Value.of("9 t")),
                        new Edit.Set(List.of("planters", "P1", "tank"), Value.of("500 gal"))),
                before.digests());

        assertThat(answer).isInstanceOf(EditAnswer.Saved.class);
        assertThat(Files.readString(season.resolve("season.yaml")))
                .contains("travel: {roads: county.osm, width: 12 ft, weight: 9 t} # the county's");
        assertThat(editing.draft().problems()).isEmpty();
    }

    @Test
    void aDraftIsThatOfNowWheneverTheMapWasChanged() throws Exception {
        Path season = season("draft", "{roads: county.osm}");
        SeasonEditing editing = new SeasonEditing(season);
        assertThat(editing.draft().problems()).isEmpty();
        Files.writeString(season.resolve("county.osm"), "no map");

        assertThat(editing.draft().problems()).singleElement().asString().contains("cannot be read as a map");
    }

    private static void withTravel(Path season, String travel) throws IOException {
        Path file = season.resolve("season.yaml");
        String text = Files.readString(file).replaceAll("(?m)^travel:.*\\R", "");
        Files.writeString(file, text + "\ntravel: " + travel + "\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {roads: [a]}                                | travel.roads: is not a file name; name a map, like roads: county.osm.pbf
            {roads: none.osm}                           | travel.roads: 'none.osm' does not exist; check the name and the folder
            {roads: ../county.osm}                      | travel.roads: '../county.osm' leads outside the season's folder; put the file beside the season file and name it without a path
            {roads: ways.csv}                           | travel.roads: 'ways.csv' is neither .osm nor .osm.pbf; save the map as one of the two
            {roads: county.osm, matrix: ways.csv}       | travel.roads: cannot be used with a table of distances; keep either roads or matrix
            {roads: county.osm, roadFactor: 1.2}        | travel.roadFactor: cannot be used with a map of roads; keep either roadFactor or roads
            {width: 12 ft}                              | travel.width: says nothing without a map of roads; add roads: county.osm.pbf, or leave it out
            {roads: county.osm, width: 60 ft}           | travel.width: 60 ft is out of range; use 1.7 to 40 ft (0.5 to 12.2 m)
            {roads: county.osm, weight: 80 t}           | travel.weight: 80 t is out of range; use 221 to 110,000 lb (0.1 to 50 t)
            {roads: county.osm, weight: 12 gal}         | travel.weight: gal is not a unit of a mass; use one of lb, kg, g, t, like 25 lb
            {road: county.osm}                          | travel.road: is not a known key; did you mean roads?
            """)
    void whatIsWrongIsSaid(String travel, String problem) throws IOException {
        assertThat(problems(season("wrong", travel))).containsExactly("season.yaml:21: " + problem);
    }

    @Test
    void aFieldFarFromEveryRoadIsNamedWhereItStands() throws IOException {
        Path season = season("far", "{roads: county.osm}");
        edit(season.resolve("season.yaml"), "lat: 0.03, lon: 37.0", "lat: 0.03, lon: 37.01");

        assertThat(problems(season))
                .containsExactly(
                        "season.yaml:9: fields.N40: N40 is more than 1,000 m (0.6 mi) from every road of county.osm; "
                                + "put its lat and lon where machines leave the road for it, or take a map that reaches as far");
    }

    @Test
    void placesWithNoWayBetweenThemAreNamed() throws IOException {
        Path season = season("apart", "{roads: county.osm, weight: 9 t}");
        new OsmMap()
                .point(1, -0.05, 37)
                .point(2, 0.01, 37)
                .point(3, 0.02, 37)
                .point(4, 0.05, 37)
                .way(List.of(1, 2), "highway=tertiary")
                .way(List.of(2, 3), "highway=tertiary", "bridge=yes", "maxweight=8")
                .way(List.of(3, 4), "highway=tertiary")
                .writtenTo(season.resolve("county.osm"));

        assertThat(problems(season))
                .containsExactly("season.yaml:21: travel.roads: there is no way on it from yard to N40, well to N40, "
                        + "N40 to S80; take a map that holds all roads between them, or look at width and weight, which close "
                        + "roads and bridges with a lower limit, or use roadFactor or a matrix");
    }

    private static List<String> problems(Path season) {
        Reading reading = SeasonFiles.read(season, List.of());
        return reading instanceof Reading.Invalid invalid
                ? invalid.problems().stream().map(Problem::toString).toList()
                : List.of();
    }

    private static void edit(Path file, String before, String after) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(before);
        Files.writeString(file, text.replace(before, after));
    }
}

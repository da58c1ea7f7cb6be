package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keys that are missing, unknown or written twice, and names that name nothing. */
final class WrongKeysTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    name: Example, | `` | season.yaml:1: season.name: is missing; write it like name: Spring at the river farm
                    name: Example  | name: "" | season.yaml:1: season.name: is empty; write it like name: Spring at the river farm
                    first: 2027-04-19, | `` | season.yaml:1: season.first: is missing; write a date, like first: 2027-04-19
                    fillSetup: 6 min | `` | season.yaml:14: planters.P1.fillSetup: is missing; write a time like fillSetup: 20 min
                    fieldEfficiency: 0.65 | `` | season.yaml:14: planters.P1.fieldEfficiency: is missing; write a share from 0.01 to 1, like fieldEfficiency: 0.65
                    drum: 40 gal   | drum: | season.yaml:26: rigs.R1.drum: is missing; write a volume like drum: 600 gal
                    flow: 40 gal/min, | `` | season.yaml:37: waterPoints.well.flow: is missing; write a flow like flow: 40 gal/min
                    `mass: 4000 lb, ` | `` | season.yaml:39: compost.windrow.mass: is missing; write a mass like mass: 25 lb
                    `from: 2027-04-01}` | }  | season.yaml:39: compost.windrow.from: is missing; write the first day it may be used, like from: 2027-04-01
                    `date: 2027-05-03, ` | `` | season.yaml:43: rain[1].date: is missing; write a date, like date: 2027-05-03
                    `, amount: 0.8 in` | `` | season.yaml:43: rain[1].amount: is missing; write a depth of rain like amount: 0.8 in
                    `hours: ["07:00/12:00", "12:30/20:00"]` | `` | season.yaml:1: hours: is missing; write working hours, like hours: ["07:00/12:00", "12:30/20:00"]
                    area: 40 ac, | `` | season.yaml:11: fields.N40.area: is missing; write an area like area: 40 ac
                    lat: 41.02, | `` | season.yaml:11: fields.N40.lat: is missing; write degrees north, like lat: 41.0
                    `lon: -97.01, ` | `` | season.yaml:11: fields.N40.lon: is missing; write degrees east, negative in the west, like lon: -97.0
                    `lon: -97.01, crop: corn` | `lon: -97.01` | season.yaml:11: fields.N40.crop: is missing; write it like crop: corn
                    lat: 41.01, | `` | season.yaml:37: waterPoints.well.lat: is missing; write degrees north, like lat: 41.0
                    fieldEfficiency | efficiency | season.yaml:14: planters.P1.fieldEfficiency: is missing; write a share from 0.01 to 1, like fieldEfficiency: 0.65
                    moveTime: 12 min | moveTime: 12 min\\n    movTime: 12 min | season.yaml:23: planters.P1.movTime: is not a known key; did you mean moveTime?
                    goals: | gaols: | season.yaml:44: gaols: is not a known key; did you mean goals?
                    timezone: America/Chicago | timezone: America/Chicago, weather: green | season.yaml:1: season.weather: is not a known key; known here: name, first, last, timezone, clock
                    timezone: America/Chicago | timezone: America/Chicago, clock: noon | season.yaml:1: season.clock: 'noon' is not a clock; write 12h or 24h
                    crop: corn}\\n  S80 | crop: corn, drainge: poor}\\n  S80 | season.yaml:11: fields.N40.drainge: is not a known key; did you mean drainage?
                    roadFactor: 1.3 | roadfactor: 1.3 | season.yaml:40: travel.roadfactor: is not a known key; did you mean roadFactor?
                    timezone: America/Chicago | timezone: Corn Belt | season.yaml:1: season.timezone: 'Corn Belt' is not a time zone; write one like America/Chicago
                    name: North forty | name: "North\\u001b[31m forty" | season.yaml:11: fields.N40.name: 'North?[31m forty' contains an invisible character; leave it out
                    name: North forty | name: "North\\Nforty" | season.yaml:11: fields.N40.name: 'North?forty' contains an invisible character; leave it out
                    name: North forty | name: "North\\x85forty" | season.yaml:11: fields.N40.name: 'North?forty' contains an invisible character; leave it out
                    name: North forty | name: "\\x85North forty" | season.yaml:11: fields.N40.name: '?North forty' contains an invisible character; leave it out
                    name: North forty | name: "North \\ud83cforty" | season.yaml:11: fields.N40.name: 'North ?forty' contains an invisible character; leave it out
                    name: North forty | name: "North forty\\udf31" | season.yaml:11: fields.N40.name: 'North forty?' contains an invisible character; leave it out
                    name: Example     | name: "Exam\\Nple" | season.yaml:1: season.name: 'Exam?ple' contains an invisible character; leave it out
                    name: Example     | name: "Exam\\ud83cple" | season.yaml:1: season.name: 'Exam?ple' contains an invisible character; leave it out
                    N40:              | "N\\N40": | season.yaml:11: fields.N?40: 'N?40' is not an id; use 1 to 40 letters, digits, - and _, starting with a letter or digit
                    N40:              | "N40\\ud83c": | season.yaml:11: fields.N40?: 'N40?' is not an id; use 1 to 40 letters, digits, - and _, starting with a letter or digit
                    name: North forty | name: [North, forty] | season.yaml:11: fields.N40.name: is a list where one value belongs; write one value here
                    extractAt: field | extractAt: barn | season.yaml:34: rigs.R1.extractAt: 'barn' is not a place to extract; write field or water
                    """)
    void aMissingUnknownOrMeaninglessKeyIsOneLine(String before, String after, String line) {
        assertThat(changed(before, after).problems()).contains(line);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    lon: -97.0, crop: corn}   | lon: -97.0, crop: cron}  | season.yaml:12: fields.S80.crop: there is no crop cron; did you mean corn?
                    lon: -97.0, crop: corn}   | lon: -97.0, crop: oats}  | season.yaml:12: fields.S80.crop: there is no crop oats; known are corn
                    lon: -97.0, crop: corn}   | lon: -97.0, crop: corn, recipe: standart} | season.yaml:12: fields.S80.recipe: there is no recipe standart; did you mean standard?
                    lon: -97.0, crop: corn}   | lon: -97.0, crop: corn, planters: [P2]}   | season.yaml:12: fields.S80.planters[1]: there is no planter P2; did you mean P1?
                    lon: -97.0, crop: corn}   | lon: -97.0, crop: corn, planters: []}     | season.yaml:12: fields.S80.planters: is empty; name a planter, or leave it out if all planters may plant the field
                    lon: -97.0, crop: corn}   | lon: -97.0, crop: corn, drainage: swampy} | season.yaml:12: fields.S80.drainage: 'swampy' is not a drainage class; write well, moderate or poor
                    lateWeight: 1.0           | recipe: standrad         | season.yaml:9: crops.corn.recipe: there is no recipe standrad; did you mean standard?
                    moveTime: 12 min\\n    at: yard | moveTime: 12 min\\n    at: yrad | season.yaml:23: planters.P1.at: there is no place yrad; did you mean yard?
                    extractAt: field\\n    at: yard | extractAt: field\\n    at: barn | season.yaml:35: rigs.R1.at: there is no place barn; did you mean yard?
                    yard: {lat                | N40: {lat                | season.yaml:11: fields.N40: the id N40 is taken by season.yaml:5 already; give fields, places and water points ids of their own
                    well: {lat                | S80: {lat                | season.yaml:12: fields.S80: the id S80 is taken by season.yaml:37 already; give fields, places and water points ids of their own
                    R1:                       | P1:                      | season.yaml:25: rigs.P1: the id P1 is a planter's already; give every machine its own id
                    N40: {name                | S80: {name               | season.yaml:12: fields.S80: is repeated here, first in line 11; keep one of the two
                    P1:                       | P 1:                     | season.yaml:14: planters.P 1: 'P 1' is not an id; use 1 to 40 letters, digits, - and _, starting with a letter or digit
                    windrow:                  | ../windrow:              | season.yaml:39: compost.../windrow: '../windrow' is not an id; use 1 to 40 letters, digits, - and _, starting with a letter or digit
                    `windrow: {mass: 4000 lb, from: 2027-04-01}` | windrow: | season.yaml:39: compost.windrow: is empty; write what this compost lot is like, or leave it out
                    """)
    void anIdThatNamesNothingOrTwoThingsIsOneLine(String before, String after, String line) {
        assertThat(changed(before, after).problems()).contains(line);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    fields      | season.yaml:1: fields: is missing; name a file, like fields: fields.csv, or write a map of fields
                    planters    | season.yaml:1: planters: is missing; write at least one planter
                    rigs        | season.yaml:1: rigs: is missing; write at least one rig
                    waterPoints | season.yaml:1: waterPoints: is missing; write at least one water point
                    recipes     | season.yaml:1: recipes: is missing; write at least one recipe
                    compost     | season.yaml:1: compost: is missing; write at least one compost lot
                    """)
    void aSeasonWithoutAPartItNeedsIsOneLine(String key, String line) {
        assertThat(without(key).problems()).containsExactly(line);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    fields      | season.yaml:1: fields: there is no field; write at least one field
                    planters    | season.yaml:1: planters: is empty; write at least one planter
                    rigs        | season.yaml:1: rigs: is empty; write at least one rig
                    waterPoints | season.yaml:1: waterPoints: is empty; write at least one water point
                    recipes     | season.yaml:1: recipes: is empty; write at least one recipe
                    """)
    void anEmptyMapOfWhatASeasonNeedsIsOneLine(String key, String line) {
        WrittenSeason season = without(key);
        assertThat(new WrittenSeason(folder, key + ": {}\n" + season.text()).problems())
                .containsExactly(line);
    }

    @Test
    void manyProblemsAreAllToldInTheOrderOfTheirLines() {
        assertThat(WrittenSeason.in(folder)
                        .with("timezone: America/Chicago", "timezone: Corn")
                        .with("mix: 20 gal/ac", "mix: 20")
                        .with("window: 2027-04-20/2027-05-12", "window: 2027-05-12/2027-04-20")
                        .with("speed: 5 mph", "speed: fast")
                        .with("flow: 40 gal/min", "flow: -1 gal/min")
                        .problems())
                .containsExactly(
                        "season.yaml:1: season.timezone: 'Corn' is not a time zone; write one like America/Chicago",
                        "season.yaml:7: recipes.standard.mix: 20 has no unit; write a volume per area like 16 gal/ac",
                        "season.yaml:9: crops.corn.window: the window ends before it opens; put the earlier date first",
                        "season.yaml:17: planters.P1.speed: 'fast' is not a quantity; write a speed like 5 mph",
                        "season.yaml:37: waterPoints.well.flow: -1 gal/min is out of range;"
                                + " use 0.2 to 15,000 gal/min (0.01 to 1,000 L/s)");
    }

    @Test
    void whatDoesNotFitTogetherIsToldBesideWhatIsWrongByItself() {
        assertThat(WrittenSeason.in(folder)
                        .with("closed: [SUNDAY", "closed: [SONNTAG")
                        .with("window: 2027-04-20/2027-05-12", "window: 2028-04-20/2028-05-12")
                        .with("tank: 600 gal", "tank: 200 gal")
                        .with("extractAt: field\n    at: yard", "extractAt: field\n    at: yrad")
                        .problems())
                .containsExactly(
                        "season.yaml:3: closed[1]: 'SONNTAG' is not a weekday; write SUNDAY or a date like 2027-05-31",
                        "season.yaml:9: crops.corn.window: the window 2028-04-20/2028-05-12 lies outside the season"
                                + " 2027-04-19/2027-06-05; move the window or the season's first and last day",
                        "season.yaml:19: planters.P1.tank: holds 200 gal, less than the 300 gal of mix that one batch of"
                                + " R1 makes by recipe standard; use a larger tank or less compost per batch",
                        "season.yaml:35: rigs.R1.at: there is no place yrad; did you mean yard?");
    }

    @Test
    void aVeryLongIdIsCutInItsMessage() {
        assertThat(WrittenSeason.in(folder)
                        .with("S80: {area", "S" + "8".repeat(900) + ": {area")
                        .problems())
                .hasSize(1)
                .allMatch(line -> line.length() < 400)
                .allMatch(line -> line.contains("is not an id"));
    }

    @Test
    void aVeryLongValueIsCutInItsMessage() {
        assertThat(WrittenSeason.in(folder)
                        .with("tank: 600 gal", "tank: " + "6 ".repeat(100_000))
                        .problems())
                .hasSize(1)
                .allMatch(line -> line.length() < 400)
                .allMatch(line -> line.contains("is not a quantity"));
    }

    private WrittenSeason changed(String before, String after) {
        return WrittenSeason.in(folder)
                .with(before.replace("\\n", "\n"), after == null ? "" : after.replace("\\n", "\n"));
    }

    /** The season without a top key and all that is indented below it. */
    private WrittenSeason without(String key) {
        String text = WrittenSeason.RIGHT.replaceAll("(?m)^" + key + ":.*\\n(?:[ ].*\\n)*", "");
        return new WrittenSeason(folder, text);
    }
}

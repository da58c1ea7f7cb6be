package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WrongQuantitiesTest {
    /** Such as "use 1 s to 24 h" or "use 2 in to 16 ft (0.05 to 5 m)". */
    private static final Pattern TOLD_RANGE = Pattern.compile("use ([0-9.]+)(?: (\\S+))? to ([0-9.,]+) ([^ (]+)");

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            payload: 12000 lb   | bucket: %s      | -1 lb
            payload: 12000 lb   | emptyWeight: %s | -1 lb
            payload: 12000 lb   | compostLoading: %s | -1 min/lb
            refill: 30 min      | compostTrip: %s | -1 min
            amount: 0.8 in      | amount: %s      | -1 in
            ignoreBelow: 0.1 in | ignoreBelow: %s | -1 in
            well: 1 d/in        | well: %s        | -1 d/in
            refill: 30 min      | refill: %s      | -1 min
            width: 40 ft        | width: %s       | -1 ft
            speed: 5 mph        | speed: %s       | -1 mph
            roadSpeed: 15 mph   | roadSpeed: %s   | -1 mph
            flow: 40 gal/min    | flow: %s        | -1 gal/min
            dailyLimit: 9000 gal | dailyLimit: %s | -1 gal
            mix: 20 gal/ac      | mix: %s         | -1 gal/ac
            compost: 2 lb/ac    | compost: %s     | -1 lb/ac
            hold: 5 h           | hold: %s        | -1 h
            fillSetup: 6 min    | fillSetup: %s   | -1 min
            batchTime: 15 min   | batchTime: %s   | -1 min
            """)
    void theEndsOfARangeAsTheyAreToldAreInIt(String before, String after, String wrong) {
        WrittenSeason season = WrittenSeason.in(folder);
        String told = season.with(before, String.format(after, wrong)).problems().stream()
                .filter(line -> line.contains("out of range"))
                .findFirst()
                .orElseThrow();
        Matcher ends = TOLD_RANGE.matcher(told);
        assertThat(ends.find()).as(told).isTrue();
        String least = ends.group(1) + " " + (ends.group(2) == null ? ends.group(4) : ends.group(2));
        String most = ends.group(3).replace(",", "") + " " + ends.group(4);
        for (String end : List.of(least, most)) {
            assertThat(season.with(before, String.format(after, end)).problems())
                    .as(end)
                    .noneMatch(line -> line.contains("out of range"));
        }
    }

    @Test
    void theSeasonThatTheOtherTestsChangeIsRight() {
        assertThat(WrittenSeason.in(folder).problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    tank: 600 gal | tank: 600          | season.yaml:19: planters.P1.tank: 600 has no unit; write a volume like 600 gal
                    tank: 600 gal | tank: 600 ac       | season.yaml:19: planters.P1.tank: ac is not a unit of a volume; use one of gal, L, m3, like 600 gal
                    tank: 600 gal | tank: 600 Gal      | season.yaml:19: planters.P1.tank: Gal is not a unit of a volume; use one of gal, L, m3, like 600 gal
                    tank: 600 gal | tank: -600 gal     | season.yaml:19: planters.P1.tank: -600 gal is out of range; use 0.3 to 50,000 gal (1 to 200,000 L)
                    tank: 600 gal | tank: 0 gal        | season.yaml:19: planters.P1.tank: 0 gal is out of range; use 0.3 to 50,000 gal (1 to 200,000 L)
                    tank: 600 gal | tank: NaN gal      | season.yaml:19: planters.P1.tank: 'NaN gal' is not a quantity; write a volume like 600 gal
                    tank: 600 gal | tank: .nan         | season.yaml:19: planters.P1.tank: '.nan' is not a quantity; write a volume like 600 gal
                    tank: 600 gal | tank: 1e308 gal    | season.yaml:19: planters.P1.tank: 1e308 gal is out of range; use 0.3 to 50,000 gal (1 to 200,000 L)
                    tank: 600 gal | tank: 1e999 gal    | season.yaml:19: planters.P1.tank: '1e999 gal' is not a quantity; write a volume like 600 gal
                    tank: 600 gal | tank: 1_000 gal    | season.yaml:19: planters.P1.tank: '1_000 gal' is not a quantity; write a volume like 600 gal, with a point in decimals and nothing between thousands
                    tank: 600 gal | tank: 1,000 gal    | season.yaml:19: planters.P1.tank: '1,000 gal' is not a quantity; write a volume like 600 gal, with a point in decimals and nothing between thousands
                    tank: 600 gal | tank: [600 gal]    | season.yaml:19: planters.P1.tank: is a list where one value belongs; write one value here
                    tank: 600 gal | tank: {gal: 600}   | season.yaml:19: planters.P1.tank: is a map of keys where one value belongs; write one value here
                    fieldEfficiency: 0.65 | fieldEfficiency: 65      | season.yaml:18: planters.P1.fieldEfficiency: 65 is out of range; use a share from 0.01 to 1, like 0.65
                    fieldEfficiency: 0.65 | fieldEfficiency: 65 %    | season.yaml:18: planters.P1.fieldEfficiency: '65 %' is not a plain number; write a number like 0.65
                    width: 40 ft  | width: 40 km       | season.yaml:15: planters.P1.width: 40 km is out of range; use 0.4 to 200 ft (0.1 to 61 m)
                    hold: 5 h     | hold: 5            | season.yaml:7: recipes.standard.hold: 5 has no unit; write a time like 20 min
                    mix: 20 gal/ac | mix: 20 gal       | season.yaml:7: recipes.standard.mix: gal is not a unit of a volume per area; use one of gal/ac, L/ha, L/ac, gal/ha, like 16 gal/ac
                    amount: 0.8 in | amount: -0.8 in   | season.yaml:43: rain[1].amount: -0.8 in is out of range; use 0 to 78 in (2,000 mm)
                    hoses: 1      | hoses: 1.5         | season.yaml:37: waterPoints.well.hoses: is not a whole number; use a whole number from 1 to 100
                    hoses: 1      | hoses: 0           | season.yaml:37: waterPoints.well.hoses: 0 is out of range; use a whole number from 1 to 100
                    roadFactor: 1.3 | roadFactor: 0.9  | season.yaml:40: travel.roadFactor: 0.9 is out of range; use a number from 1 to 10
                    lateWeight: 1.0 | lateWeight: -1   | season.yaml:9: crops.corn.lateWeight: -1 is out of range; use a number from 0 to 1,000
                    refill: 30 min | refill: 30        | season.yaml:44: goals.refill: 30 has no unit; write a time like 20 min
                    well: 1 d/in  | well: 1 d          | season.yaml:41: drying.well: d is not a unit of a drying time per depth of rain; use one of d/in, d/mm, like 2 d/in
                    lat: 41.02    | lat: 141.02        | season.yaml:11: fields.N40.lat: 141.02 is out of range; use degrees from -90 to 90
                    lat: 41.0, lon: -97.0} | lat: -97.0, lon: 41.0} | season.yaml:5: places.yard.lat: -97.0 is out of range; use degrees from -90 to 90; maybe lat and lon are swapped
                    lon: -97.02   | lon: -197.02       | season.yaml:37: waterPoints.well.lon: -197.02 is out of range; use degrees from -180 to 180
                    """)
    void aWrongFigureOrUnitIsOneLine(String before, String after, String line) {
        assertThat(WrittenSeason.in(folder).with(before, after).problems()).containsExactly(line);
    }
}

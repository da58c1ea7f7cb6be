package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Machines, recipes and hours that are right each by itself and cannot work together. */
final class WrongMachinesTest {
    @TempDir
    private Path folder = Path.of("");

    /** 7.5 lb at 2 lb/ac serve 3.75 ac; 40 gal on 3.75 ac are 10.7 gal/ac, more than the 10 gal/ac of mix. */
    @Test
    void aRecipeThatNeedsStrongerConcentrateThanTheDrumMakesIsOneLine() {
        assertThat(WrittenSeason.in(folder)
                        .with("mix: 20 gal/ac", "mix: 10 gal/ac")
                        .with("batchCompost: 30 lb", "batchCompost: 7.5 lb")
                        .problems())
                .containsExactly(
                        "season.yaml:26: rigs.R1.drum: recipe standard takes 10.7 gal/ac of its concentrate but"
                                + " only 10.0 gal/ac of mix; use more compost per batch, a smaller drum, less compost per area"
                                + " or more mix per area");
    }

    @Test
    void theSameIsSaidInMetricUnitsWhereTheSeasonIsMetric() {
        assertThat(WrittenSeason.in(folder)
                        .with("mix: 20 gal/ac, compost: 2 lb/ac", "mix: 90 L/ha, compost: 2 kg/ha")
                        .with("batchCompost: 30 lb", "batchCompost: 3 kg")
                        .with("drum: 40 gal", "drum: 150 L")
                        .problems())
                .containsExactly("season.yaml:26: rigs.R1.drum: recipe standard takes 100.0 L/ha of its concentrate but"
                        + " only 90.0 L/ha of mix; use more compost per batch, a smaller drum, less compost per area or"
                        + " more mix per area");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    tank: 600 gal     | tank: 299.7 gal   | season.yaml:19: planters.P1.tank: holds 299.7 gal, less than the 300.0 gal of mix that one batch of R1 makes by recipe standard; use a larger tank or less compost per batch
                    tank: 600 gal     | tank: 299 gal     | season.yaml:19: planters.P1.tank: holds 299 gal, less than the 300 gal of mix that one batch of R1 makes by recipe standard; use a larger tank or less compost per batch
                    nurseTank: 1200 gal | nurseTank: 39 gal | season.yaml:30: rigs.R1.nurseTank: holds less than the drum; give a nurse tank of at least one drum of water
                    rowSpacing: 30 in | rowSpacing: 60 in\\n    wideness: 1 | season.yaml:17: planters.P1.wideness: is not a known key; known here: width, rowSpacing, speed, fieldEfficiency, tank, leastFill, roadSpeed, fillSetup, moveTime, overtime, flush, longestWait, at, hours
                    width: 40 ft      | width: 2 ft       | season.yaml:16: planters.P1.rowSpacing: rows are farther apart than the planter is wide; check width and rowSpacing
                    batchTime: 15 min | batchTime: 451 min | season.yaml:28: rigs.R1.batchTime: a batch does not fit in any of the rig's hours; give longer hours or a shorter batch
                    cleanTime: 3 min  | cleanTime: 451 min | season.yaml:29: rigs.R1.cleanTime: cleaning does not fit in any of the rig's hours; give longer hours
                    moveTime: 12 min  | moveTime: 449 min  | season.yaml:20: planters.P1.roadSpeed: a drive to any field does not fit in any of the planter's hours; check coordinates or distances, road speeds and hours
                    fillSetup: 6 min  | fillSetup: 441 min | season.yaml:19: planters.P1.tank: filling it does not fit in any hours that the planter shares with a rig; give longer hours, a smaller tank or a higher transfer rate
                    transferRate: 60 gal/min | transferRate: 1.3 gal/min | season.yaml:19: planters.P1.tank: filling it does not fit in any hours that the planter shares with a rig; give longer hours, a smaller tank or a higher transfer rate
                    flow: 40 gal/min  | flow: 2.6 gal/min  | season.yaml:30: rigs.R1.nurseTank: filling it does not fit in any hours that the rig shares with a water point; give longer hours, a smaller nurse tank or more flow
                    hookUp: 2 min     | hookUp: 421 min    | season.yaml:30: rigs.R1.nurseTank: filling it does not fit in any hours that the rig shares with a water point; give longer hours, a smaller nurse tank or more flow
                    treatment: 0 min  | treatment: 421 min | season.yaml:30: rigs.R1.nurseTank: filling it does not fit in any hours that the rig shares with a water point; give longer hours, a smaller nurse tank or more flow
                    `hoses: 1,`       | `hoses: 1, hours: ["20:00/24:00", "00:00/07:00"],` | season.yaml:30: rigs.R1.nurseTank: filling it does not fit in any hours that the rig shares with a water point; give longer hours, a smaller nurse tank or more flow
                    payload: 12000 lb | hours: ["20:00/24:00", "00:00/07:00"] | season.yaml:19: planters.P1.tank: filling it does not fit in any hours that the planter shares with a rig; give longer hours, a smaller tank or a higher transfer rate
                    fillSetup: 6 min  | fillSetup: 6 min\\n    flush: 451 min | season.yaml:22: planters.P1.flush: flushing leaves nothing of a day of the planter's hours; give longer hours, or less time for flush
                    payload: 12000 lb | setUp: 450 min     | season.yaml:33: rigs.R1.setUp: setting up and closing up leave nothing of a day of the rig's hours; give longer hours, or less time for setUp and closeUp
                    payload: 12000 lb | setUp: 5 h\\n    closeUp: 451 min | season.yaml:34: rigs.R1.closeUp: setting up and closing up leave nothing of a day of the rig's hours; give longer hours, or less time for setUp and closeUp
                    payload: 12000 lb | setUp: 436 min     | season.yaml:28: rigs.R1.batchTime: a batch does not fit in any of the rig's hours; give longer hours or a shorter batch
                    lat: 40.98        | lat: 30.98         | season.yaml:12: fields.S80: is too far away: a drive to it does not fit in any planter's hours; check coordinates or distances, road speeds and hours
                    lat: 41.01        | lat: 11.01         | season.yaml:32: rigs.R1.roadSpeed: a drive to a water point and from there to a field does not fit in any of the rig's hours; check coordinates or distances, road speeds and hours
                    """)
    void whatNeverFitsIsOneLine(String before, String after, String line) {
        assertThat(WrittenSeason.in(folder)
                        .with(before, after.replace("\\n", "\n"))
                        .problems())
                .contains(line);
    }

    /** 1,200 gal at 2.6 gal/min are 461.5 min: more than 12:30 to 20:00, less than the night from 20:00 to 07:00. */
    @Test
    void hoursThatTouchAtMidnightAreOnePeriod() {
        assertThat(WrittenSeason.in(folder)
                        .with("flow: 40 gal/min", "flow: 2.6 gal/min")
                        .with("payload: 12000 lb", "hours: [\"00:00/12:00\", \"20:00/24:00\"]")
                        .problems())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    at: barn | compostLoad: 600 lb | season.yaml:39: compost.windrow.at: there is no place barn; did you mean yard?
                    at: yard | compostLoad: 29 lb | season.yaml:33: rigs.R1.compostLoad: holds less than the 30 lb of one full batch; give at least batchCompost
                    at: yard | `payload: 12000 lb\n    emptyWeight: 1960 lb` | season.yaml:33: rigs.R1.payload: leaves 26 lb for compost beside the empty weight and a full nurse tank, less than the 30 lb of one full batch; check payload, emptyWeight and nurseTank, or use a smaller nurse tank
                    at: yard | `compostLoad: 10000 lb\n    compostLoading: 0.05 min/lb` | season.yaml:33: rigs.R1.compostLoad: loading it does not fit in any of the rig's hours; give longer hours, a smaller compostLoad or a quicker compostLoading
                    `at: yard}\n  heap: {mass: 1 t, from: 2027-04-01` | compostLoad: 600 lb | season.yaml:40: compost.heap.at: is missing, while other lots say where they lie; give every lot a place, or none
                    """)
    void compostThatCannotBeFetchedIsOneLine(String lot, String rig, String line) {
        assertThat(WrittenSeason.in(folder)
                        .with("from: 2027-04-01", "from: 2027-04-01, " + lot.replace("\\n", "\n"))
                        .with("payload: 12000 lb", rig.replace("\\n", "\n"))
                        .problems())
                .containsExactly(line);
    }

    @Test
    void aSecondWaterPointOfNoUseIsOneLine() {
        assertThat(WrittenSeason.in(folder)
                        .with(
                                "compost:\n",
                                "  creek: {lat: 41.0, lon: -97.03, flow: 40 gal/min, hours: [\"20:00/20:20\"]}\ncompost:\n")
                        .problems())
                .containsExactly(
                        "season.yaml:38: waterPoints.creek: filling a nurse tank does not fit in any hours that the"
                                + " water point shares with a rig; give longer hours or more flow, or leave this water point out");
    }
}

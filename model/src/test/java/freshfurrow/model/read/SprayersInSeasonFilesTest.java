package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Season;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Swath;
import freshfurrow.model.season.Work;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sprayers of a season file, and the fields that are for them. */
final class SprayersInSeasonFilesTest {
    private static final String REST = "tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard";
    private static final String BOOM =
            "  S1: {width: 30 ft, speed: 6 mph, fieldEfficiency: 0.6, " + REST + ", sprayHours: \"06:00/10:00\"}\n";
    private static final String HOSE = "  H1: {rate: 2 ac/h, " + REST + "}\n";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aBoomHasTheCapacityThatIsPrintedForIt() {
        // Iowa State University Extension PM 696 / A3-24: 30 ft at 6 mph and 60 % make 13.1 ac/h
        Sprayer boom = mixed().season().sprayers().get(0);

        assertThat(boom.fieldCapacityM2PerS() * 3600 / 4046.8564224).isCloseTo(13.1, within(0.05));
        assertThat(boom.work()).isEqualTo(Work.SPRAY);
        assertThat(boom.sprayHours().spans()).hasSize(1);
        assertThat(boom.hours().spans()).as("the season's").hasSize(2);
    }

    @Test
    void aHoseHasItsRate() {
        Sprayer hose = mixed().season().sprayers().get(1);

        assertThat(hose.swath()).isInstanceOf(Swath.Hose.class);
        assertThat(hose.fieldCapacityM2PerS() * 3600 / 4046.8564224).isCloseTo(2, within(1e-9));
    }

    @Test
    void aFieldIsSprayedWhereItOrItsCropSaysSo() {
        Season season = mixed().with("lateWeight: 1.0}", "lateWeight: 1.0, work: spray}")
                .with("lon: -97.01, crop: corn}", "lon: -97.01, crop: corn, work: plant}")
                .season();

        assertThat(season.field("N40").work()).isEqualTo(Work.PLANT);
        assertThat(season.field("S80").work()).isEqualTo(Work.SPRAY);
        assertThat(season.field("S80").allows(season.applicator("S1"))).isTrue();
        assertThat(season.field("S80").allows(season.applicator("P1"))).isFalse();
    }

    @Test
    void aFieldMayNameItsSprayers() {
        Season season = mixed().with("lon: -97.0, crop: corn}", "lon: -97.0, crop: corn, work: SPRAY, sprayers: H1}")
                .season();

        assertThat(season.field("S80").allows(season.applicator("S1"))).isFalse();
        assertThat(season.field("S80").allows(season.applicator("H1"))).isTrue();
    }

    @Test
    void aSeasonMayHaveSprayersOnly() {
        WrittenSeason right = mixed().with("lateWeight: 1.0}", "lateWeight: 1.0, work: spray}");
        String text = right.text().replaceAll("(?m)^planters:\\n(?: .*\\n)*", "");

        assertThat(new WrittenSeason(folder, text).season().planters()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    rate: 2 ac/h, | `rate: 2 ac/h, width: 3 ft,` | season.yaml:26: sprayers.H1.width: stands beside rate; give width, speed and fieldEfficiency of a boom, or the rate of a hose
                    rate: 2 ac/h, | ``           | season.yaml:26: sprayers.H1.rate: is missing, and so are width, speed and fieldEfficiency; write the rate of a hose, like rate: 2 ac/h, or the three figures of a boom
                    rate: 2 ac/h, | `width: 3 ft, fieldEfficiency: 0.5,` | season.yaml:26: sprayers.H1.speed: is missing; write a speed like speed: 5 mph
                    rate: 2 ac/h  | rate: 2 ac   | season.yaml:26: sprayers.H1.rate: ac is not a unit of an area per time; use one of ac/h, ha/h, like 12 ac/h
                    rate: 2 ac/h  | rate: 0 ha/h | season.yaml:26: sprayers.H1.rate: 0 ha/h is out of range; use 0.01 to 2,500 ac/h (0.004 to 1,000 ha/h)
                    `"06:00/10:00"` | `"02:00/04:00"` | season.yaml:25: sprayers.S1.sprayHours: lie outside the sprayer's hours; give spray hours that begin and end within its hours
                    `"06:00/10:00"` | [] | season.yaml:25: sprayers.S1.sprayHours: is empty; write working hours, like sprayHours: ["07:00/12:00", "12:30/20:00"]
                    H1: {         | P1: {        | season.yaml:26: sprayers.P1: the id P1 is a planter's already; give every machine its own id
                    H1: {         | R1: {        | season.yaml:28: rigs.R1: the id R1 is a sprayer's already; give every machine its own id
                    lon: -97.0, crop: corn} | `lon: -97.0, crop: corn, work: spray, sprayers: P1}` | season.yaml:12: fields.S80.sprayers: there is no sprayer P1; did you mean S1?
                    lon: -97.0, crop: corn} | `lon: -97.0, crop: corn, work: spray, planters: P1}` | season.yaml:12: fields.S80.planters: is for fields with work: plant, but this one has work: spray; write sprayers, or work: plant
                    lon: -97.0, crop: corn} | `lon: -97.0, crop: corn, sprayers: S1}` | season.yaml:12: fields.S80.sprayers: is for fields with work: spray, but this one has work: plant; write planters, or work: spray
                    lon: -97.0, crop: corn} | `lon: -97.0, crop: corn, work: spray, sprayers: []}` | season.yaml:12: fields.S80.sprayers: is empty; name a sprayer, or leave it out if all sprayers may spray the field
                    lateWeight: 1.0} | `lateWeight: 1.0, work: mow}` | season.yaml:9: crops.corn.work: 'mow' is not done to fields; write plant or spray
                    """)
    void aMistakeIsOneLine(String before, String after, String problem) {
        assertThat(mixed().with(before, after == null ? "" : after).problems()).containsExactly(problem);
    }

    @Test
    void aMountedSprayerHasWhatItsRigHas() {
        Season season = mounted("on: R1, fillSetup: 2 min, moveTime: 5 min").season();
        Sprayer sprayer = season.sprayers().get(0);

        assertThat(sprayer.on()).contains("R1");
        assertThat(sprayer.tankL()).isEqualTo(season.rig("R1").nurseTankL());
        assertThat(sprayer.roadSpeedMPerS()).isEqualTo(season.rig("R1").roadSpeedMPerS());
        assertThat(sprayer.at()).isEqualTo("yard");
        assertThat(sprayer.hours()).isEqualTo(season.rig("R1").hours());
    }

    @Test
    void whatIsTheRigsIsNotSaidOfAMountedSprayer() {
        assertThat(mounted("on: R1, fillSetup: 2 min, moveTime: 5 min, tank: 300 gal, at: yard")
                        .problems())
                .containsExactly(
                        "season.yaml:25: sprayers.S1.tank: is that of the rig that the sprayer is mounted on;"
                                + " leave it out, or leave out on if the sprayer is a machine of its own",
                        "season.yaml:25: sprayers.S1.at: is that of the rig that the sprayer is mounted on;"
                                + " leave it out, or leave out on if the sprayer is a machine of its own");
    }

    @Test
    void aSprayerIsMountedOnARigThatThereIs() {
        assertThat(mounted("on: R9, fillSetup: 2 min, moveTime: 5 min").problems())
                .containsExactly("season.yaml:25: sprayers.S1.on: there is no rig R9; did you mean R1?");
    }

    @Test
    void toGetReadyToSprayTakesSomeTime() {
        assertThat(mounted("on: R1, fillSetup: 0 min, moveTime: 5 min").problems())
                .containsExactly("season.yaml:25: sprayers.S1.fillSetup: 0 min is out of range; use 1 s to 24 h");
        assertThat(mounted("on: R1, fillSetup: 8 h, moveTime: 5 min").problems())
                .containsExactly("season.yaml:25: sprayers.S1.fillSetup: does not fit in any hours of the rig;"
                        + " give longer hours or less time");
    }

    private WrittenSeason mounted(String keys) {
        return WrittenSeason.in(folder)
                .with(
                        "rigs:\n",
                        "sprayers:\n  S1: {width: 30 ft, speed: 6 mph, fieldEfficiency: 0.6, " + keys + "}\nrigs:\n");
    }

    @Test
    void aFieldThatNobodyCanSprayIsOneLine() {
        assertThat(WrittenSeason.in(folder)
                        .with("lon: -97.0, crop: corn}", "lon: -97.0, crop: corn, work: spray}")
                        .problems())
                .containsExactly("season.yaml:12: fields.S80.work: the season has no sprayer to spray this field;"
                        + " add a sprayer under sprayers, or leave the field out");
    }

    private WrittenSeason mixed() {
        return WrittenSeason.in(folder).with("rigs:\n", "sprayers:\n" + BOOM + HOSE + "rigs:\n");
    }
}

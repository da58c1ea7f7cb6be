package freshfurrow.app.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.log.LogOrder;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From lines of a log to a season that says what they teach. */
class LearnedVariantTest {
    private static final String SEASON = """
            season: {name: Learning, first: 2027-04-19, last: 2027-05-30, timezone: America/Chicago}
            hours: ["07:00/20:00"]
            places: {yard: {lat: 41.0, lon: -97.0}}
            recipes:
              standard: {mix: 20 gal/ac, compost: 2 lb/ac, hold: 5 h}
            crops:
              corn: {window: 2027-04-20/2027-05-20}
              grass: {window: 2027-04-20/2027-05-20, work: spray}
            fields:
              N40: {area: 400 ac, lat: 41.02, lon: -97.01, crop: corn}
              G80: {area: 80 ac, lat: 40.98, lon: -97.02, crop: grass}
            planters:
              P1: {width: 40 ft, rowSpacing: 30 in, speed: 5 mph, fieldEfficiency: 0.5, tank: 600 gal, roadSpeed: 15 mph,
                   fillSetup: 6 min, moveTime: 12 min, at: yard}
            sprayers:
              H1: {rate: 2 ac/h, tank: 300 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min, at: yard}
              B1: {on: R2, width: 40 ft, speed: 5 mph, fieldEfficiency: 0.5, fillSetup: 6 min, moveTime: 12 min}
            rigs:
              R1: {drum: 40 gal, batchCompost: 30 lb, batchTime: 15 min, cleanTime: 3 min, nurseTank: 1200 gal,
                   transferRate: 60 gal/min, roadSpeed: 30 mph, extractAt: water, at: yard}
              R2: {drum: 40 gal, batchCompost: 30 lb, batchTime: 15 min, leastBatchTime: 12 min, cleanTime: 3 min, nurseTank: 1200 gal,
                   transferRate: 60 gal/min, roadSpeed: 30 mph, extractAt: field, at: yard}
            waterPoints:
              well: {lat: 41.01, lon: -97.02, flow: 40 gal/min}
            compost:
              windrow: {mass: 4000 lb, from: 2027-04-01}
            """;

    private static final String HEADER = "entry,at,fact,place,machine,load,lot,amount,until,took,voids,note\n";

    @TempDir
    Path folder;

    private final StringBuilder log = new StringBuilder(HEADER);
    private int entries;

    @BeforeEach
    void writeSeason() throws IOException {
        Files.writeString(folder.resolve("season.yaml"), SEASON);
    }

    /** Each day alike, so that the interval is that one figure. Widths times speeds are 40 x 5 / 8.25 = 24.24 ac/h. */
    @Test
    void everyFigureThatDiffersIsWrittenInTheSeasonsUnitsAndReadBack() throws IOException {
        for (int day = 20; day < 26; day++) {
            line(day, "09:00", "batch,well,R1,,windrow,30 lb,,18 min");
            line(day, "10:00", "transfer,,R1,,,500 gal,,10 min");
            line(day, "11:00", "drive,yard well,R1,,,,,60 min");
            line(day, "12:00", "planted,N40,P1,none,,8 ac,,50 min");
            line(day, "13:00", "planted,G80,H1,,,3 ac,,1 h");
            line(day, "14:00", "planted,G80,B1,,,10 ac,,1 h");
        }

        Learned learned = learned();

        assertThat(learned.values())
                .contains(
                        value("18 min", "rigs", "R1", "batchTime"),
                        value("50 gal/min", "rigs", "R1", "transferRate"),
                        value("0.396", "planters", "P1", "fieldEfficiency"),
                        value("3 ac/h", "sprayers", "H1", "rate"),
                        value("0.413", "sprayers", "B1", "fieldEfficiency"))
                .hasSize(6)
                .anyMatch(value -> value.path().equals(List.of("rigs", "R1", "roadSpeed")));
        Path file = folder.resolve("learned.yaml");
        LearnedVariant.write(learned, file, false);
        Season season = new GivenSeason(folder, List.of(file)).read().season();
        assertThat(season.rig("R1").batchTimeS()).isEqualTo(18 * 60);
        assertThat(season.rig("R1").transferLPerS()).isCloseTo(50 * 3.785411784 / 60, within(1e-9));
        assertThat(season.rig("R2")).isEqualTo(learned.season().rig("R2"));
        assertThat(season.planters().get(0).fieldEfficiency()).isEqualTo(0.396);
    }

    /** What differs no more has its value in the season file, to its three digits. */
    @Test
    void whatWasLearnedAndWrittenDiffersNoMore() throws IOException {
        for (int day = 20; day < 28; day++) {
            line(day, "09:00", "batch,well,R1,,windrow,30 lb,," + (15 + day % 4) + " min");
        }
        Path file = folder.resolve("learned.yaml");
        LearnedVariant.write(learned(), file, false);

        Learned again = Learned.by(order(List.of(file)), clock());

        assertThat(again.values()).isEmpty();
    }

    /** 30 ac/h is more than 24.24 ac/h: no field efficiency says that. */
    @Test
    void aFieldCapacityBeyondWidthTimesSpeedIsNotWritten() throws IOException {
        for (int day = 20; day < 26; day++) {
            line(day, "12:00", "planted,N40,P1,none,,15 ac,,30 min");
        }

        assertThat(learned().lessons().differing()).hasSize(1);
        assertThat(learned().values()).isEmpty();
        assertThatThrownBy(() -> LearnedVariant.write(learned(), folder.resolve("learned.yaml"), false))
                .isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.refusal())
                        .isInstanceOf(LogRefusal.NothingLearned.class));
    }

    /** R2's least batch time is 12 min: a batch time of 10 min does not go with that, and nobody guesses another. */
    @Test
    void aVariantThatTheSeasonRefusesIsNotWritten() throws IOException {
        for (int day = 20; day < 26; day++) {
            line(day, "09:00", "batch,,R2,,windrow,30 lb,,10 min");
        }
        Path file = folder.resolve("learned.yaml");

        assertThatThrownBy(() -> LearnedVariant.write(learned(), file, false))
                .isInstanceOfSatisfying(Refused.class, refused -> assertThat(
                                ((InputRefusal.ProblemsFound) refused.refusal()).problems())
                        .anySatisfy(problem -> assertThat(problem.toString()).contains("leastBatchTime")));
        assertThat(file).doesNotExist();
    }

    /** A sprayer that is mounted on a rig drives as that rig. */
    @Test
    void whatIsMountedOnARigTeachesTheSpeedOfTheRig() throws IOException {
        for (int day = 20; day < 26; day++) {
            line(day, "11:00", "drive,yard well,B1,,,,,60 min");
        }

        assertThat(learned().values())
                .extracting(LearnedValue::path)
                .containsExactly(List.of("rigs", "R2", "roadSpeed"));
    }

    private void line(int day, String time, String cells) {
        log.append(++entries + ",2027-04-" + day + "T" + time + "," + cells + ",,\n");
    }

    private static LearnedValue value(String text, String... path) {
        return new LearnedValue(List.of(path), text);
    }

    private Learned learned() {
        return Learned.by(order(List.of()), clock());
    }

    private LogOrder order(List<Path> variants) {
        try {
            Files.writeString(folder.resolve("log.csv"), log);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return new LogOrder(
                new GivenSeason(folder, variants), Optional.empty(), Optional.empty(), true, Optional.empty());
    }

    private static SeasonClock clock() {
        return new SeasonClock(Clock.fixed(Instant.parse("2028-01-01T00:00:00Z"), ZoneOffset.UTC));
    }
}

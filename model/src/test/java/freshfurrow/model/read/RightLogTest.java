package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Season;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One acre is 0.40468564224 ha, one pound 0.45359237 kg, one gallon 3.785411784 L. */
class RightLogTest {
    @TempDir
    Path folder;

    private Season season;

    @BeforeEach
    void readSeason() {
        season = WrittenSeason.in(folder).season();
    }

    @Test
    void plantedIsAFieldWithAnAreaAndMaybePlanterAndLoad() {
        WrittenLog log = WrittenLog.of(
                season,
                "1,2027-04-20T11:00,batch,,R1,L0001,windrow,30 lb,,,",
                "2,2027-04-20T15:10,planted,N40,P1,L0001,,15 ac,,,good moisture",
                "3,2027-04-20T18:00,planted,N40,,,,5 ac,,,");

        assertThat(log.log().entries().get(1))
                .isEqualTo(new Entry(
                        2,
                        LocalDateTime.of(2027, 4, 20, 15, 10),
                        new Fact.Planted("N40", 6.0702846336, Optional.of("P1"), Optional.of("L0001")),
                        "good moisture"));
        assertThat(log.log().entries().get(2).fact())
                .isEqualTo(new Fact.Planted("N40", 2.0234282112, Optional.empty(), Optional.empty()));
    }

    @Test
    void aBatchTakesFromOneLotOrSeveralAndGoesIntoOneLoadOrSeveral() throws Exception {
        Season twoLots = WrittenSeason.in(folder)
                .with(
                        "windrow: {mass: 4000 lb, from: 2027-04-01}",
                        "windrow: {mass: 4000 lb, from: 2027-04-01}\n  barn: {mass: 500 lb, from: 2027-04-01}")
                .season();

        assertThat(WrittenLog.of(twoLots, "1,2027-04-20T11:00,batch,well,R1,L0001 L0002,windrow,30 lb,,,")
                        .fact())
                .isEqualTo(new Fact.BatchMade(
                        "R1", Map.of("windrow", 13.6077711), List.of("L0001", "L0002"), Optional.of("well")));
        assertThat(WrittenLog.of(twoLots, "1,2027-04-20T11:00,batch,,R1,,windrow 20lb; barn 10 lb,,,,")
                        .fact())
                .isEqualTo(new Fact.BatchMade(
                        "R1", Map.of("windrow", 9.0718474, "barn", 4.5359237), List.of(), Optional.empty()));
    }

    @Test
    void workMaySayHowLongItTook() {
        List<Entry> entries = WrittenLog.timed(
                        season,
                        "1,2027-04-20T11:00,batch,,R1,L0001,windrow,30 lb,,17.5 min,,",
                        "2,2027-04-20T11:30,transfer,,R1,L0001,,500 L,,9 min,,hose kinked",
                        "3,2027-04-20T12:00,transfer,,R1,,,500 L,,,,",
                        "4,2027-04-20T12:30,drive,yard N40,P1,,,,,1.5 h,,",
                        "5,2027-04-20T15:10,planted,N40,P1,L0001,,15 ac,,3 h,,")
                .log()
                .entries();

        assertThat(entries)
                .extracting(entry -> entry.took().map(Duration::toSeconds))
                .containsExactly(
                        Optional.of(1050L),
                        Optional.of(540L),
                        Optional.empty(),
                        Optional.of(5400L),
                        Optional.of(10800L));
        assertThat(entries.subList(1, 4))
                .extracting(Entry::fact)
                .containsExactly(
                        new Fact.Transferred("R1", 500, Optional.of("L0001")),
                        new Fact.Transferred("R1", 500, Optional.empty()),
                        new Fact.Driven("P1", "yard", "N40"));
    }

    @Test
    void allOtherFactsHaveTheirOwnCells() {
        SeasonLog log = WrittenLog.of(
                        season,
                        "1,2027-04-20T08:30,drawn,well,R1,,,1000 gal,,,",
                        "2,2027-04-20T09:00,delivered,,,,windrow,2 t,,,from the neighbour",
                        "3,2027-04-20T09:30,spoiled,,,,windrow,100 kg,,,",
                        "4,2027-04-20T09:45,spoiled,,,,windrow,all,,,hot and sour",
                        "5,2027-04-20T14:00,rain,,,,,0.8 in,,,",
                        "6,2027-04-20T15:00,down,,R1,,,,2027-04-21T12:00,,pump",
                        "7,2027-04-21T15:00,down,,P1,,,,,,",
                        "8,2027-04-21T16:00,note,,,,,,,,inspector called",
                        "9,2027-04-21T17:00,void,,,,,,,4,only the north end",
                        "10,2027-04-22T07:00,fit,N40,,,,,,,walked it",
                        "11,2027-04-22T07:10,unfit,S80,,,,,2027-04-24,,",
                        "12,2027-04-22T07:20,unfit,N40,,,,,2027-04-23T10:00,,",
                        "13,2027-04-22T07:30,unfit,N40,,,,,,,",
                        "14,2027-04-22T08:00,behind,,P1,,,50 min,,,",
                        "15,2027-04-22T09:00,behind,,P1,,,0 min,,,")
                .log();

        assertThat(log.entries().stream().map(Entry::fact))
                .containsExactly(
                        new Fact.WaterDrawn("well", "R1", 1000 * 3.785411784),
                        new Fact.CompostDelivered("windrow", 2000),
                        new Fact.CompostSpoiled("windrow", OptionalDouble.of(100)),
                        new Fact.CompostSpoiled("windrow", OptionalDouble.empty()),
                        new Fact.RainMeasured(0.8 * 25.4),
                        new Fact.MachineDown("R1", Optional.of(LocalDateTime.of(2027, 4, 21, 12, 0))),
                        new Fact.MachineDown("P1", Optional.empty()),
                        new Fact.Noted(),
                        new Fact.Voided(4),
                        new Fact.GroundJudged("N40", true, Optional.empty()),
                        new Fact.GroundJudged("S80", false, Optional.of(LocalDateTime.of(2027, 4, 24, 0, 0))),
                        new Fact.GroundJudged("N40", false, Optional.of(LocalDateTime.of(2027, 4, 23, 10, 0))),
                        new Fact.GroundJudged("N40", false, Optional.empty()),
                        new Fact.MachineBehind("P1", Duration.ofMinutes(50)),
                        new Fact.MachineBehind("P1", Duration.ZERO));
        assertThat(log.standing().stream().map(Entry::number))
                .containsExactly(1, 2, 3, 5, 6, 7, 8, 10, 11, 12, 13, 14, 15);
        assertThat(log.nextNumber()).isEqualTo(16);
    }

    @Test
    void aLogOfBeforeReadsWithItsOldWordsForVoid() {
        SeasonLog log = new WrittenLog(
                        LogContext.of(season),
                        WrittenLog.HEADER.replace("voids", "takesBack")
                                + "1,2027-04-20T14:00,rain,,,,,0.8 in,,,\n2,2027-04-20T15:00,takeback,,,,,,,1,misread\n")
                .log();

        assertThat(log.entries().get(1).fact()).isEqualTo(new Fact.Voided(1));
        assertThat(log.standing()).isEmpty();
    }

    @Test
    void aLogWithTheOldAndTheNewColumnIsRefused() {
        assertThat(new WrittenLog(LogContext.of(season), "entry,at,fact,voids,takesBack\n").problems())
                .containsExactly("log.csv:1: has both columns voids and takesBack, which mean the same;"
                        + " leave out the column takesBack");
    }

    @Test
    void aSpreadsheetsOwnWayOfWritingTablesIsReadToo() throws Exception {
        String text = """
                note,amount,fact,place,at,entry,,
                "dry, at last",20 ac,planted,N40,2027-04-20 15:10:00,2,,
                ,,,,,,,

                ,0.2 in,rain,,2027-04-19 24:00,1,,
                """;
        Path file = Files.writeString(folder.resolve("log.csv"), "\uFEFF" + text.replace("\n", "\r\n"));

        SeasonLog log = ((LogReading.Valid) LogReader.read(file, LogContext.of(season))).log();

        assertThat(log.entries().stream().map(Entry::number)).containsExactly(2, 1);
        assertThat(log.entries().get(0).note()).isEqualTo("dry, at last");
        assertThat(log.standing())
                .extracting(Entry::at)
                .containsExactly(LocalDateTime.of(2027, 4, 20, 0, 0), LocalDateTime.of(2027, 4, 20, 15, 10));
    }

    @Test
    void aLogThatIsNotThereIsEmpty() {
        assertThat(LogReader.read(LogReader.beside(folder), LogContext.of(season)))
                .isEqualTo(new LogReading.Valid(
                        SeasonLog.EMPTY,
                        // FIPS 180-4's hash of no bytes.
                        "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"));
    }

    @Test
    void theLogIsBesideTheSeasonFile() throws Exception {
        assertThat(LogReader.beside(folder)).isEqualTo(folder.resolve("log.csv"));
        Path file = Files.createFile(folder.resolve("other.yaml"));
        assertThat(LogReader.beside(file)).isEqualTo(folder.resolve("log.csv"));
    }
}

package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.LogContext;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrongLogTest {
    @TempDir
    Path folder;

    private Season season;

    @BeforeEach
    void readSeason() {
        season = WrittenSeason.in(folder).season();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1,2027-04-20T11:00,planted,N4,,,,20 ac,,,             | place: there is no field N4; did you mean N40?
            1,2027-04-20T11:00,planted,,,,,20 ac,,,               | place: is missing; write the id of a field of the season
            1,2027-04-20T11:00,planted,N40,R1,,,20 ac,,,          | machine: there is no planter R1; did you mean P1?
            1,2027-04-20T11:00,planted,N40,,,,20,,,               | amount: 20 has no unit; write an area like 40 ac
            1,2027-04-20T11:00,planted,N40,,,,20 lb,,,            | amount: lb is not a unit of an area; use one of ac, ha, m2, like 40 ac
            1,2027-04-20T11:00,planted,N40,,,,,,,                 | amount: is missing; write an area like 40 ac
            1,2027-04-20T11:00,planted,N40,,,,-3 ac,,,            | amount: -3 ac is out of range; use 1 m2 to 49,000 ac (20,000 ha)
            1,2027-04-20T11:00,planted,N40,,,windrow,20 ac,,,     | lot: says 'windrow', which does not go with planted; leave the cell empty
            1,2027-04-20T11:00,planted,N40,,L1 L2,,20 ac,,,       | load: names 2 loads; write one line for each load
            1,2027-04-20T11:00,plnted,N40,,,,20 ac,,,             | fact: 'plnted' is not a fact that a log knows; did you mean planted?
            1,2027-04-20,planted,N40,,,,20 ac,,,                  | at: '2027-04-20' is not a date and time; write both, like 2027-05-03T15:10
            1,2027-04-20T25:00,planted,N40,,,,20 ac,,,            | at: '25:00' is not a time of day; write hours and minutes, like 07:00
            1,,planted,N40,,,,20 ac,,,                            | at: is missing; write date and time, like 2027-05-03T15:10
            0,2027-04-20T11:00,planted,N40,,,,20 ac,,,            | entry: '0' is not an entry number; write a whole number from 1 to 999999
            ,2027-04-20T11:00,planted,N40,,,,20 ac,,,             | entry: is missing; number the entries 1, 2, 3 and on
            1,2027-04-18T11:00,planted,N40,,,,20 ac,,,            | at: 2027-04-18T11:00 is before the season, which starts on 2027-04-19; check the date; put what was there before in the season file
            1,2028-04-20T11:00,planted,N40,,,,20 ac,,,            | at: 2028-04-20T11:00 is after the season, which ends on 2027-06-05; check date and time; a log tells what has happened
            1,2027-04-20T11:00,planted,N40,,,,41 ac,,,            | amount: N40 has 40 ac left to plant of 40 ac, not 41 ac; check field and amount, or void a wrong entry first
            1,2027-04-20T11:00,batch,,R2,,windrow,30 lb,,,        | machine: there is no rig R2; did you mean R1?
            1,2027-04-20T11:00,batch,,R1,,barn,30 lb,,,           | lot: there is no compost lot barn; known are windrow
            1,2027-04-20T11:00,batch,,R1,,windrow,,,,             | amount: is missing; write a mass like 25 lb
            1,2027-04-20T11:00,batch,,R1,,windrow 20 lb,30 lb,,,  | amount: is given, and amounts of single lots too; leave it empty
            1,2027-04-20T11:00,batch,,R1,,windrow 20 lb; windrow 10 lb,,,, | lot: names windrow twice; add up its amounts
            1,2027-04-20T11:00,batch,,R1,,windrow; windrow 10 lb,,,, | lot: 'windrow' is not a lot with its amount; write it like windrow, or like windrow 20 lb; delivery 10 lb
            1,2027-04-20T11:00,batch,,R1,,windrow,300 lb,,,       | amount: 300 lb is two full batches of R1 or more, 30 lb each; check the amount; write one entry for each batch
            1,2027-04-20T11:00,batch,,R1,L#1,windrow,30 lb,,,     | load: 'L#1' is not an id; use 1 to 40 letters, digits, - and _, starting with a letter or digit
            1,2027-04-20T11:00,batch,nowhere,R1,,windrow,30 lb,,, | place: there is no place nowhere; known are N40, S80, well, yard
            1,2027-04-20T11:00,drawn,pond,R1,,,900 gal,,,         | place: there is no water point pond; known are well
            1,2027-04-20T11:00,drawn,well,R1,,,9000 gal,,,        | amount: 9000 gal is more than R1 holds, 1240 gal in nurse tank and drum; check the amount; write one entry for each draw
            1,2027-04-20T11:00,rain,,,,,100 in,,,                 | amount: 100 in is out of range; use 0.004 to 78 in (0.1 to 2,000 mm)
            1,2027-04-20T11:00,down,,R1,,,,2027-04-20T11:00,,     | until: 2027-04-20T11:00 is not after 2027-04-20T11:00, when it started; write when the machine works again, or leave it empty
            1,2027-04-20T11:00,behind,,P2,,,50 min,,,             | machine: there is no machine P2; did you mean P1?
            1,2027-04-20T11:00,behind,,P1,,,50,,,                 | amount: 50 has no unit; write a time like 20 min
            1,2027-04-20T11:00,behind,,P1,,,2 d,,,                | amount: 2 d is out of range; use 0 min to 24 h
            1,2027-04-20T11:00,behind,,P1,,,-5 min,,,             | amount: -5 min is out of range; use 0 min to 24 h
            1,2027-04-20T11:00,fit,well,,,,,,,                    | place: there is no field well; known are N40, S80
            1,2027-04-20T11:00,fit,N40,,,,,2027-04-21,,           | until: says '2027-04-21', which does not go with fit; leave the cell empty
            1,2027-04-20T11:00,unfit,,,,,,,,                      | place: is missing; write the id of a field of the season
            1,2027-04-20T11:00,unfit,N40,,,,,2027-04-20,,         | until: 2027-04-20T00:00 is not after 2027-04-20T11:00, when that was said; write from when on the ground will be fit, or leave it empty
            1,2027-04-20T11:00,unfit,N40,,,,,soon,,               | until: 'soon' is not a date and time; write both, like 2027-05-03T15:10
            1,2027-04-20T11:00,note,,,,,,,,                       | note: is missing; write the note
            1,2027-04-20T11:00,note,,,,,,,,=1+1                   | note: begins with =, which spreadsheets take for a formula; start it with a letter or a digit
            1,2027-04-20T11:00,void,,,,,,,7,typing error      | voids: there is no earlier entry 7; write the number of the entry that was wrong
            1,2027-04-20T11:00,void,,,,,,,1,typing error      | voids: there is no earlier entry 1; write the number of the entry that was wrong
            """)
    void aWrongCellIsOneLineWithItsPlace(String line, String problem) {
        assertThat(WrittenLog.of(season, line).problems()).containsExactly("log.csv:2: " + problem);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1,2027-04-20T11:00,batch,,R1,,windrow,30 lb,,17,,         | took: 17 has no unit; write a time like 20 min
            1,2027-04-20T11:00,batch,,R1,,windrow,30 lb,,17 lb,,      | took: lb is not a unit of a time; use one of min, h, s, d, like 20 min
            1,2027-04-20T11:00,batch,,R1,,windrow,30 lb,,-17 min,,    | took: -17 min is out of range; use 1 s to 24 h
            1,2027-04-20T11:00,batch,,R1,,windrow,30 lb,,0 s,,        | took: 0 s is out of range; use 1 s to 24 h
            1,2027-04-20T11:00,batch,,R1,,windrow,30 lb,,25 h,,       | took: 25 h is out of range; use 1 s to 24 h
            1,2027-04-20T11:00,batch,,R1,,windrow,30 lb,,1e999 min,,  | took: '1e999 min' is not a quantity; write a time like 20 min
            1,2027-04-20T11:00,rain,,,,,0.8 in,,1 h,,                 | took: says '1 h', which does not go with rain; leave the cell empty
            1,2027-04-20T11:00,transfer,,P1,,,600 gal,,9 min,,        | machine: there is no rig P1; did you mean R1?
            1,2027-04-20T11:00,transfer,,R1,,,,,9 min,,               | amount: is missing; write a volume like 600 gal
            1,2027-04-20T11:00,transfer,,R1,L1 L2,,600 gal,,9 min,,   | load: names 2 loads; write one line for each load
            1,2027-04-20T11:00,drive,yard,R1,,,,,9 min,,              | place: 'yard' is not a way from one place to another; write where it began and where it ended, like yard N80
            1,2027-04-20T11:00,drive,yard yard,R1,,,,,9 min,,         | place: 'yard yard' is not a way from one place to another; write where it began and where it ended, like yard N80
            1,2027-04-20T11:00,drive,yard N4,R1,,,,,9 min,,           | place: there is no place N4; did you mean N40?
            1,2027-04-20T11:00,drive,,R1,,,,,9 min,,                  | place: is missing; write where it began and where it ended, like yard N80
            1,2027-04-20T11:00,drive,yard N40,X9,,,,,9 min,,          | machine: there is no machine X9; known are P1, R1
            """)
    void aWrongCellOfTimedWorkIsOneLineWithItsPlace(String line, String problem) {
        assertThat(WrittenLog.timed(season, line).problems()).containsExactly("log.csv:2: " + problem);
    }

    @Test
    void aRigEndsNoTwoTransfersAndAMachineNoTwoDrivesAtOnce() {
        assertThat(WrittenLog.timed(
                                season,
                                "1,2027-04-20T11:00,transfer,,R1,,,600 gal,,9 min,,",
                                "2,2027-04-20T11:00,transfer,,R1,L2,,500 gal,,8 min,,",
                                "3,2027-04-20T12:00,drive,yard N40,P1,,,,,9 min,,",
                                "4,2027-04-20T12:00,drive,well N40,P1,,,,,8 min,,")
                        .problems())
                .hasSize(2)
                .allSatisfy(problem -> assertThat(problem).contains("says the same for the same time"));
    }

    @Test
    void allProblemsAreListedInTheOrderOfLines() {
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-20T11:00,planted,N4,,,,20,,,",
                                "",
                                "2,2027-04-20T12:00,rain,,,,,wet,,,")
                        .problems())
                .containsExactly(
                        "log.csv:2: place: there is no field N4; did you mean N40?",
                        "log.csv:2: amount: 20 has no unit; write an area like 40 ac",
                        "log.csv:4: amount: 'wet' is not a quantity; write a depth of rain like 0.8 in");
    }

    @Test
    void aFieldIsNotPlantedTwice() {
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-20T11:00,planted,N40,,,,40 ac,,,",
                                "2,2027-04-21T11:00,planted,N40,,,,10 ac,,,")
                        .problems())
                .containsExactly("log.csv:3: amount: N40 is finished already, not 10 ac;"
                        + " check field and amount, or void a wrong entry first");
    }

    @Test
    void theEntryWrittenLastIsTheOneThatIsTooMuch() {
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-22T11:00,planted,N40,,,,30 ac,,,",
                                "2,2027-04-21T11:00,planted,N40,,,,20 ac,,,")
                        .problems())
                .containsExactly("log.csv:3: amount: N40 has 10 ac left to plant of 40 ac, not 20 ac;"
                        + " check field and amount, or void a wrong entry first");
    }

    @Test
    void areasMayBeRoundedAsSheetsRoundThem() {
        // Three pieces of 13.333 ac are 13.3 ac on a sheet; 13.4 + 13.3 + 13.4 = 40.1 is within 3 x 0.05 ac of 40.
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-20T11:00,planted,N40,,,,13.4 ac,,,",
                                "2,2027-04-20T13:00,planted,N40,,,,13.3 ac,,,",
                                "3,2027-04-20T15:00,planted,N40,,,,13.4 ac,,,")
                        .problems())
                .isEmpty();
    }

    @Test
    void whatIsVoidedDoesNotCount() {
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-20T11:00,planted,N40,,,,400 ac,,,",
                                "2,2027-04-20T12:00,void,,,,,,,1,a nought too many",
                                "3,2027-04-20T11:00,planted,N40,,,,40 ac,,,")
                        .problems())
                .isEmpty();
    }

    @Test
    void anEntryIsVoidedOnce() {
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-20T11:00,planted,N40,,,,40 ac,,,",
                                "2,2027-04-20T12:00,void,,,,,,,1,wrong field",
                                "3,2027-04-20T12:10,void,,,,,,,1,wrong field",
                                "4,2027-04-20T12:20,void,,,,,,,2,right after all")
                        .problems())
                .containsExactly(
                        "log.csv:4: voids: entry 1 is void already, by entry 2; leave this entry out, or check the number",
                        "log.csv:5: voids: entry 2 voids another; write the fact again as a new entry if it was right after all");
    }

    @Test
    void anEntryNumberIsGivenOnce() {
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-20T11:00,planted,N40,,,,10 ac,,,",
                                "1,2027-04-20T12:00,planted,N40,,,,10 ac,,,")
                        .problems())
                .containsExactly("log.csv:3: entry: another entry has the number 1; number this one 2");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            planted,N40,,,,20 ac,,,    | planted,N40,,,,10 ac,,,
            batch,,R1,,windrow,30 lb,,, | batch,,R1,,windrow,20 lb,,,
            drawn,well,R1,,,900 gal,,, | drawn,well,R1,,,1000 gal,,,
            rain,,,,,0.8 in,,,         | rain,,,,,0.5 in,,,
            delivered,,,,windrow,1 t,,, | delivered,,,,windrow,1 t,,,
            spoiled,,,,windrow,all,,,  | spoiled,,,,windrow,1 t,,,
            down,,R1,,,,,,             | down,,R1,,,,2027-04-21T12:00,,
            note,,,,,,,,called         | note,,,,,,,,called
            """)
    void aFactIsLoggedOnceForATime(String first, String second) {
        assertThat(WrittenLog.of(season, "1,2027-04-20T11:00," + first, "2,2027-04-20T11:00," + second)
                        .problems())
                .containsExactly("log.csv:3: at: entry 1 says the same for the same time;"
                        + " leave this one out, correct its time, or void entry 1 first");
    }

    @ParameterizedTest
    @ValueSource(strings = {" =1", "\u00a0=1", "\u2007=1", "\u202f\u3000=1"})
    void aNoteIsNoFormulaBehindBlanksEither(String note) {
        assertThat(WrittenLog.of(season, "1,2027-04-20T11:00,note,,,,,,,,\"" + note + "\"")
                        .problems())
                .containsExactly("log.csv:2: note: begins with =, which spreadsheets take for a formula;"
                        + " start it with a letter or a digit");
    }

    @Test
    void aLoadIsPlannedOrHasABatch() {
        WrittenLog log = WrittenLog.of(
                season,
                "1,2027-04-20T11:00,batch,,R1,L0007,windrow,30 lb,,,",
                "2,2027-04-20T12:00,planted,N40,,L0007,,10 ac,,,",
                "3,2027-04-20T13:00,planted,N40,,L0001,,10 ac,,,",
                "4,2027-04-20T14:00,planted,N40,,L0008,,10 ac,,,");
        LogContext context = new LogContext(
                season,
                Optional.of(Set.of("L0001", "L0002")),
                LogContext.of(season).latest());

        assertThat(new WrittenLog(context, log.text()).problems())
                .containsExactly(
                        "log.csv:5: load: there is no load L0008, neither in a plan nor of a batch in the log; did you mean L0001?");
        assertThat(log.problems()).isEmpty();
    }

    @Test
    void aLoadIsPlantedAfterItsBatches() {
        assertThat(WrittenLog.of(
                                season,
                                "1,2027-04-20T11:00,batch,,R1,A,windrow,30 lb,,,",
                                "2,2027-04-20T12:00,planted,N40,,A,,10 ac,,,",
                                "3,2027-04-20T12:01,batch,,R1,A,windrow,30 lb,,,")
                        .problems())
                .containsExactly(
                        "log.csv:4: at: load A is planted at 2027-04-20T12:00 by entry 2, before its batch of entry 3 ends at 2027-04-20T12:01;"
                                + " check times and load, or void a wrong entry first");
    }

    @Test
    void nothingIsLaterThanNow() {
        WrittenLog log = WrittenLog.of(season, "1,2027-04-20T11:00,rain,,,,,0.8 in,,,");
        LogContext context = new LogContext(season, Optional.empty(), LocalDateTime.of(2027, 4, 20, 10, 59));

        assertThat(new WrittenLog(context, log.text()).problems())
                .containsExactly("log.csv:2: at: 2027-04-20T11:00 is in the future: it is 2027-04-20T10:59 now;"
                        + " check date and time; a log tells what has happened");
    }

    @Test
    void aLogNeedsItsColumns() {
        assertThat(new WrittenLog(LogContext.of(season), "entry,at,amount\n").problems())
                .containsExactly("log.csv:1: has no column fact; start it with a header row like"
                        + " entry,at,fact,place,machine,load,lot,amount,until,took,voids,note");
        assertThat(new WrittenLog(LogContext.of(season), "entry,at,fact,feild,amount (ac)\n").problems())
                .containsExactly(
                        "log.csv:1: the column 'feild' is not known; known are entry, at, fact, place, machine, load, lot, amount and 4 more",
                        "log.csv:1: the column amount has the unit ac; write the unit after each amount, because the amounts in a log are of different kinds");
        assertThat(new WrittenLog(LogContext.of(season), "").problems())
                .containsExactly("log.csv:1: is empty; start it with a row of column names");
    }
}

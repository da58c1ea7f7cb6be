package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FixedReaderTest {
    @TempDir
    Path folder;

    @Test
    void aFieldIsFixedToAPlanterOrADayOrBoth() {
        Season season = with("fixed: {N40: {planter: P1, on: 2027-05-04}, S80: {on: 2027-05-06}}")
                .season();

        assertThat(season.field("N40").fixed())
                .isEqualTo(new Fixed(Optional.of("P1"), Optional.of(LocalDate.of(2027, 5, 4))));
        assertThat(season.field("S80").fixed())
                .isEqualTo(new Fixed(Optional.empty(), Optional.of(LocalDate.of(2027, 5, 6))));
        assertThat(season.field("S80").opens()).isEqualTo(LocalDate.of(2027, 5, 6));
    }

    @Test
    void withoutTheKeyNothingIsFixed() {
        assertThat(WrittenSeason.in(folder).season().field("N40").fixed()).isEqualTo(Fixed.NOT);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            N4: {on: 2027-05-04}      | fixed.N4: there is no field N4; did you mean N40?
            N40: {planter: P9}        | fixed.N40.planter: there is no planter P9; did you mean P1?
            N40: {}                   | fixed.N40: fixes nothing; write planter, or on, or both, like {planter: P1, on: 2027-05-04}
            N40: {on: 2027-05-09}     | fixed.N40.on: no machine works on 2027-05-09; choose an open day, or open this one
            N40: {on: 2027-07-01}     | fixed.N40.on: 2027-07-01 is not in the season 2027-04-19/2027-06-05; choose a day of the season
            N40: {on: 2027-04-19}     | fixed.N40.on: the window of N40 opens on 2027-04-20, after 2027-04-19; choose a later day, or open the window sooner
            N40: {on: tomorrow}       | fixed.N40.on: 'tomorrow' is not a date; write year-month-day, like 2027-04-19
            N40: {day: 2027-05-04, planter: P1} | fixed.N40.day: is not a known key; known here: planter, on
            """)
    void whatNoPlanCouldKeepIsAProblemWithItsPlace(String fixed, String problem) {
        assertThat(with("fixed: {" + fixed + "}").problems())
                .singleElement()
                .asString()
                .contains(problem.substring(0, problem.indexOf(": ")))
                .contains(problem.substring(problem.indexOf(": ") + 2).split("; did you", 2)[0]);
    }

    @Test
    void aPlanterThatMayNotPlantTheFieldIsAProblem() {
        WrittenSeason season = with("fixed: {S80: {planter: P1}}")
                .with("S80: {area: 80 ac,", "S80: {area: 80 ac, planters: P2,")
                .with(
                        "planters:\n  P1:",
                        "planters:\n  P2: {width: 40 ft, rowSpacing: 30 in, speed: 5 mph,"
                                + " fieldEfficiency: 0.65, tank: 600 gal, roadSpeed: 15 mph, fillSetup: 6 min, moveTime: 12 min,"
                                + " at: yard}\n  P1:");

        assertThat(season.problems())
                .singleElement()
                .asString()
                .contains("P1 may not plant S80, which is for P2; name one of those, or let P1 do it");
    }

    @Test
    void aDayBeforeAnyCompostIsAProblem() {
        assertThat(with("fixed: {N40: {on: 2027-05-04}}")
                        .with("from: 2027-04-01", "from: 2027-05-10")
                        .problems())
                .singleElement()
                .asString()
                .contains("there is no compost on hand on 2027-05-04");
    }

    /** It may be planted without extract that day. */
    @Test
    void aDayBeforeAnyCompostIsNoProblemWhereTheFieldMayGoWithoutExtract() {
        assertThat(with("fixed: {N40: {on: 2027-05-04}}")
                        .with("goals: {", "goals: {untreated: 3 d, ")
                        .with("from: 2027-04-01", "from: 2027-05-10")
                        .problems())
                .isEmpty();
    }

    private WrittenSeason with(String fixed) {
        WrittenSeason right = WrittenSeason.in(folder);
        return right.with("travel: {roadFactor: 1.3}", fixed + "\ntravel: {roadFactor: 1.3}");
    }
}

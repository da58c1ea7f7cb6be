package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.compare.ComparedExample;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Work;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ComparisonReportTest {
    private static final List<String> LINES = ComparisonReport.lines(ComparedExample.springs(1, 40));

    @Test
    void theFirstLinesSayWhichSpringsTheyAreAndHowTheyWereLived() {
        assertThat(LINES.get(0))
                .isEqualTo(
                        "<i>Spring</i> & all: 40 springs, 30 recorded and 10 generated, from station.csv (invented)");
        assertThat(LINES.get(1)).contains("1,000 steps, seed 1", "with no forecast", "replanning every 7 days");
    }

    @Test
    void onlyAClearDifferenceIsSaidWithAFigure() {
        assertThat(LINES).anySatisfy(line -> assertThat(line)
                .startsWith("With two-rigs, on average planters wait 5.0 h less.")
                .contains("No clear difference: finish, late ac-days,"));
    }

    @Test
    void whatAVariantSavesIsHeldAgainstWhatItCosts() {
        assertThat(LINES)
                .contains(
                        "It costs 500 EUR a season less to run (95 % interval 500 EUR to 500 EUR) and 400 EUR a year more to"
                                + " own. On these prices and springs it pays.");
    }

    @Test
    void bottlenecksOfAVariantAreNamed() {
        assertThat(LINES)
                .contains(
                        "two-rigs: late or unplanted area would shrink by 100 % if it never rained, by 25 % if rig work took no"
                                + " time; waiting would shrink by 87 % if rig work took no time.");
    }

    @Test
    void perfectForesightIsCalledABound() {
        assertThat(LINES)
                .contains(
                        "two-rigs with perfect foresight (a bound that nobody can reach), average of the first 10 springs:"
                                + " 100 late ac-days instead of 200, 0.0 unplanted ac instead of 0.8.");
    }

    @Test
    void whatIsPlantedWithExtractIsToldWhereSomeIsNot() {
        // base: 75, 80, 85, 90 and 95 % in turn; two-rigs: all
        List<String> lines = ComparisonReport.lines(ComparedExample.springs(1, 40, true));

        assertThat(lines)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("planted with extract (% of planted area)")
                        .contains("85.0 (75.0, 95.0)", "100 (100, 100)"))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("With two-rigs, on average 15.0 % more of the planted area gets extract, "))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("<b>base</b>: area that is late, unplanted or without extract would shrink"))
                .anySatisfy(line -> assertThat(line).startsWith("two-rigs: late or unplanted area would shrink"));
        assertThat(LINES).noneMatch(line -> line.contains("extract"));
    }

    @Test
    void sprayersAreNamedWhereThereAreAny() {
        List<String> lines =
                ComparisonReport.lines(ComparedExample.springs(1, 40, true, Set.of(Work.PLANT, Work.SPRAY)));

        assertThat(lines)
                .anySatisfy(line -> assertThat(line).startsWith("planter or sprayer fills"))
                .anySatisfy(line -> assertThat(line).startsWith("waiting of planters and sprayers (h)"))
                .anySatisfy(line -> assertThat(line).startsWith("unplanted or unsprayed ac"))
                .anySatisfy(line ->
                        assertThat(line).startsWith("springs with every field planted or sprayed in its window"))
                .anySatisfy(line -> assertThat(line).contains("planters and sprayers wait 5.0 h less"))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("<b>base</b>: area that is late, unplanted, unsprayed or without extract would"));
        assertThat(LINES).noneMatch(line -> line.contains("spray"));
    }

    @Test
    void oneSpringShowsNoDifference() {
        assertThat(ComparisonWords.of(ComparedExample.springs(1, 1)))
                .contains("two-rigs: one spring shows no difference; use more springs.");
    }

    @Test
    void aFinishIsADateAndAtTheSeasonsEndNone() {
        MeasureText text = new MeasureText(ComparedExample.springs(1, 2).rules());

        assertThat(text.value(Measure.FINISH, 86_400 * 26 + 3_600)).isEqualTo("Sat May 15");
        assertThat(text.value(Measure.FINISH, 86_400 * 48)).isEqualTo("not by Sat Jun 5");
        assertThat(text.difference(Measure.FINISH, -86_400 * 2.5)).isEqualTo("-2.5 d");
        assertThat(text.value(Measure.LATE, 40.468564224)).isEqualTo("100");
    }

    @Test
    void aFinishHasTheDayFirstWhereClocksGoTo24() {
        for (DisplayUnits units :
                List.of(DisplayUnits.METRIC, DisplayUnits.US.withClock(ClockFace.TWENTY_FOUR_HOURS))) {
            MeasureText text =
                    new MeasureText(ComparedExample.springsIn(units, 1, 2).rules());

            assertThat(text.value(Measure.FINISH, 86_400 * 26 + 3_600)).isEqualTo("Sat 15 May");
            assertThat(text.value(Measure.FINISH, 86_400 * 48)).isEqualTo("not by Sat 5 Jun");
        }
    }
}

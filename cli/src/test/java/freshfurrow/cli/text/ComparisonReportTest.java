package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.compare.ComparedExample;
import freshfurrow.model.compare.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

class ComparisonReportTest {
    private static final List<String> LINES = ComparisonReport.lines(ComparedExample.springs(1, 40));

    @Test
    void theFirstLinesSayWhichSpringsTheyAreAndHowTheyWereLived() {
        assertThat(LINES.get(0))
                .isEqualTo(
                        "<i>Spring</i> & all: 40 springs, 30 recorded and 10 generated, from station.csv (invented)");
        assertThat(LINES.get(1)).contains("1,000 steps, seed 1", "without a forecast", "planned again every 7 days");
    }

    @Test
    void onlyWhatTheSpringsTellApartIsSaidWithAFigure() {
        assertThat(LINES).anySatisfy(line -> assertThat(line)
                .startsWith("two-rigs against <b>base</b>, in the mean: planters waiting, h -5.0.")
                .contains("Not told apart: finish; late ac-days;"));
    }

    @Test
    void whatAVariantSavesIsHeldAgainstWhatItCosts() {
        assertThat(LINES)
                .contains(
                        "It saves 500 EUR a season in running costs (500 EUR to 500 EUR): what it may cost more a year and"
                                + " still pay. Its machines cost 400 EUR more a year, so it pays.");
    }

    @Test
    void whatHoldsAVariantBackIsNamed() {
        assertThat(LINES)
                .contains(
                        "two-rigs: of what is late or not planted, 100 % goes away when it never rains, 25 % goes away when rigs"
                                + " work in no time; of its planters' waiting, 87 % goes away when rigs work in no time.");
    }

    @Test
    void perfectForesightIsCalledABound() {
        assertThat(LINES)
                .contains(
                        "two-rigs, perfect foresight (a bound, nobody can have it), mean of the first 10 springs: late ac-days"
                                + " 100 where 200 were lived; not planted, ac 0.0 where 0.8 were left.");
    }

    @Test
    void oneSpringTellsNothing() {
        assertThat(ComparisonWords.of(ComparedExample.springs(1, 1)))
                .contains("two-rigs: one spring tells nothing; live more of them.");
    }

    @Test
    void aFinishIsADateAndAtTheSeasonsEndNone() {
        MeasureText text = new MeasureText(ComparedExample.springs(1, 2).rules());

        assertThat(text.value(Measure.FINISH, 86_400 * 26 + 3_600)).isEqualTo("Sat 05-15");
        assertThat(text.value(Measure.FINISH, 86_400 * 48)).isEqualTo("not by Sat 06-05");
        assertThat(text.difference(Measure.FINISH, -86_400 * 2.5)).isEqualTo("-2.5 d");
        assertThat(text.value(Measure.LATE, 40.468564224)).isEqualTo("100");
    }
}

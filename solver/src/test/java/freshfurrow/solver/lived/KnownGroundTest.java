package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KnownGroundTest {
    private static final int DAY_S = 86_400;
    private static final int NOON = DAY_S / 2;

    /** Poorly drained ground: wet from noon of day 1 through day 2. */
    private static final GroundRecord GROUND = TwoFields.wet(Map.of(Drainage.POOR, Map.of(1, NOON, 2, 0)));

    @TempDir
    private Path folder = Path.of("");

    private Season season;

    @BeforeEach
    void read() throws IOException {
        season = TwoFields.season(folder);
    }

    @Test
    void withoutAForecastDryGroundIsTakenToStayDry() {
        assertThat(known(0).at(0).wetDays(Drainage.POOR)).isEmpty();
        assertThat(known(0).knownDryFrom(Drainage.POOR, 0, DAY_S + NOON)).isEqualTo(DAY_S + NOON);
    }

    @Test
    void withoutAForecastWetGroundIsTakenToStayWet() {
        int now = DAY_S + NOON;
        assertThat(known(0).at(now).wetDays(Drainage.POOR))
                .extracting(WetDay::date)
                .containsExactly(
                        season.first().plusDays(1),
                        season.first().plusDays(2),
                        season.first().plusDays(3),
                        season.first().plusDays(4));
        assertThat(known(0).knownDryFrom(Drainage.POOR, now, now)).isEqualTo(5 * DAY_S);
    }

    @Test
    void newsIsWhenRainBeginsAndWhenGroundIsDryAgain() {
        assertThat(known(0).nextNews(0)).isEqualTo(DAY_S + NOON);
        assertThat(known(0).nextNews(DAY_S + NOON)).isEqualTo(3 * DAY_S);
        assertThat(known(0).nextNews(3 * DAY_S)).isEqualTo(5 * DAY_S);
    }

    @Test
    void aForecastTellsOfTheDaysThatItReachesAndOfNoOthers() {
        // on day 0 a forecast of two days reaches to the end of day 1, on which it is wet: taken to stay so
        assertThat(known(1).at(0).wetDays(Drainage.POOR)).isEmpty();
        assertThat(known(2).at(0).wetDays(Drainage.POOR))
                .extracting(WetDay::fromS)
                .containsExactly(NOON, 0, 0, 0);
        // on day 1 it reaches to the end of day 2, on day 2 to the dry day 3
        assertThat(known(2).at(2 * DAY_S).wetDays(Drainage.POOR))
                .extracting(WetDay::date)
                .containsExactly(season.first().plusDays(2));
    }

    @Test
    void aForecastThatSaysSomethingNewIsNews() {
        assertThat(known(3).nextNews(0)).isEqualTo(DAY_S);
        assertThat(known(1).nextNews(0)).isEqualTo(DAY_S);
    }

    private KnownGround known(int forecastDays) {
        return new KnownGround(season, new GroundDays(season, GROUND), forecastDays);
    }
}

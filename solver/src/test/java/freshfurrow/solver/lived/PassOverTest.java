package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PassOverTest {
    private static final int DAY_S = 86_400;
    private static final GroundRecord POOR_IS_WET_ON_DAY_1 = TwoFields.wet(Map.of(Drainage.POOR, Map.of(1, 0)));

    @TempDir
    private Path folder = Path.of("");

    @Test
    void fieldsThatAreFitKeepThePlansOrder() throws IOException {
        assertThat(order(0, 0, Set.of())).containsExactly("A", "B");
    }

    @Test
    void aWetFieldIsPassedOver() throws IOException {
        assertThat(order(0, DAY_S, Set.of())).containsExactly("B", "A");
    }

    @Test
    void aFieldPassedOverIsTakenUpInItsPlaceWhenItIsDry() throws IOException {
        assertThat(order(0, 2 * DAY_S, Set.of())).containsExactly("A", "B");
    }

    @Test
    void aFieldThatIsBegunIsEndedFirst() throws IOException {
        assertThat(order(0, 2 * DAY_S, Set.of("B"))).containsExactly("B", "A");
    }

    @Test
    void aBegunFieldThatIsWetIsPassedOverAllTheSame() throws IOException {
        assertThat(order(0, DAY_S, Set.of("A"))).containsExactly("B", "A");
    }

    @Test
    void aFieldWhoseWindowIsNotOpenIsPassedOver() throws IOException {
        Season season = TwoFields.season(folder);
        Field early = season.fields().get(1);
        Field late = withWindow(season.fields().get(0), TwoFields.FIRST.plusDays(3));

        PassOver passOver = passOver(season, 0);

        assertThat(passOver.order(List.of(late, early), Set.of(), 0)).containsExactly(early, late);
        assertThat(passOver.nextOpening(List.of(late, early), 0)).isEqualTo(3 * DAY_S);
    }

    private List<String> order(int forecastDays, int now, Set<String> begun) throws IOException {
        Season season = TwoFields.season(folder);
        return passOver(season, forecastDays).order(season.fields(), begun, now).stream()
                .map(Field::id)
                .toList();
    }

    private static PassOver passOver(Season season, int forecastDays) {
        return new PassOver(
                season, new KnownGround(season, new GroundDays(season, POOR_IS_WET_ON_DAY_1), forecastDays));
    }

    private static Field withWindow(Field field, LocalDate opens) {
        return field.change().window(new DateWindow(opens, opens)).field();
    }
}

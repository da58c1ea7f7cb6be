package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class FieldMapTest {
    /** Roads of an invented season are 1.3 times the straight way, so that a plane holds them all. */
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void fieldsOfAPlaneLieAsFarApartAsTheRoadsBetweenThem(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(30, 2, 1, 20_000, seed));
        FieldMap map = new FieldMap(new SeasonEstimate(season));

        for (int one = 0; one < 30; one++) {
            for (int other = 0; other < 30; other++) {
                double metres = Math.hypot(map.x(one) - map.x(other), map.y(one) - map.y(other));
                // distances are whole metres
                assertThat(metres).isCloseTo(season.metresBetweenFields(one, other), within(50.0));
            }
        }
    }

    @Test
    void fieldsInOnePlaceLieInOnePoint() {
        Season season = InventedSeason.of(3, 1, 1, 0, 1);
        FieldMap map = new FieldMap(new SeasonEstimate(CompiledSeason.of(season)));

        assertThat(List.of(map.x(0), map.x(1), map.x(2), map.y(0), map.y(1), map.y(2)))
                .containsOnly(0.0);
    }

    @Test
    void aSeasonWithoutFieldsHasAnEmptyMap() {
        Season season = InventedSeason.withFields(InventedSeason.of(3, 1, 1, 1_000, 1), List.of());

        assertThat(new FieldMap(new SeasonEstimate(CompiledSeason.of(season))).fieldCount())
                .isZero();
    }
}

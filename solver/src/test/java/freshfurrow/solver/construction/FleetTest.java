package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FleetTest {
    private static final int FIELD = 0;

    @Test
    void fleetsAreTheWholeOneAndThenSmallerOnes() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(20, 10, 5, 10_000, 1));

        assertThat(Fleets.of(season, new SeasonEstimate(season)))
                .extracting(Fleet::size)
                .containsExactly(10, 8, 6, 5, 4, 3, 2, 1);
    }

    @Test
    void thePlanterThatMayPlantMostIsSentOutFirst() {
        Season season = InventedSeason.of(6, 3, 1, 10_000, 1);
        String only = season.planters().get(1).id();
        CompiledSeason compiled = CompiledSeason.of(onlyFor(only, season));

        Fleet one = smallest(compiled);

        assertThat(one.plants(1, FIELD)).isTrue();
        assertThat(one.plants(1, 3)).isTrue();
        assertThat(one.plants(0, 3)).isFalse();
    }

    @Test
    void ofPlantersThatMayPlantTheSameTheFasterIsSentOutFirst() {
        Season season = forAll(InventedSeason.of(6, 2, 1, 10_000, 1));
        List<Planter> planters = new ArrayList<>(season.planters());
        planters.set(
                1, planters.get(1).change().widthM(2 * planters.get(1).widthM()).planter());
        CompiledSeason compiled =
                CompiledSeason.of(season.change().applicators(planters).season());

        Fleet one = smallest(compiled);

        assertThat(one.plants(1, FIELD)).isTrue();
        assertThat(one.plants(0, FIELD)).isFalse();
    }

    @Test
    void aPlanterAtHomePlantsWhatNoOtherMay() {
        Season season = InventedSeason.of(6, 2, 1, 10_000, 1);
        String first = season.planters().get(0).id();
        String second = season.planters().get(1).id();
        List<Field> fields = new ArrayList<>(season.fields());
        for (int field = 0; field < fields.size(); field++) {
            String only = field == FIELD ? first : second;
            fields.set(field, fields.get(field).change().planters(Set.of(only)).field());
        }
        CompiledSeason compiled = CompiledSeason.of(InventedSeason.withFields(season, fields));

        Fleet one = smallest(compiled);

        assertThat(one.size()).isEqualTo(1);
        assertThat(one.plants(0, FIELD)).isTrue();
        assertThat(one.plants(1, FIELD)).isFalse();
        assertThat(one.plants(1, 3)).isTrue();
    }

    private static Season forAll(Season season) {
        return InventedSeason.withFields(
                season,
                season.fields().stream()
                        .map(field -> field.change().planters(Set.of()).field())
                        .toList());
    }

    private static Season onlyFor(String planter, Season season) {
        List<Field> fields = new ArrayList<>(season.fields());
        fields.set(FIELD, fields.get(FIELD).change().planters(Set.of(planter)).field());
        return InventedSeason.withFields(season, fields);
    }

    private static Fleet smallest(CompiledSeason season) {
        List<Fleet> fleets = Fleets.of(season, new SeasonEstimate(season));
        return fleets.get(fleets.size() - 1);
    }
}

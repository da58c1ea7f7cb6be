package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.supply.SupplyNeeds;
import freshfurrow.model.supply.SureShare;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.threads.Workers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Springs of {@link TwoFields} in which planting goes on without extract where there is no compost: 20 ha take 200 kg. */
final class ScarceCompostSpringsTest {
    private static final List<List<String>> ORDER = List.of(List.of("A", "B"));

    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatGetsExtractIsAShareOfWhatIsPlanted() throws IOException {
        SpringFigures spring = live(withCompost(100), PlantingOrders.withExtract(ORDER), SpringPlan.DRY);

        assertThat(spring.treatedShare()).isEqualTo(0.5, within(1e-6));
        assertThat(spring.untreatedHa()).isEqualTo(10, within(1e-6));
        assertThat(spring.unservedHa()).isZero();
        assertThat(spring.dumpedKg()).isZero();
    }

    @Test
    void whatIsDumpedIsNotHiddenByWhatGetsNoExtract() throws IOException {
        // B goes without, A gets its first load at 07:08:20. It rains on A at 07:30, until Thursday: B is planted, and
        // the mix gets too old.
        // So 1,300 s of planting take 1.3 ha of the load of 5 ha, and 37 kg are dumped.
        GroundRecord rain = TwoFields.wet(Map.of(Drainage.POOR, Map.of(0, 27_000, 1, 0, 2, 0)));
        SpringFigures spring = live(withCompost(200), new PlantingOrders(ORDER, Set.of("B")), rain);

        assertThat(spring.untreatedHa()).isGreaterThan(0);
        assertThat(spring.dumpedKg()).isEqualTo(37, within(0.1));
    }

    @Test
    void rainCutsPlantingWithoutExtractLikeAnyOther() throws IOException {
        // from 07:00 to 09:00 7.2 ha are planted; then it is too wet until Thursday, three days after the window
        GroundRecord rain = TwoFields.wet(Map.of(
                Drainage.POOR, Map.of(0, 9 * TwoFields.HOUR_S, 1, 0, 2, 0),
                Drainage.WELL, Map.of(0, 9 * TwoFields.HOUR_S, 1, 0, 2, 0)));
        SpringFigures spring = live(withCompost(100), new PlantingOrders(ORDER, Set.of("A", "B")), rain);

        assertThat(spring.untreatedHa()).isEqualTo(20, within(1e-6));
        assertThat(spring.treatedShare()).isZero();
        assertThat(spring.lateHaDays()).isEqualTo(3 * 12.8, within(1e-3));
    }

    @Test
    void withNewPlansInBetweenItAddsUpToTheCompost() throws IOException {
        Season season = withCompost(100);
        GroundRecord rain = TwoFields.wet(Map.of(
                Drainage.POOR, Map.of(0, 9 * TwoFields.HOUR_S, 1, 0),
                Drainage.WELL, Map.of(0, 9 * TwoFields.HOUR_S, 1, 0)));
        SpringFigures spring = new SpringLife(
                        SpringPlan.dry(season),
                        PlantingOrders.withExtract(ORDER),
                        0,
                        Optional.of(new Replanning(1, 50, 1)))
                .live(rain, 1)
                .figures();

        assertThat(spring.unservedHa()).isZero();
        assertThat(spring.untreatedHa()).isEqualTo(20 - (spring.compostKg() - spring.dumpedKg()) / 10, within(0.02));
        assertThat(spring.treatedShare()).isEqualTo(1 - spring.untreatedHa() / 20, within(1e-6));
    }

    @Test
    void theCompostToPlantAllWithExtractIsCountedBesideWhatIsUsed() throws IOException {
        Season season = withCompost(100);
        SupplyNeeds needs = new SupplySprings(number -> SpringPlan.DRY, 1, SpringProgress.SILENT)
                .needs(season, List.of(1, 2), 500, 1, new SureShare(0.8));

        assertThat(needs.neededKg()).isEqualTo(200, within(0.1));
        assertThat(needs.usedKg()).isEqualTo(100, within(0.1));
        assertThat(needs.stockKg()).isEqualTo(100);
    }

    @Test
    void aPlanIsFollowedWithExtractWhereAVariantAllowsNothingElse() throws IOException {
        CompiledSeason scarce = SpringPlan.dry(withCompost(100));
        SpringPlan decided = new SpringPlan(scarce, new PlantingOrders(ORDER, Set.of("A")));

        assertThat(decided.in(scarce).orders().withoutExtract()).containsExactly("A");
        assertThat(decided.in(SpringPlan.dry(TwoFields.season(folder))).orders().withoutExtract())
                .isEmpty();
    }

    @Test
    void noPlanIsTakenBecauseItGoesWithout() throws IOException {
        // with wide windows and compost for all nothing is late either way, and planting without takes no fills
        Season season = withCompost(200);
        CompiledSeason wide = SpringPlan.dry(season.change()
                .fields(season.fields().stream()
                        .map(field -> field.change()
                                .window(new DateWindow(TwoFields.FIRST, TwoFields.FIRST.plusDays(4)))
                                .field())
                        .toList())
                .season());
        SpringPlan without = new SpringPlan(wide, new PlantingOrders(ORDER, Set.of("A", "B")));
        SpringPlan with = new SpringPlan(wide, PlantingOrders.withExtract(ORDER));
        try (Workers pool = new Workers(1, "test")) {
            PlanChoice choice = new PlanChoice(
                    number -> SpringPlan.DRY,
                    List.of(1),
                    0,
                    List.of(Measure.values()),
                    new SpringWorkers(pool, 0, SpringProgress.SILENT));

            assertThat(choice.among(List.of(List.of(without), List.of(with))))
                    .extracting(chosen -> chosen.plan().orders().withoutExtract())
                    .containsExactly(Set.of());
        }
    }

    private Season withCompost(double kg) throws IOException {
        Season season = TwoFields.season(folder);
        return season.change()
                .compost(List.of(new CompostLot("heap", kg, TwoFields.FIRST)))
                .goals(season.goals().withUntreatedDays(OptionalDouble.of(4)))
                .season();
    }

    private static SpringFigures live(Season season, PlantingOrders orders, GroundRecord spring) {
        return new SpringLife(SpringPlan.dry(season), orders, 0, Optional.empty())
                .live(spring, 1)
                .figures();
    }
}

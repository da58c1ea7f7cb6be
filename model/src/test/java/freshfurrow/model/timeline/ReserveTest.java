package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.WithDefaults;
import java.time.LocalTime;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The size of a load may fall short of the true largest one by half a hundredth of the tank: 5 L of 1,000 L. */
class ReserveTest {
    @Test
    void theLastDropIsInTheGroundTheReserveBeforeUseBy() {
        // 300 + 0.11 x = 3650 - 600 gives 25,000 m2 = 500 L
        WorkedPlan plan =
                new WorkedSeason().hold(3650).reserve(600).field("A", 4.9).plan("A");

        assertThat(plan.load(1).litres()).isBetween(495.0, 500.0);
        assertThat(plan.time(plan.load(1).deadline())).isEqualTo("1 08:20:50"); // 07:20:00 + 3650 s
        assertThat(plan.plan().totals().smallestMarginMin()).isGreaterThanOrEqualTo(10);
    }

    @Test
    void mixMadeAtTheWaterForSeveralFillsKeepsItTooForItsLast() {
        WorkedPlan plan = new WorkedSeason()
                .hold(3 * 3600)
                .reserve(1800)
                .rig("R1", rig -> rig.atTheWater())
                .field("A", 20)
                .plan("A");

        assertThat(plan.plan().loads())
                .allSatisfy(
                        load -> assertThat(load.lastDrop().plusSeconds(1800)).isBeforeOrEqualTo(load.deadline()));
    }

    @Test
    void mixThatIsAlreadyMadeMayUseUpItsReserve() {
        // The batch that ends at 08:56:40 keeps until 13:56:40. The planter is down until 12:20:00, is filled in 800 s
        // and plants
        // 5 ha in 5,000 s: to the second, an hour into the reserve.
        WorkedPlan plan = new WorkedSeason().reserve(3600).field("A", 10).plan("A");
        Outage outage = new Outage("P1", WorkedSeason.FIRST.atTime(8, 50), WorkedSeason.FIRST.atTime(12, 20));

        WorkedPlan rest = UnderWay.at(plan, "08:50", new News(List.of(), List.of(outage), Set.of()))
                .goOn();

        assertThat(rest.planter("P1", "fill", "plant"))
                .startsWith("1 12:20:00 - 1 12:33:20 fill A", "1 12:33:20 - 1 13:56:40 plant A 5.000 ha");
        assertThat(rest.plan().loads())
                .filteredOn(Plan.Load::intoReserve)
                .extracting(load -> load.lastDrop().toLocalTime())
                .containsExactly(LocalTime.of(13, 56, 40));
    }

    @Test
    void aFieldThatTheReserveForbidsIsToldSo() {
        // 20 min of hold time less 15 min are over before the setup of 5 min is
        WorkedPlan plan =
                new WorkedSeason().hold(1200).reserve(900).field("A", 5).plan("A");

        assertThat(plan.plan().unserved())
                .extracting(left -> left.why())
                .containsExactly(
                        "the hold time of recipe standard (0 h 20 min, less 15 min of reserve) ends before a load could be planted");
    }

    @Test
    void withoutOneATenthOfTheHoldTimeIsKeptInHandAndHalfAnHourAtTheMost() {
        assertThat(holding(3_000).reserveS()).isEqualTo(300);
        assertThat(holding(86_400).reserveS()).isEqualTo(1_800);
    }

    private static Recipe holding(int holdS) {
        Recipe plain = WithDefaults.recipe("standard", 200, 10, holdS);
        return new Recipe(plain.id(), plain.mixLPerHa(), plain.compostKgPerHa(), holdS, OptionalInt.empty());
    }
}

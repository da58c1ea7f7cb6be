package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A change of field takes 600 s + 1000 m / 5 m/s = 800 s. */
class TwoFieldsTest {
    private final WorkedSeason season = new WorkedSeason().field("A", 2).field("B", 3);

    @Test
    void oneLoadServesTwoFieldsWithTheMoveBetweenThem() {
        WorkedPlan plan = season.plan("A B");

        assertThat(plan.planter("P1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 07:33:20 fill A",
                        "1 07:33:20 - 1 08:06:40 plant A 2.000 ha", // 2000 s
                        "1 08:06:40 - 1 08:20:00 move A to B", // 800 s
                        "1 08:20:00 - 1 09:10:00 plant B 3.000 ha"); // 3000 s
        assertThat(plan.loads()).containsExactly("P1 R1 1000.000 L, old 1 12:20:00, used up 1 09:10:00");
    }

    @Test
    void theHoldTimeRunsOnDuringTheMove() {
        // 2 ha + x: 300 + 0.01 (20,000 + x) + 2000 + 800 + x / 10 = 3300 + 0.11 x = 4400 gives 10,000 m2: 3 ha in all
        WorkedPlan plan = season.hold(4400).plan("A B");

        assertThat(plan.load(1).litres()).isBetween(595.0, 600.0);
        assertThat(plan.fillStarts("P1"))
                .containsExactly("1 07:20:00", plan.time(plan.load(1).lastDrop()));
    }

    @Test
    void aLoadThatWouldBeOldOnArrivalEndsWithTheField() {
        // 2 ha take 300 + 200 + 2000 = 2500 s; with the move 3300 s, more than 3000
        WorkedPlan plan = season.hold(3000).plan("A B");

        assertThat(plan.load(1).litres()).isEqualTo(400);
        assertThat(plan.planter("P1", "plant").get(0)).isEqualTo("1 07:28:20 - 1 08:01:40 plant A 2.000 ha");
    }

    @Test
    void anotherRecipeNeedsALoadOfItsOwnFetchedBeforeTheMove() {
        WorkedPlan plan = new WorkedSeason()
                .recipe("strong", 100, 20, 5 * 3600)
                .field("A", 2)
                .field("B", 2, field -> field.recipe("strong"))
                .plan("A B");

        assertThat(plan.planter("P1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 07:28:20 fill A", // 400 L: 300 + 200 s
                        "1 07:28:20 - 1 08:01:40 plant A 2.000 ha",
                        "1 08:01:40 - 1 08:08:20 fill A", // 200 L: 300 + 100 s
                        "1 08:08:20 - 1 08:21:40 move A to B",
                        "1 08:21:40 - 1 08:55:00 plant B 2.000 ha");
        assertThat(plan.rig("R1", "extract"))
                .containsExactly(
                        "1 07:14:00 - 1 07:20:00 extract A", // 20 of 50 kg: 360 of 900 s
                        "1 07:49:40 - 1 08:01:40 extract A"); // 40 of 50 kg: 720 s
        assertThat(plan.plan().loads()).extracting(load -> load.recipe()).containsExactly("standard", "strong");
    }

    @Test
    void aPlanterDrivesOnTheSameEveningWhenItsNextLoadCannotBeUsedAnyMore() {
        // empty at 08:01:40 with 1000 s to go: a fill of 300 s at least and a move of 800 s leave nothing to plant
        WorkedPlan plan = new WorkedSeason()
                .recipe("strong", 100, 20, 5 * 3600)
                .planter("P1", planter -> planter.hours("07:00/08:18:20"))
                .field("A", 2)
                .field("B", 2, field -> field.recipe("strong"))
                .plan("A B");

        assertThat(plan.planter("P1", "move")).last().isEqualTo("1 08:01:40 - 1 08:15:00 move A to B");
        assertThat(plan.planter("P1", "fill")).last().isEqualTo("2 07:00:00 - 2 07:06:40 fill B");
    }

    @Test
    void aMoveThatDoesNotFitBeforeNightWaitsForMorning() {
        // empty at 08:01:40 with 600 s to go
        WorkedPlan plan = new WorkedSeason()
                .recipe("strong", 100, 20, 5 * 3600)
                .planter("P1", planter -> planter.hours("07:00/08:11:40"))
                .field("A", 2)
                .field("B", 2, field -> field.recipe("strong"))
                .plan("A B");

        assertThat(plan.planter("P1", "move")).last().isEqualTo("2 07:00:00 - 2 07:13:20 move A to B");
        assertThat(plan.planter("P1", "fill")).last().isEqualTo("2 07:13:20 - 2 07:20:00 fill B");
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * Nobody is kept waiting who could not plant yet. A batch of R1 is for 1 ha here, so that of 5 ha its five batches take 5 x 900 s
 * and four cleans of 180 s: 5,220 s. It fills A (1 ha) at 07:20:00 in 300 s + 100 s and is clean at 07:29:40; A is planted at
 * 07:26:40 + 1,000 s = 07:43:20, when the planter asks for the load for B: ready at 07:29:40 + 5,220 s = 08:56:40.
 */
class WaitsTest {
    private static final Set<WaitReason> COUNTED = EnumSet.of(WaitReason.RIG, WaitReason.WATER, WaitReason.COMPOST);

    private static WorkedSeason slowRig() {
        return new WorkedSeason().recipe("other", 200, 10, 30 * 3600).rig("R1", rig -> rig.batchCompost(10));
    }

    @Test
    void aPlanterThatIsFilledBeforeTheWindowOfItsNextFieldOpensWaitsForTheWindow() {
        WorkedPlan plan = slowRig()
                .field("A", 1)
                .field("B", 5, field -> field.recipe("other").window(2, 3))
                .plan("A B");

        assertThat(plan.planter("P1", "wait")).containsExactly("1 07:43:20 - 1 08:56:40 wait A window");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void aRigThatComesAfterTheWindowHasOpenedIsWaitedForFromThenOn() {
        // a batch for B, 900 s, from 07:29:40 on would end after 07:40, so it is made from 07:00 to 07:15
        WorkedPlan plan = slowRig()
                .rig("R1", rig -> rig.hours("07:00/07:40"))
                .field("A", 1)
                .field("B", 5, field -> field.recipe("other").window(2, 3))
                .plan("A B");

        assertThat(plan.planter("P1", "wait"))
                .containsExactly("1 07:43:20 - 2 07:00:00 wait A window", "2 07:00:00 - 2 07:15:00 wait A rig");
        assertThat(plan.plan().totals().waitMin()).isEqualTo(15);
    }

    @Test
    void aPlanterThatIsFilledWhileItsNextFieldIsWetWaitsForDryGround() {
        // 1 mm x 1 day per mm: B is closed until the second day, A is not
        WorkedPlan plan = slowRig()
                .rain(1, "07:30", 1)
                .field("A", 1, field -> field.drainage(Drainage.WELL))
                .field("B", 5, field -> field.recipe("other").drainage(Drainage.POOR))
                .plan("A B");

        assertThat(plan.planter("P1", "wait")).containsExactly("1 07:43:20 - 1 08:56:40 wait A wet");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void compostThatComesBeforeTheWindowOpensIsNotWaitedFor() {
        WorkedPlan plan = slowRig()
                .days(4)
                .lots(
                        new CompostLot("first", 10, WorkedSeason.day(1)),
                        new CompostLot("second", 50, WorkedSeason.day(2)))
                .field("A", 1)
                .field("B", 5, field -> field.recipe("other").window(3, 4))
                .plan("A B");

        assertThat(plan.planter("P1", "wait"))
                .containsExactly("1 07:43:20 - 2 07:00:00 wait A window", "2 07:13:20 - 3 07:00:00 wait B window");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void compostThatComesAfterTheWindowHasOpenedIsWaitedForFromThenOn() {
        // twelve hours of the second day less the 800 s of the move, none of the first
        WorkedPlan plan = slowRig()
                .days(4)
                .lots(
                        new CompostLot("first", 10, WorkedSeason.day(1)),
                        new CompostLot("second", 50, WorkedSeason.day(3)))
                .field("A", 1)
                .field("B", 1, field -> field.recipe("other").window(2, 4))
                .plan("A B");

        assertThat(plan.planter("P1", "wait"))
                .startsWith("1 07:43:20 - 2 07:00:00 wait A window")
                .element(1)
                .asString()
                .startsWith("2 07:13:20 - 3 0")
                .endsWith("wait B compost");
    }

    @Property(tries = 300)
    void noWaitIsCountedBeforeTheWindowOpensOfTheFieldThatIsPlantedNext(@ForAll long seed) {
        Season season = RandomSeasons.season(seed);
        Plan plan = PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, RandomSeasons.lists(season, seed)),
                new SeasonSource(season.name(), "season.yaml", "00", DisplayUnits.METRIC));
        Map<String, LocalDate> opens = new HashMap<>();
        for (Field field : season.fields()) {
            opens.put(field.id(), field.window().first());
        }
        plan.planters().forEach((planter, work) -> {
            LocalDate waited = LocalDate.MAX;
            for (Activity activity : work.activities()) {
                if (activity instanceof Activity.Wait wait && COUNTED.contains(wait.why())) {
                    waited = wait.start().toLocalDate();
                } else if (activity instanceof Activity.Plant plant) {
                    assertThat(waited)
                            .as("%s at %s", planter, plant.start())
                            .isAfterOrEqualTo(opens.get(plant.field()));
                    waited = LocalDate.MAX;
                }
            }
        });
    }

    @Example
    void aWaitForARigAndOneForCompostThatARandomSearchFoundAreNotCounted() {
        noWaitIsCountedBeforeTheWindowOpensOfTheFieldThatIsPlantedNext(47);
        noWaitIsCountedBeforeTheWindowOpensOfTheFieldThatIsPlantedNext(1120);
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Rain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A load of 5 ha is transferred to P1 at A from 07:20:00 to 07:33:20, and planted until 08:56:40. */
class FlushTest {
    @Test
    void aPlanterIsFlushedAfterTheLastMixOfItsDay() {
        assertThat(season(600).field("A", 5).plan("A").planter("P1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 07:33:20 fill A",
                        "1 07:33:20 - 1 08:56:40 plant A 5.000 ha",
                        "1 08:56:40 - 1 09:06:40 flush A");
    }

    @Test
    void mixOfTheSameRecipeNeedsNoFlushInBetween() {
        assertThat(season(600).field("A", 10).plan("A").planter("P1", "fill", "flush"))
                .containsExactly(
                        "1 07:20:00 - 1 07:33:20 fill A",
                        "1 08:56:40 - 1 09:10:00 fill A",
                        "1 10:33:20 - 1 10:43:20 flush A");
    }

    @Test
    void aPlanterIsFlushedBeforeItIsFilledWithAnotherRecipe() {
        // it is empty at 08:56:40, flushed until 09:06:40, and then filled where it stands for B
        WorkedPlan plan = twoRecipes(600).plan("A B");

        assertThat(plan.planter("P1", "fill", "flush", "move"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 07:33:20 fill A",
                        "1 08:56:40 - 1 09:06:40 flush A",
                        "1 09:06:40 - 1 09:20:00 fill A",
                        "1 09:20:00 - 1 09:33:20 move A to B",
                        "1 10:56:40 - 1 11:06:40 flush B");
    }

    @Test
    void theAuditMissesAFlushBetweenRecipes() {
        WorkedPlan plan = twoRecipes(600).plan("A B");

        assertThat(Audit.check(plan.season(), withoutFirstFlush(plan.plan())))
                .extracting(Finding::rule)
                .containsExactly(Rule.FLUSH);
    }

    private static Plan withoutFirstFlush(Plan plan) {
        Plan.PlanterPlan its = plan.planters().get("P1");
        List<Activity> activities = new ArrayList<>(its.activities());
        activities.remove(activities.stream()
                .filter(Activity.Flush.class::isInstance)
                .findFirst()
                .orElseThrow());
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                Map.of("P1", new Plan.PlanterPlan(its.tankL(), its.fields(), its.withoutExtract(), activities)),
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits(),
                plan.start());
    }

    @Test
    void aFlushAtTheEndOfTheDayIsOneBeforeAnotherRecipeToo() {
        // from 08:56:40 to the end at 09:06:39 there is no time for a flush but in the minutes that are kept for it
        WorkedPlan plan = twoRecipes(600)
                .planter("P1", planter -> planter.hours("07:00/09:06:40").flush(600))
                .plan("A B");

        assertThat(plan.planter("P1", "fill", "flush", "wait"))
                .startsWith(
                        "1 07:20:00 - 1 07:33:20 fill A",
                        "1 08:56:40 - 1 09:06:40 flush A",
                        "2 07:13:20 - 2 07:26:40 fill B");
    }

    @Test
    void theLastMinutesOfADayAreKeptForTheFlush() {
        // 2 h from 07:00:00 on, less 600 s: x ha take 300 s + 100 s x and 1,000 s x, from 07:20:00 to
        // 08:50:00: 4.636 ha, within a 256th of a tank
        WorkedPlan plan = season(600)
                .planter("P1", planter -> planter.hours("07:00/09:00").flush(600))
                .field("A", 5)
                .plan("A");

        assertThat(plan.planter("P1", "plant", "flush"))
                .startsWith("1 07:32:44 - 1 08:49:56 plant A 4.631 ha", "1 08:49:56 - 1 08:59:56 flush A");
    }

    @Test
    void aPlanterThatWaitsForTheNextDayIsFlushedBeforeItWaits() {
        // R1 can draw 1,000 L from 07:00:00 on only: 200 s, and 200 s + 900 s later the load is there. Between flush
        // and fill
        // lie 34,900 s to 18:50:00 and 1,300 s of the next day; the time that is kept for the flush is none of them
        WorkedPlan plan = season(600)
                .rig("R1", rig -> rig.hours("06:00/08:00").nurseTank(1000))
                .waterPoint("well", OptionalDouble.empty(), WorkedSeason.hours("07:00/07:20"), 0)
                .field("A", 10)
                .plan("A");

        assertThat(plan.planter("P1", "fill", "flush", "wait"))
                .containsExactly(
                        "1 07:20:00 - 1 07:21:40 wait A water",
                        "1 07:21:40 - 1 07:35:00 fill A",
                        "1 08:58:20 - 1 09:08:20 flush A",
                        "1 09:08:20 - 2 07:21:40 wait A water",
                        "2 07:21:40 - 2 07:35:00 fill A",
                        "2 08:58:20 - 2 09:08:20 flush A");
        assertThat(plan.plan().totals().waitMin()).isEqualTo((100 + 34_900 + 1_300) / 60.0);
    }

    @Test
    void aPlanterThatDrivesInTheEveningIsFlushedAfterThat() {
        // the drive to B, whose window opens on the second day, takes 600 s + 11,000 s, and P1 is to be there at
        // 07:00:00
        WorkedPlan plan = season(600)
                .road("A", "B", 55_000)
                .field("A", 5)
                .field("B", 5, field -> field.window(2, 3))
                .plan("A B");

        assertThat(plan.planter("P1", "move", "flush"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 08:56:40 - 1 12:10:00 move A to B",
                        "1 12:10:00 - 1 12:20:00 flush B",
                        "2 08:36:40 - 2 08:46:40 flush B");
    }

    @Test
    void aFlushFollowsPlantingThatGoesOnPastTheHours() {
        // hours to 09:00:00 leave planting until 08:50:00; the load is used up 400 s later, and flushed until 09:06:40
        WorkedPlan plan = season(600)
                .planter(
                        "P1", planter -> planter.hours("07:00/09:00").flush(600).overtime(400))
                .field("A", 5)
                .plan("A");

        assertThat(plan.planter("P1", "plant", "flush"))
                .containsExactly("1 07:33:20 - 1 08:56:40 plant A 5.000 ha", "1 08:56:40 - 1 09:06:40 flush A");
    }

    @Test
    void overtimeLeavesTimeForTheFlushBeforeMidnight() {
        // a load of 5 ha from 22:18:00 on is planted by 23:54:40, and flushed by midnight if that takes no more than
        // 320 s
        assertThat(nearMidnight(320).plan("A").planter("P1", "flush"))
                .containsExactly("1 23:54:40 - 2 00:00:00 flush A");
        assertThat(nearMidnight(321).plan("A").planter("P1", "flush")).hasSize(2);
    }

    private static WorkedSeason nearMidnight(int flushS) {
        return new WorkedSeason()
                .planter("P1", planter -> planter.hours("22:18/23:50")
                        .flush(flushS)
                        .overtime(7200)
                        .unfoldedAt("A"))
                .rig("R1", rig -> rig.hours("06:00/24:00"))
                .field("A", 5);
    }

    @Test
    void aPlanterThatKeepsMixOverNightIsFlushedAllTheSame() {
        // a load of 5 ha keeps for two days; rain closes A from 08:00:00 to the next midnight
        WorkedPlan before = season(600).hold(172_800).field("A", 5).plan("A");
        News rain = new News(List.of(new Rain(WorkedSeason.FIRST, 8 * 3600, 10)), List.of(), Set.of());

        assertThat(UnderWay.at(before, "08:00:00", rain).goOn().planter("P1"))
                .containsExactly(
                        "1 08:00:00 - 1 08:10:00 flush A",
                        "2 07:00:00 - 2 07:56:40 plant A 3.400 ha",
                        "2 07:56:40 - 2 08:06:40 flush A");
    }

    @Test
    void aPlanterThatHasAppliedMixIsFlushedOnTheDayThatThePlanIsMadeAnew() {
        WorkedPlan before = season(600).field("A", 5).field("B", 5).plan("A B");

        assertThat(UnderWay.at(before, "09:00:00").goOnWith("").planter("P1", "flush"))
                .hasSize(1);
    }

    @Test
    void aPlanterThatWasFlushedIsNotFlushedAgain() {
        WorkedPlan before = season(600).field("A", 5).plan("A");

        assertThat(UnderWay.at(before, "09:10:00")
                        .start()
                        .standing()
                        .planters()
                        .get("P1")
                        .lines())
                .isEmpty();
    }

    @Test
    void mixOfThePlanBeforeIsFlushedBeforeAnotherRecipe() {
        WorkedPlan before = twoRecipes(600).plan("A B");
        UnderWay underWay = UnderWay.at(before, "08:56:30");

        assertThat(underWay.goOn().planter("P1", "flush", "fill"))
                .startsWith("1 08:56:40 - 1 09:06:40 flush A", "1 09:06:40 - 1 09:20:00 fill A");
    }

    private static WorkedSeason season(int flushS) {
        return new WorkedSeason().planter("P1", planter -> planter.flush(flushS));
    }

    private static WorkedSeason twoRecipes(int flushS) {
        return season(flushS)
                .recipe("strong", 200, 10, 5 * 3600)
                .field("A", 5)
                .field("B", 5, field -> field.recipe("strong"));
    }
}

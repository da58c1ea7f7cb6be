package freshfurrow.solver.limits;

import static freshfurrow.model.plan.Resource.COMPOST;
import static freshfurrow.model.plan.Resource.HOSE;
import static freshfurrow.model.plan.Resource.PLANTER;
import static freshfurrow.model.plan.Resource.RIG;
import static freshfurrow.model.plan.Resource.WATER_LIMIT;
import static freshfurrow.model.plan.Resource.WEATHER;
import static freshfurrow.model.plan.Resource.WINDOWS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Plan.Limit;
import freshfurrow.model.plan.Resource;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One season for each resource, in which it is known to be what holds the plan back. */
class SeasonLimitsTest {
    /** Loads end up to 0.4 % of a tank early. */
    private static final double LOAD_TOLERANCE_HA = 0.03;

    @Test
    void aFieldTooLargeForADayIsHeldBackByThePlanterAndALittleByTheRigThatPumps() {
        // In 43,200 s: 7 loads of 800 s + 5000 s, then 2600 s for one of 300 s + 100 s/ha + 1000 s/ha: 2.09 ha. 37.09
        // ha.
        // Rig free: 8 loads of 301 s + 5000 s, then 792 s would do for 0.49 ha, less than a tenth of the tank: 40 ha.
        // Planter free: 500 s of pumping, 180 s of cleaning, at most 800 s for water and 900 s for the batch: all 10
        // loads.
        Map<Resource, Limit> limits = new HeldBackSeason().field("A", 50, 1, 1).limits("A");

        double late = 50 - 37.09;
        assertThat(limits.get(PLANTER).lateHaDays()).isZero();
        assertThat(limits.get(PLANTER).shareOfLate()).isEqualTo(1);
        assertThat(limits.get(RIG).lateHaDays()).isCloseTo(50 - 40, within(LOAD_TOLERANCE_HA));
        assertThat(limits.get(RIG).shareOfLate()).isCloseTo((late - 10) / late, within(0.005));
        assertThat(limits.get(HOSE).lateHaDays()).isCloseTo(late, within(LOAD_TOLERANCE_HA));
        assertNoLateness(limits, HOSE, WATER_LIMIT, COMPOST, WEATHER, WINDOWS);
    }

    @Test
    void aPlanterThatWaitsForItsTurnIsHeldUpByTheRig() {
        // P2 asks at 07:00:00. P1 is filled in 800 s, then clean 180 s, drive 100 s, batch 900 s: P2 waits 33 min.
        // Rig free: P1 300 s + 1 s, drive 1 s, batch 1 s: P2 waits 303 s.
        // Planters free: P1 500 s, clean 180 s, drive 100 s, batch 900 s: P2 waits 28 min.
        Map<Resource, Limit> limits =
                new HeldBackSeason().field("A", 5, 1, 1).field("B", 5, 1, 1).limits("A", "B");

        assertThat(limits.get(WEATHER).waitMin()).isEqualTo(33);
        assertThat(limits.get(RIG).waitMin()).isEqualTo(5.1);
        assertThat(limits.get(RIG).shareOfWait()).isCloseTo((33 - 5.1) / 33, within(1e-9));
        assertThat(limits.get(PLANTER).waitMin()).isEqualTo(28);
        assertThat(limits.get(PLANTER).shareOfWait()).isCloseTo(5 / 33.0, within(1e-9));
        assertNoWaiting(limits, HOSE, WATER_LIMIT, COMPOST, WEATHER, WINDOWS);
    }

    @Test
    void aTrickleOfWaterIsHeldUpByTheHose() {
        // A draw of 1000 L takes 10,000 s. First load: 06:00:00 + 100 s + 10,000 s + 200 s + 900 s = 09:06:40.
        // Second: full at 09:20:00, 180 s, 200 s, 10,000 s, 200 s, 900 s: 12:31:20; asked for at 10:43:20. 126:40 +
        // 108:00.
        // Hose free: both are ready before they are asked for.
        // Rig free: 06:00:00 + 1 s + 10,000 s + 1 s + 1 s = 08:46:43, full at 08:51:44; 10,003 s later asked for at
        // 10:15:04. 106:43 + 83:23.
        Map<Resource, Limit> limits = new HeldBackSeason()
                .field("A", 10, 1, 1)
                .nurseTank(1000)
                .flow(0.1)
                .limits("A");

        assertThat(limits.get(WEATHER).waitMin()).isCloseTo(126 + 2 / 3.0 + 108, within(0.05));
        assertThat(limits.get(HOSE).waitMin()).isZero();
        assertThat(limits.get(HOSE).shareOfWait()).isEqualTo(1);
        assertThat(limits.get(RIG).waitMin()).isCloseTo(190.1, within(0.05));
        assertNoWaiting(limits, WATER_LIMIT, COMPOST, WEATHER, WINDOWS);
    }

    @Test
    void aDaysWaterForHalfTheFieldIsHeldBackByTheLimit() {
        // 5 ha on the first day, 5 ha a day late; the planter stands from 08:36:40 to 19:00
        Map<Resource, Limit> limits = new HeldBackSeason()
                .field("A", 10, 1, 1)
                .nurseTank(1000)
                .dailyLimit(1000)
                .limits("A");

        assertThat(limits.get(HOSE).lateHaDays()).isEqualTo(5);
        assertThat(limits.get(HOSE).waitMin()).isCloseTo(623.3, within(0.05));
        assertThat(limits.get(WATER_LIMIT).shareOfLate()).isEqualTo(1);
        assertThat(limits.get(WATER_LIMIT).shareOfWait()).isEqualTo(1);
        assertNoLateness(limits, PLANTER, RIG, HOSE, COMPOST, WEATHER, WINDOWS);
    }

    @Test
    void compostThatComesADayLateHoldsBackWhatIsPlantedWithIt() {
        Map<Resource, Limit> limits =
                new HeldBackSeason().field("A", 10, 1, 1).lot(50, 1).lot(50, 2).limits("A");

        assertThat(limits.get(WEATHER).lateHaDays()).isEqualTo(5);
        assertThat(limits.get(COMPOST).lateHaDays()).isZero();
        assertThat(limits.get(COMPOST).shareOfLate()).isEqualTo(1);
        assertThat(limits.get(COMPOST).shareOfWait()).isEqualTo(1);
        assertNoLateness(limits, PLANTER, RIG, HOSE, WATER_LIMIT, WEATHER, WINDOWS);
    }

    @Test
    void compostThatNeverComesLeavesAreaThatCountsAsHeldBackToo() {
        Map<Resource, Limit> limits =
                new HeldBackSeason().field("A", 10, 1, 3).lot(50, 1).limits("A");

        assertThat(limits.get(WEATHER).unservedHa()).isEqualTo(5);
        assertThat(limits.get(COMPOST).unservedHa()).isZero();
        assertThat(limits.get(COMPOST).shareOfLate()).isEqualTo(1);
    }

    @Test
    void aFieldThatIsWetForTheWholeOfItsWindowIsHeldBackByTheWeather() {
        // closed on the first day, so 5 ha are a day late
        Map<Resource, Limit> limits =
                new HeldBackSeason().field("A", 5, 1, 1).rain(1, 1).limits("A");

        assertThat(limits.get(RIG).lateHaDays()).isEqualTo(5);
        assertThat(limits.get(WEATHER).shareOfLate()).isEqualTo(1);
        assertNoLateness(limits, PLANTER, RIG, HOSE, WATER_LIMIT, COMPOST, WINDOWS);
    }

    @Test
    void aFieldListedBehindOneThatIsNotOpenYetIsHeldBackByTheWindows() {
        // B waits for A, which opens on the second day
        Map<Resource, Limit> limits =
                new HeldBackSeason().field("A", 5, 2, 2).field("B", 5, 1, 1).limits("A B");

        assertThat(limits.get(RIG).lateHaDays()).isEqualTo(5);
        assertThat(limits.get(WINDOWS).shareOfLate()).isEqualTo(1);
        assertNoLateness(limits, PLANTER, RIG, HOSE, WATER_LIMIT, COMPOST, WEATHER);
    }

    @Test
    void whereTwoThingsHoldAFieldBackTogetherFreeingEitherChangesNothing() {
        Map<Resource, Limit> limits =
                new HeldBackSeason().field("A", 5, 1, 1).rain(1, 1).lot(50, 2).limits("A");

        assertThat(limits.get(WEATHER).lateHaDays()).isEqualTo(5);
        assertThat(limits.get(COMPOST).lateHaDays()).isEqualTo(5);
        assertNoLateness(limits, Resource.values());
    }

    @Test
    void aPlanThatIsInTimeAndNeverWaitsIsHeldBackByNothing() {
        Map<Resource, Limit> limits = new HeldBackSeason().field("A", 5, 1, 1).limits("A");

        assertThat(limits).containsOnlyKeys(Resource.values());
        assertNoLateness(limits, Resource.values());
        assertNoWaiting(limits, Resource.values());
    }

    @Test
    void aRigThatServesSixPlantersIsWhatHoldsThemBackWhateverListsAreFound() {
        // Planters: 7.4 loads of 800 s + 5000 s in 43,200 s, 37 ha each, so 222 ha a day for 192 ha of fields.
        // Rig: a batch 900 s, transfer 800 s, drive 100 s and more for each 5 ha of 50,400 s: 140 ha a day at the most.
        HeldBackSeason season = new HeldBackSeason();
        String[] lists = new String[6];
        for (int planter = 0; planter < 6; planter++) {
            String[] list = new String[4];
            for (int i = 0; i < 4; i++) {
                list[i] = "F" + planter + i;
                season.field(list[i], 8, 1, 1);
            }
            lists[planter] = String.join(" ", list);
        }

        Map<Resource, Limit> limits = season.limitsBySearch(400, lists);

        assertThat(limits.get(RIG).shareOfLate()).isGreaterThan(0.9);
        for (Resource other : List.of(PLANTER, HOSE, WATER_LIMIT, COMPOST, WEATHER, WINDOWS)) {
            assertThat(limits.get(other).shareOfLate()).as("%s", other).isLessThan(0.3);
        }
    }

    @Test
    void whatGetsWorseOrWasNeverThereHasNoShare() {
        assertThat(SeasonLimits.shareGone(10, 4)).isEqualTo(0.6);
        assertThat(SeasonLimits.shareGone(10, 0)).isEqualTo(1);
        assertThat(SeasonLimits.shareGone(10, 12)).isZero();
        assertThat(SeasonLimits.shareGone(0, 12)).isZero();
        assertThat(SeasonLimits.shareGone(0, 0)).isZero();
    }

    private static void assertNoLateness(Map<Resource, Limit> limits, Resource... resources) {
        for (Resource resource : resources) {
            assertThat(limits.get(resource).shareOfLate()).as("%s", resource).isZero();
        }
    }

    private static void assertNoWaiting(Map<Resource, Limit> limits, Resource... resources) {
        for (Resource resource : resources) {
            assertThat(limits.get(resource).shareOfWait()).as("%s", resource).isZero();
        }
    }
}

package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.WorkedSeason.lot;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A load of 5 ha takes 50 kg, which are loaded in 300 s. The first is asked for at 07:20:00, the second at 08:56:40. */
class CompostTripsTest {
    @Test
    void aRigLoadsWhatAllFieldsNeedBeforeTheFirstLoad() {
        // 100 kg in 600 s; to the well 100 s, 400 s there, to A 200 s
        WorkedPlan plan =
                new WorkedSeason().heapInTheYard(10_000).field("A", 10).plan("A");

        assertThat(plan.rig("R1", "load", "draw", "move"))
                .containsExactly(
                        "1 06:00:00 - 1 06:10:00 load yard 100.000 kg of heap",
                        "1 06:10:00 - 1 06:11:40 move yard to well",
                        "1 06:11:40 - 1 06:18:20 draw well 2000.000 L",
                        "1 06:18:20 - 1 06:21:40 move well to A");
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:56:40");
        assertThat(plan.plan().totals().compostTrips()).isEqualTo(1);
        assertThat(plan.plan().totals().compostKg()).isEqualTo(100);
    }

    @Test
    void aRigThatHoldsOneLoadFetchesTheNextWhenItIsCleaned() {
        // free at 07:36:20; 300 s to the yard, 300 s there, 300 s back; the batch ends at 08:56:40
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.compostLoad(50))
                .heapInTheYard(10_000)
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1"))
                .endsWith(
                        "1 07:33:20 - 1 07:36:20 clean A",
                        "1 07:36:20 - 1 07:41:20 move A to yard",
                        "1 07:41:20 - 1 07:46:20 load yard 50.000 kg of heap",
                        "1 07:46:20 - 1 07:51:20 move yard to A",
                        "1 08:41:40 - 1 08:56:40 extract A",
                        "1 08:56:40 - 1 09:10:00 transfer A 1000.000 L",
                        "1 09:10:00 - 1 09:13:00 clean A");
        assertThat(plan.plan().totals().compostTrips()).isEqualTo(2);
    }

    @Test
    void aTripThatComesTooLateMakesThePlanterWaitForTheRig() {
        // 100 s to the well, 400 s, 1,900 s on to the shed, 300 s there, 1,900 s to A, 900 s for the batch: 07:31:40
        WorkedPlan plan = new WorkedSeason()
                .lots(lot("heap", 10_000, 1, "shed"))
                .road("well", "shed", 19_000)
                .road("yard", "shed", 40_000)
                .road("shed", "A", 19_000)
                .field("A", 5)
                .plan("A");

        assertThat(plan.rig("R1", "load", "draw"))
                .containsExactly(
                        "1 06:01:40 - 1 06:08:20 draw well 2000.000 L",
                        "1 06:40:00 - 1 06:45:00 load shed 50.000 kg of heap");
        assertThat(plan.planter("P1", "wait", "fill"))
                .containsExactly("1 07:20:00 - 1 07:31:40 wait A rig", "1 07:31:40 - 1 07:45:00 fill A");
    }

    @Test
    void waterIsDrawnFirstWhereTheRigIsThereSoonerThen() {
        // by the well 06:08:20, at the shed 06:11:30 to 06:21:30, at A 06:22:20; by the shed first it would be 06:28:10
        WorkedPlan plan = new WorkedSeason()
                .lots(lot("heap", 10_000, 1, "shed"))
                .road("well", "shed", 1_900)
                .road("shed", "A", 500)
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "draw", "load", "move"))
                .containsExactly(
                        "1 06:00:00 - 1 06:01:40 move yard to well",
                        "1 06:01:40 - 1 06:08:20 draw well 2000.000 L",
                        "1 06:08:20 - 1 06:11:30 move well to shed",
                        "1 06:11:30 - 1 06:21:30 load shed 100.000 kg of heap",
                        "1 06:21:30 - 1 06:22:20 move shed to A");
    }

    @Test
    void whereOneLotIsNotEnoughTheRigGoesOnToTheNext() {
        // 30 kg in 180 s; 300 s to the shed, 70 kg in 420 s
        WorkedPlan plan = new WorkedSeason()
                .lots(lot("old", 30, 1, "yard"), lot("new", 1_000, 1, "shed"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "load"))
                .containsExactly(
                        "1 06:00:00 - 1 06:03:00 load yard 30.000 kg of old",
                        "1 06:08:00 - 1 06:15:00 load shed 70.000 kg of new");
        assertThat(plan.plan().batches())
                .extracting(Plan.Batch::lots)
                .containsExactly(Map.of("old", 30.0, "new", 20.0), Map.of("new", 50.0));
        assertThat(plan.plan().totals().compostTrips()).isEqualTo(2);
    }

    @Test
    void anotherLotsPlaceIsNotSoughtOutWhereTheLoadHasEnough() {
        WorkedPlan plan = new WorkedSeason()
                .lots(lot("old", 60, 1, "yard"), lot("new", 1_000, 1, "shed"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "load"))
                .containsExactly(
                        "1 06:00:00 - 1 06:06:00 load yard 60.000 kg of old",
                        "1 07:41:20 - 1 07:45:20 load shed 40.000 kg of new");
    }

    @Test
    void aLotIsLoadedFromItsFirstDayOn() {
        // compost is asked for at 08:56:40, and there on the second day
        WorkedPlan plan = new WorkedSeason()
                .lots(lot("old", 50, 1, "yard"), lot("new", 1_000, 2, "shed"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "load"))
                .containsExactly(
                        "1 06:00:00 - 1 06:05:00 load yard 50.000 kg of old",
                        "2 06:05:00 - 2 06:10:00 load shed 50.000 kg of new");
        assertThat(plan.planter("P1", "wait", "fill"))
                .endsWith("1 08:56:40 - 2 07:00:00 wait A compost", "2 07:00:00 - 2 07:13:20 fill A");
    }

    @Test
    void whatIsOnBoardIsUsedBeforeALotThatIsStillToCome() {
        // 50 kg and 20 kg today, the rest of 80 kg tomorrow
        WorkedPlan plan = new WorkedSeason()
                .lots(lot("old", 70, 1, "yard"), lot("new", 1_000, 2, "shed"))
                .field("A", 15)
                .plan("A");

        assertThat(plan.plan().loads()).extracting(Plan.Load::litres).containsExactly(1_000.0, 400.0, 1_000.0, 600.0);
        assertThat(plan.rig("R1", "load"))
                .containsExactly(
                        "1 06:00:00 - 1 06:07:00 load yard 70.000 kg of old",
                        "2 06:05:00 - 2 06:13:00 load shed 80.000 kg of new");
    }

    @Test
    void waterAndCompostStayWithinThePayload() {
        // 3,000 kg less 930 kg empty and 2,000 kg of water are 70 kg; then 50 kg for 20 kg on board, and 30 kg that are
        // still needed
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.compostLoad(500).payload(3_000, 930))
                .heapInTheYard(10_000)
                .field("A", 15)
                .plan("A");

        assertThat(plan.rig("R1", "load"))
                .extracting(line -> line.substring(line.indexOf("load")))
                .containsExactly(
                        "load yard 70.000 kg of heap", "load yard 50.000 kg of heap", "load yard 30.000 kg of heap");
    }

    @Test
    void aRigLeavesOtherRigsTheirShareOfALotThatIsNotEnoughForAllThatTheyHold() {
        // each holds 500 kg: R1 takes half of 300 kg; of 150 kg and the 100 kg that R1 has left then half are for R2,
        // which draws first
        WorkedPlan plan = new WorkedSeason()
                .planter("P2", planter -> planter)
                .rig("R2", rig -> rig)
                .heapInTheYard(300)
                .field("A", 20)
                .field("B", 10)
                .plan("A", "B");

        assertThat(plan.rig("R1", "load")).first().isEqualTo("1 06:00:00 - 1 06:15:00 load yard 150.000 kg of heap");
        assertThat(plan.rig("R2", "load")).first().isEqualTo("1 06:10:00 - 1 06:22:30 load yard 125.000 kg of heap");
        assertThat(plan.plan().totals().unservedHa()).isZero();
    }

    @Test
    void aRigLoadsWhatItsLoadLacksThoughItIsMoreThanItsShare() {
        // 50 kg of 60 kg for R1; 10 kg are left for R2
        WorkedPlan plan = new WorkedSeason()
                .planter("P2", planter -> planter)
                .rig("R2", rig -> rig)
                .heapInTheYard(60)
                .field("A", 5)
                .field("B", 5)
                .plan("A", "B");

        assertThat(plan.rig("R1", "load")).containsExactly("1 06:00:00 - 1 06:05:00 load yard 50.000 kg of heap");
        assertThat(plan.rig("R2", "load")).containsExactly("1 06:00:00 - 1 06:01:00 load yard 10.000 kg of heap");
        assertThat(plan.unserved()).containsExactly("B 4.000 ha");
    }

    @Test
    void twoRigsShareALotThatIsEnoughForBoth() {
        // 100 kg are needed; each holds 50 kg
        WorkedPlan plan = new WorkedSeason()
                .planter("P2", planter -> planter)
                .rig("R1", rig -> rig.compostLoad(50))
                .rig("R2", rig -> rig.compostLoad(50))
                .heapInTheYard(100)
                .field("A", 5)
                .field("B", 5)
                .plan("A", "B");

        assertThat(plan.rig("R1", "load")).containsExactly("1 06:00:00 - 1 06:05:00 load yard 50.000 kg of heap");
        assertThat(plan.rig("R2", "load")).containsExactly("1 06:00:00 - 1 06:05:00 load yard 50.000 kg of heap");
        assertThat(plan.plan().totals().unservedHa()).isZero();
    }

    @Test
    void aRigThatMakesItsBatchesAtTheWaterFetchesCompostFirst() {
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.atTheWater())
                .heapInTheYard(10_000)
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "load", "draw"))
                .containsExactly(
                        "1 06:00:00 - 1 06:10:00 load yard 100.000 kg of heap",
                        "1 06:11:40 - 1 06:18:20 draw well 2000.000 L");
        assertThat(plan.rig("R1", "extract")).allMatch(line -> line.endsWith("extract well"));
        assertThat(plan.plan().totals().compostTrips()).isEqualTo(1);
    }

    @Test
    void compostThatIsLeftStaysOnBoardOverNight() {
        // 1,000 kg for 100 ha: the second day begins without a trip
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.compostLoad(1_000))
                .heapInTheYard(10_000)
                .field("A", 100)
                .plan("A");

        assertThat(plan.plan().totals().compostTrips()).isEqualTo(1);
        assertThat(plan.rig("R1", "load")).containsExactly("1 06:00:00 - 1 07:40:00 load yard 1000.000 kg of heap");
        assertThat(plan.rig("R1", "extract")).anyMatch(line -> line.startsWith("2 "));
    }

    @Test
    void noCompostIsFetchedForTheSakeOfLessThanAThousandth() {
        // 99.999 kg for two loads of 50 kg: the second lacks a gram
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.compostLoad(99.999))
                .heapInTheYard(10_000)
                .field("A", 10)
                .plan("A");

        assertThat(plan.plan().totals().compostTrips()).isEqualTo(1);
        assertThat(plan.plan().totals().unservedHa()).isZero();
    }

    @Test
    void aSeasonWithoutPlacesOfLotsKnowsNoTrips() {
        WorkedPlan plan = new WorkedSeason().field("A", 10).plan("A");

        assertThat(plan.rig("R1", "load")).isEmpty();
        assertThat(plan.plan().totals().compostTrips()).isZero();
    }

    @Test
    void aReplanGoesOnWithWhatIsOnBoard() {
        UnderWay underWay = UnderWay.at(
                new WorkedSeason().heapInTheYard(10_000).field("A", 10).plan("A"), "08:00");

        assertThat(underWay.start().standing().rigs().get("R1").compostKg()).containsExactly(Map.entry("heap", 50.0));
        assertThat(underWay.left().compost()).containsExactly(lot("heap", 9_900, 1, "yard"));
        WorkedPlan rest = underWay.goOn();
        assertThat(rest.rig("R1", "load")).isEmpty();
        assertThat(rest.plan().batches()).last().extracting(Plan.Batch::lots).isEqualTo(Map.of("heap", 50.0));
    }

    @Test
    void aReplanGoesOnWithALotThatIsOnBoardOnly() {
        UnderWay underWay =
                UnderWay.at(new WorkedSeason().heapInTheYard(100).field("A", 10).plan("A"), "08:00");

        assertThat(underWay.left().compost()).isEmpty();
        assertThat(underWay.goOn().plan().totals().unservedHa()).isZero();
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Standing;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A season gone on with in the middle. In the worked season two loads of 5 ha plant field A of 10 ha: filled 07:20:00 to 07:33:20 and
 * planted until 08:56:40, filled until 09:10:00 and planted until 10:33:20; the batches are made from 07:05:00 and from 08:41:40 on,
 * 900 s each.
 */
class UnderWayTest {
    private static final WorkedPlan TEN_HECTARES =
            new WorkedSeason().field("A", 10).plan("A");

    @Test
    void inTheMiddleOfALoadTheRestIsInTheTank() {
        // 08:00:00 is 1,600 s after planting began: 1.6 ha done, 3.4 ha in the tank; old at 07:20:00 + 5 h
        UnderWay underWay = UnderWay.at(TEN_HECTARES, "08:00");

        Standing.OfPlanter planter = underWay.start().standing().planters().get("P1");
        assertThat(planter.at()).isEqualTo("A");
        assertThat(planter.tank().orElseThrow().load()).isEqualTo("L0001");
        assertThat(planter.tank().orElseThrow().mix().areaHa()).isCloseTo(3.4, within(1e-6));
        assertThat(planter.tank().orElseThrow().mix().deadline()).hasToString("2027-04-19T12:20");
        assertThat(underWay.start().plantedHa()).containsOnlyKeys("A").containsEntry("A", 1.6);
        assertThat(underWay.left().fields().get(0).areaHa()).isCloseTo(8.4, within(1e-6));
        // 10,000 kg less a batch of 50 kg; 2,000 L drawn less 1,000 L passed on
        assertThat(underWay.left().compost()).containsExactly(new CompostLot("heap", 9_950, WorkedSeason.FIRST));
        assertThat(underWay.start().standing().rigs().get("R1").waterL()).isEqualTo(1_000);
        assertThat(underWay.start().standing().drawnL()).containsExactly(Map.entry("well", 2_000.0));
    }

    @Test
    void inTheMiddleOfALoadAllGoesOnAsItWas() {
        WorkedPlan rest = UnderWay.at(TEN_HECTARES, "08:00").goOn();

        assertThat(rest.planter("P1", "plant", "fill"))
                .containsExactly(
                        "1 08:00:00 - 1 08:56:40 plant A 3.400 ha",
                        "1 08:56:40 - 1 09:10:00 fill A",
                        "1 09:10:00 - 1 10:33:20 plant A 5.000 ha");
        assertThat(rest.rig("R1", "extract")).containsExactly("1 08:41:40 - 1 08:56:40 extract A");
        assertThat(rest.plan().loads()).extracting(Plan.Load::id).containsExactly("L0001", "L0002");
        assertThat(rest.plan().totals().planterFills())
                .isEqualTo(TEN_HECTARES.plan().totals().planterFills() - 1);
    }

    @Test
    void inTheMiddleOfABatchItIsFinishedAndUsed() {
        UnderWay underWay = UnderWay.at(TEN_HECTARES, "08:50");

        Standing.OfRig rig = underWay.start().standing().rigs().get("R1");
        assertThat(rig.freeFrom()).hasToString("2027-04-19T08:56:40");
        assertThat(rig.cleanDue()).isTrue();
        assertThat(rig.mix().orElseThrow().areaHa()).isCloseTo(5, within(1e-6));
        assertThat(rig.mix().orElseThrow().batches()).containsExactly("B0002");
        WorkedPlan rest = underWay.goOn();
        assertThat(rest.planter("P1", "plant", "fill"))
                .containsExactly(
                        "1 08:50:00 - 1 08:56:40 plant A 0.400 ha",
                        "1 08:56:40 - 1 09:10:00 fill A",
                        "1 09:10:00 - 1 10:33:20 plant A 5.000 ha");
        assertThat(rest.rig("R1"))
                .containsExactly("1 08:56:40 - 1 09:10:00 transfer A 1000.000 L", "1 09:10:00 - 1 09:13:00 clean A");
    }

    @Test
    void inTheMiddleOfATransferTheWholeLoadComes() {
        WorkedPlan rest = UnderWay.at(TEN_HECTARES, "09:00").goOn();

        assertThat(rest.planter("P1")).containsExactly("1 09:10:00 - 1 10:33:20 plant A 5.000 ha");
        assertThat(rest.plan().totals().batches()).isZero();
    }

    @Test
    void aLoadThatGoesStaleWhileTheFieldIsWetIsLetOut() {
        // 10 mm x 0.1 d/mm: closed until midnight, the mix is old at 12:20; 3.4 ha x 200 L/ha
        UnderWay underWay = UnderWay.at(TEN_HECTARES, "08:00", rain("08:00"));

        WorkedPlan rest = underWay.goOn();

        assertThat(rest.load(1).dumpedL()).isCloseTo(680, within(0.01));
        assertThat(rest.plan().totals().dumpedL()).isCloseTo(680, within(0.01));
        assertThat(rest.planter("P1", "plant").get(0)).startsWith("2 07:");
        assertThat(rest.plan().totals().areaHa()).isCloseTo(8.4, within(1e-6));
    }

    @Test
    void aLoadCanBeTakenToAFieldThatIsDry() {
        // to B 600 s + 1,000 m / 5 m/s = 800 s; 3.4 ha in 3,400 s
        WorkedPlan before = new WorkedSeason()
                .field("A", 10)
                .field("B", 3.4, field -> field.drainage(Drainage.WELL))
                .plan("A B");

        WorkedPlan rest = UnderWay.at(before, "08:00", rain("08:00")).goOnWith("B A");

        assertThat(rest.planter("P1", "plant").get(0)).isEqualTo("1 08:13:20 - 1 09:10:00 plant B 3.400 ha");
        assertThat(rest.plan().totals().dumpedL()).isZero();
    }

    @Test
    void anotherRigBringsWhatOneThatIsDownCannot() {
        WorkedPlan before = new WorkedSeason()
                .field("A", 15)
                .rig("R2", rig -> rig.at("shed"))
                .plan("A");
        News down = new News(
                List.of(),
                List.of(new Outage(
                        "R1",
                        WorkedSeason.FIRST.atTime(8, 0),
                        WorkedSeason.day(2).atTime(8, 0))),
                Set.of());

        WorkedPlan rest = UnderWay.at(before, "08:00", down).goOn();

        assertThat(rest.plan().loads().stream().skip(1))
                .extracting(Plan.Load::rig)
                .containsOnly("R2");
        assertThat(rest.rig("R1")).isEmpty();
        assertThat(rest.plan().totals().areaHa()).isCloseTo(13.4, within(1e-6));
    }

    @Test
    void aLotThatIsSpoiledIsGone() {
        // the second load's 50 kg would have come from the second lot
        WorkedPlan before = new WorkedSeason()
                .field("A", 10)
                .lots(new CompostLot("heap", 50, WorkedSeason.FIRST), new CompostLot("pile", 50, WorkedSeason.FIRST))
                .plan("A");

        WorkedPlan rest = UnderWay.at(before, "08:00", new News(List.of(), List.of(), Set.of("pile")))
                .goOn();

        assertThat(rest.planter("P1", "plant")).containsExactly("1 08:00:00 - 1 08:56:40 plant A 3.400 ha");
        assertThat(rest.unserved()).containsExactly("A 5.000 ha");
    }

    /**
     * 5 ha ask for 50 kg; the lot has 5 g less, and a load that takes all there is may lack up to ten. At 07:33:20 planting begins, and all
     * of the mix is in the tank.
     */
    @Test
    void mixThatLacksAFewGramsIsInTheTankForAllOfItsArea() {
        WorkedPlan before = new WorkedSeason()
                .field("A", 5)
                .lots(new CompostLot("heap", 49.995, WorkedSeason.FIRST))
                .plan("A");

        UnderWay underWay = UnderWay.at(before, "07:33");
        Standing.Tank tank =
                underWay.start().standing().planters().get("P1").tank().orElseThrow();

        assertThat(tank.mix().areaHa()).isEqualTo(5);
        assertThat(underWay.goOn().planter("P1", "plant")).containsExactly("1 07:33:20 - 1 08:56:40 plant A 5.000 ha");
    }

    @Test
    void mixOnARigIsUsedThoughNoCompostIsLeft() {
        WorkedPlan before = new WorkedSeason()
                .field("A", 10)
                .lots(new CompostLot("heap", 100, WorkedSeason.FIRST))
                .plan("A");

        WorkedPlan rest = UnderWay.at(before, "08:50").goOn();

        assertThat(rest.season().compost()).isEmpty();
        assertThat(rest.unserved()).isEmpty();
    }

    @Test
    void aFieldThatWasLoggedHasExactlyTheLoggedArea() {
        SeasonLog log = new SeasonLog(List.of(new Entry(
                1,
                WorkedSeason.FIRST.atTime(7, 58),
                new Fact.Planted("A", 2, Optional.of("P1"), Optional.empty()),
                "")));

        UnderWay underWay = UnderWay.at(TEN_HECTARES, "08:00", UnderWay.NOTHING_NEW, log);

        assertThat(underWay.start().plantedHa()).containsEntry("A", 2.0);
        assertThat(underWay.goOn().plan().totals().areaHa()).isCloseTo(8, within(1e-6));
    }

    @Test
    void afterARainThatThePlanDidNotKnowOfNothingIsTakenAsDone() {
        // at 09:30 the rain of 08:00 is known: 1.6 ha were done by then
        UnderWay underWay = UnderWay.at(TEN_HECTARES, "09:30", rain("08:00"));

        assertThat(underWay.start().plantedHa()).containsEntry("A", 1.6);
        assertThat(underWay.start().now()).hasToString("2027-04-19T09:30");
    }

    @Test
    void goneOnWithTwiceWithNothingNewNothingChanges() {
        UnderWay once = UnderWay.at(TEN_HECTARES, "08:50");
        WorkedPlan rest = once.goOn();

        UnderWay twice = UnderWay.at(new WorkedPlan(TEN_HECTARES.season(), rest.plan()), "08:50");

        assertThat(twice.start()).isEqualTo(once.start());
        assertThat(twice.goOn().plan()).isEqualTo(rest.plan());
    }

    private static News rain(String clock) {
        return new News(
                List.of(new Rain(WorkedSeason.FIRST, LocalTime.parse(clock).toSecondOfDay(), 10)), List.of(), Set.of());
    }
}

package freshfurrow.model.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LogSumsTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    private static final LocalDateTime MORNING = FIRST.atTime(9, 0);
    private static final Season SEASON = new Season(
            "Sums",
            FIRST,
            FIRST.plusDays(20),
            ZoneOffset.UTC,
            new ClosedDays(Set.of(), Set.of()),
            Map.of(),
            List.of(),
            List.of(field("A", 10), field("B", 4)),
            List.of(),
            List.of(),
            List.of(),
            List.of(new CompostLot("pile", 100, FIRST.minusDays(20)), new CompostLot("truck", 80, FIRST.plusDays(10))),
            new Drying(2, 0, 0, 0),
            List.of(),
            Optional.empty(),
            (from, to) -> 0,
            Goals.DEFAULT,
            DisplayUnits.METRIC,
            List.of(),
            Optional.empty(),
            Optional.empty());

    private final List<Entry> entries = new ArrayList<>();

    @Test
    void areasOfAFieldAddUpByDayAndInAll() {
        add(MORNING, planted("A", 3, "P1", "L1"));
        add(MORNING.plusHours(2), planted("A", 1.5, "P1", "L2"));
        add(MORNING.plusDays(1), planted("A", 2, "P2", "L3"));

        assertThat(sums().plantedByDay("A")).containsExactly(Map.entry(FIRST, 4.5), Map.entry(FIRST.plusDays(1), 2.0));
        assertThat(sums().fields().get("A").plantedHa()).isEqualTo(6.5);
        assertThat(sums().fields().get("A").leftHa()).isEqualTo(3.5);
        assertThat(sums().fields().get("B").leftHa()).isEqualTo(4);
    }

    @Test
    void aFieldIsWholeWithinTheRoundingOfTheSheets() {
        // Two pieces, each off by 0.005 ha at most.
        add(MORNING, planted("B", 2, "P1", "L1"));
        add(MORNING.plusHours(2), planted("B", 1.99, "P1", "L2"));

        assertThat(sums().fields().get("B").isWhole()).isTrue();
        assertThat(sums().fields().get("B").leftHa()).isZero();
        // 2 x 4 / 3.99 + 1.99 x 4 / 3.99
        assertThat(sums().plantedByDay("B").get(FIRST)).isEqualTo(4, within(1e-12));
    }

    @Test
    void finerFiguresThanThoseOfTheSheetsAreTakenAsWritten() {
        // By the sheets ten pieces may be off by 0.05 ha together, by their own decimals by 0.0005 ha.
        for (int i = 0; i < 10; i++) {
            add(MORNING.plusHours(i), planted("B", 0.3961, "P1", "L" + i));
        }

        assertThat(sums().fields().get("B").isWhole()).isFalse();
        assertThat(sums().fields().get("B").leftHa()).isEqualTo(0.039, within(1e-9));
        assertThat(sums().plantedByDay("B").get(FIRST)).isEqualTo(3.961, within(1e-9));
    }

    @Test
    void figuresOfAnotherUnitAreAsRoundAsTheyWereWritten() {
        // Ten pieces of 1.0 ac, 0.4047 ha, each off by 0.005 ha or more: 0.0468 ha too much in all is nothing but
        // rounding.
        for (int i = 0; i < 10; i++) {
            add(MORNING.plusHours(i), planted("B", 0.40468564224, "P1", "L" + i));
        }

        assertThat(sums().fields().get("B").isWhole()).isTrue();
        assertThat(sums().fields().get("B").isTooMuch()).isFalse();
    }

    @Test
    void lessThanTheSheetsShowIsNothingLeft() {
        add(MORNING, planted("B", 3.9961, "P1", "L1"));

        assertThat(sums().fields().get("B").isWhole()).isTrue();
    }

    @Test
    void whatIsVoidedDoesNotCount() {
        add(MORNING, planted("A", 3, "P1", "L1"));
        add(MORNING.plusHours(1), new Fact.Voided(1));

        assertThat(sums().fields().get("A").plantedHa()).isZero();
        assertThat(sums().loads()).isEmpty();
    }

    @Test
    void aLotIsWhatWasThereAndCameLessWhatWasUsedAndSpoiled() {
        add(MORNING, batch("L1", "pile", 30));
        add(MORNING.plusHours(1), new Fact.CompostDelivered("pile", 50));
        add(MORNING.plusHours(2), new Fact.CompostSpoiled("pile", OptionalDouble.of(20)));

        // 100 + 50 - 30 - 20
        assertThat(sums().lots().get("pile")).isEqualTo(new LotStock("pile", FIRST.minusDays(20), 150, 30, 20));
        assertThat(sums().lots().get("pile").leftKg()).isEqualTo(100);
    }

    @Test
    void aLotThatSpoiledInWholeIsGoneButForWhatCameLater() {
        add(MORNING, batch("L1", "pile", 30));
        add(MORNING.plusHours(1), new Fact.CompostSpoiled("pile", OptionalDouble.empty()));
        add(MORNING.plusHours(2), new Fact.CompostDelivered("pile", 50));

        assertThat(sums().lots().get("pile").spoiledKg()).isEqualTo(70);
        assertThat(sums().lots().get("pile").leftKg()).isEqualTo(50);
    }

    @Test
    void aDeliveryThatWasExpectedIsWhatCameWhenItCame() {
        assertThat(sums().lots().get("truck")).isEqualTo(new LotStock("truck", FIRST.plusDays(10), 80, 0, 0));

        add(FIRST.plusDays(8).atTime(16, 0), new Fact.CompostDelivered("truck", 45));
        add(FIRST.plusDays(12).atTime(16, 0), new Fact.CompostDelivered("truck", 30));

        assertThat(sums().lots().get("truck")).isEqualTo(new LotStock("truck", FIRST.plusDays(8), 75, 0, 0));
    }

    @Test
    void moreCompostThanThereWasLeavesNone() {
        add(MORNING, batch("L1", "pile", 120));

        assertThat(sums().lots().get("pile").leftKg()).isZero();
    }

    @Test
    void waterIsSummedByPointAndDay() {
        add(MORNING, new Fact.WaterDrawn("well", "R1", 1000));
        add(MORNING.plusHours(3), new Fact.WaterDrawn("well", "R2", 500.5));
        add(MORNING.plusHours(4), new Fact.WaterDrawn("pond", "R2", 700));
        add(MORNING.plusDays(1), new Fact.WaterDrawn("well", "R1", 900));

        assertThat(sums().drawnL("well", FIRST)).isEqualTo(1500.5, within(1e-9));
        assertThat(sums().drawnL("pond", FIRST.plusDays(1))).isZero();
    }

    @Test
    void aMachineIsWhereItWasLastLoggedByTime() {
        add(MORNING.plusHours(5), planted("B", 1, "P1", "L1"));
        add(MORNING, planted("A", 1, "P1", "L1"));
        add(MORNING, new Fact.WaterDrawn("well", "R1", 1000));
        add(MORNING.plusHours(1), batch("L1", "pile", 30));
        add(MORNING.plusHours(2), new Fact.BatchMade("R1", Map.of("pile", 30.0), List.of(), Optional.of("A")));

        assertThat(sums().lastSeen("P1")).contains(new LastSeen("B", MORNING.plusHours(5)));
        assertThat(sums().lastSeen("R1")).contains(new LastSeen("A", MORNING.plusHours(2)));
        assertThat(sums().lastSeen("R2")).isEmpty();
    }

    @Test
    void aMachineThatDroveIsWhereItArrived() {
        add(MORNING, planted("A", 5, "P1", "L1"));
        add(MORNING.plusHours(1), new Fact.Driven("P1", "A", "B"));
        add(MORNING.plusHours(2), new Fact.Transferred("R1", 500, Optional.of("L1")));

        assertThat(sums().lastSeen("P1")).contains(new LastSeen("B", MORNING.plusHours(1)));
        assertThat(sums().lastSeen("R1")).isEmpty();
        assertThat(sums().loads()).containsOnlyKeys("L1");
    }

    @Test
    void aLoadHasItsBatchesAndWhatWasPlantedFromIt() {
        add(MORNING.plusHours(1), batch("L1", "pile", 30));
        add(MORNING, batch("L1", "pile", 29));
        add(MORNING.plusHours(2), planted("A", 5, "P1", "L1"));
        add(MORNING.plusHours(3), planted("B", 1, "P1", "L2"));

        LoadMade load = sums().loads().get("L1");
        assertThat(load.batches()).extracting(Entry::number).containsExactly(2, 1);
        assertThat(load.planted()).extracting(Entry::number).containsExactly(3);
        assertThat(load.oldestBatchEnd()).contains(MORNING);
        assertThat(sums().loads().get("L2").oldestBatchEnd()).isEmpty();
    }

    @Test
    void rainAndBreakdownsAreThoseLogged() {
        add(MORNING, new Fact.RainMeasured(20.32));
        add(MORNING.plusDays(1), new Fact.MachineDown("R1", Optional.of(MORNING.plusDays(2))));
        add(MORNING.plusDays(3), new Fact.MachineDown("P1", Optional.empty()));

        assertThat(sums().rains()).containsExactly(new Rain(FIRST, 9 * 3600, 20.32));
        assertThat(sums().breakdowns())
                .containsExactly(
                        new Breakdown("R1", MORNING.plusDays(1), Optional.of(MORNING.plusDays(2))),
                        new Breakdown("P1", MORNING.plusDays(3), Optional.empty()));
    }

    private LogSums sums() {
        return LogSums.of(SEASON, new SeasonLog(entries));
    }

    private void add(LocalDateTime at, Fact fact) {
        entries.add(new Entry(entries.size() + 1, at, fact, ""));
    }

    private static Fact planted(String field, double ha, String planter, String load) {
        return new Fact.Planted(field, ha, Optional.of(planter), Optional.of(load));
    }

    private static Fact batch(String load, String lot, double kg) {
        return new Fact.BatchMade("R1", Map.of(lot, kg), List.of(load), Optional.empty());
    }

    private static Field field(String id, double ha) {
        return WithDefaults.field(
                id,
                id,
                ha,
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(FIRST, FIRST.plusDays(10)),
                "standard",
                Drainage.WELL,
                1,
                Set.of());
    }
}

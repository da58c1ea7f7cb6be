package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.Batch;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole plans against figures that others have printed. */
class PublishedFiguresTest {
    private static final double M_PER_FT = 0.3048;
    private static final double M_PER_S_PER_MPH = 1609.344 / 3600;
    private static final double HA_PER_ACRE = 0.404_685_642_24;
    private static final double L_PER_GALLON = 3.785_411_784;
    private static final double KG_PER_LB = 0.453_592_37;

    /**
     * Iowa State University Extension, PM 696 / Ag Decision Maker A3-24, on the field capacity of farm machines: printed
     * rows, one decimal. The formula is that of ASABE EP496: mph x ft x efficiency / 8.25.
     */
    @ParameterizedTest
    @CsvSource({
        "40, 6, 70, 20.4",
        "50, 6, 70, 25.5",
        "15, 5, 63, 5.7",
        "20, 6, 63, 9.2",
        "30, 6, 60, 13.1",
        "10, 5, 85, 5.2",
        "17.5, 5, 83, 8.8"
    })
    void aPlannedFieldTakesThePrintedFieldCapacity(double widthFt, double mph, double percent, double acresPerHour) {
        WorkedPlan plan = new WorkedSeason()
                .recipe("standard", 10, 1, 20 * 3600)
                .planter("P1", planter -> planter.capacity(widthFt * M_PER_FT, mph * M_PER_S_PER_MPH, percent / 100))
                .field("A", 40 * HA_PER_ACRE)
                .plan("A");

        Activity.Plant plant = plantings(plan.plan()).get(0);
        double hours = Duration.between(plant.start(), plant.end()).toSeconds() / 3600.0;
        assertThat(plant.areaHa() / HA_PER_ACRE / hours).isCloseTo(acresPerHour, within(0.05));
    }

    /**
     * Iowa State University Extension, Ag Decision Maker A3-25, 'Fieldwork Days in Iowa' (October 2014): 1,600 acres in 8.3 suitable
     * days of 14 hours need 13.8 acres an hour. One small fill, so that planting is all that takes time.
     */
    @Test
    void sixteenHundredAcresTakeEightPointThreeDays() {
        double metresPerSecond = 13.8 * HA_PER_ACRE * 10_000 / 3600 / 10;
        WorkedPlan plan = new WorkedSeason()
                .days(14)
                .recipe("standard", 0.1, 0.01, 20 * 86_400)
                .planter("P1", planter -> planter.capacity(10, metresPerSecond, 1)
                        .unfoldedAt("A")
                        .hours("06:00/20:00"))
                .rig("R1", rig -> rig.hours("05:00/20:00"))
                .field("A", 1600 * HA_PER_ACRE)
                .plan("A");

        double seconds = plantings(plan.plan()).stream()
                .mapToLong(plant -> Duration.between(plant.start(), plant.end()).toSeconds())
                .sum();
        assertThat(seconds / (14 * 3600)).isCloseTo(8.3, within(0.05));
        assertThat(plan.plan().loads()).hasSize(1);
        LocalDateTime finish = plan.plan().totals().finish();
        assertThat(finish.toLocalDate()).isEqualTo(WorkedSeason.day(9));
    }

    /**
     * Common practice, no source: 30 lb of compost in 40 gal of drum water, applied at 2 lb and 20 gal an acre, serve 15 acres and
     * make 300 gal, one part of extract to 6.5 of water; extraction takes about a minute an acre.
     */
    @Test
    void aBatchOfThirtyPoundsServesFifteenAcres() {
        WorkedPlan plan = new WorkedSeason()
                .recipe("standard", 20 * L_PER_GALLON / HA_PER_ACRE, 2 * KG_PER_LB / HA_PER_ACRE, 5 * 3600)
                .planter("P1", planter -> planter.tank(300 * L_PER_GALLON))
                .rig("R1", rig -> rig.batch(40 * L_PER_GALLON, 30 * KG_PER_LB).nurseTank(600 * L_PER_GALLON))
                .field("A", 30 * HA_PER_ACRE)
                .plan("A");

        assertThat(plan.plan().loads()).hasSize(2).allSatisfy(load -> {
            assertThat(load.litres() / L_PER_GALLON).isCloseTo(300, within(0.01));
            assertThat(load.batches()).hasSize(1);
        });
        assertThat(plan.plan().batches()).hasSize(2).allSatisfy(batch -> {
            assertThat(batch.compostKg() / KG_PER_LB).isCloseTo(30, within(0.01));
            assertThat(batch.waterL() / L_PER_GALLON).isCloseTo(40, within(0.01));
            assertThat(300 - batch.waterL() / L_PER_GALLON).isCloseTo(6.5 * batch.waterL() / L_PER_GALLON, within(0.1));
            assertThat(minutes(batch)).isEqualTo(15);
        });
        Activity.Plant first = plantings(plan.plan()).get(0);
        assertThat(first.areaHa() / HA_PER_ACRE).isCloseTo(15, within(0.001));
    }

    private static long minutes(Batch batch) {
        return Duration.between(batch.start(), batch.end()).toMinutes();
    }

    private static List<Activity.Plant> plantings(Plan plan) {
        return plan.planters().get("P1").activities().stream()
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .toList();
    }
}

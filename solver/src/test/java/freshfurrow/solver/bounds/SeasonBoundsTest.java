package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.RandomPlans;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Bounds against arithmetic done by hand. */
class SeasonBoundsTest {
    private static final double HA_PER_ACRE = 0.404_685_642_24;

    /**
     * Six fields of 2 ha due on the first day: two on it, two a day late, two two days late: 4 + 8 = 12 ha-days. As a load may be 4.004 ha, a
     * field may take 29.97 s of the 60 s of a setup instead of 30, so that a day holds 4.000,058 ha: three times so much may be less late.
     */
    @Test
    void whatOneDayCannotHoldIsLate() {
        CompiledSeason season = CompiledSeason.of(sixFieldsDueAtOnce().season(5));
        Plan plan = plantedInOrder(season, 6);

        assertThat(plan.totals().lateHaDays()).isEqualTo(12);
        assertThat(SeasonBounds.of(season).forPlan(plan)).satisfies(bounds -> {
            assertThat(bounds.medium()).isEqualTo(-1200).isEqualTo(plan.score().medium());
            assertThat(bounds.lateHaDays())
                    .isCloseTo(12 - 0.000_173, within(1e-5))
                    .isLessThanOrEqualTo(12);
            assertThat(bounds.provedBest()).isFalse();
        });
    }

    /** Two days hold four fields, so 4 ha are left; they cost (2 + 1) days each, and two of the others are a day late: 12 + 4. */
    @Test
    void whatTheSeasonCannotHoldIsUnserved() {
        CompiledSeason season = CompiledSeason.of(sixFieldsDueAtOnce().season(2));
        Plan plan = plantedInOrder(season, 6);

        assertThat(plan.totals().unservedHa()).isEqualTo(4);
        assertThat(SeasonBounds.of(season).forPlan(plan)).satisfies(bounds -> {
            assertThat(bounds.unservedHa())
                    .isCloseTo(4 - 0.000_116, within(1e-5))
                    .isLessThanOrEqualTo(4);
            assertThat(bounds.medium()).isEqualTo(-1600).isEqualTo(plan.score().medium());
            assertThat(bounds.lateHaDays()).isCloseTo(4, within(1e-4)).isLessThanOrEqualTo(4);
        });
    }

    /**
     * 25 L/s x 8 s = 200 L a day are one field of 2 ha: of four due on the first day three are late, by 1, 2 and 3 days: 12 ha-days. As a load is made
     * although a thousandth of its water lacks, it may be 2.002 ha a day: 8 x 3 - 2.002 x (1 + 2 + 3) = 11.988 ha-days.
     */
    @Test
    void whatAHoseCannotFillInADayIsLate() {
        TwoFieldsADay fields = new TwoFieldsADay(1).waterForOneFieldADay();
        IntStream.range(0, 4).forEach(i -> fields.field(0, 0, 1));
        CompiledSeason season = CompiledSeason.of(fields.season(5));
        Plan plan = plantedInOrder(season, 4);

        assertThat(plan.score().medium()).isEqualTo(-1200);
        assertThat(SeasonBounds.of(season).forPlan(plan).medium()).isEqualTo(-1199);
    }

    /**
     * A field takes 2,080 s and the move to it as long, so in two or more days of 4,160 s there is one field a day and, as the planter may have begun
     * with one, half a field. With two by the first day and then 2 1/2, 3 1/2 and so on, of eight fields due on the first 6, 5 1/2, 4 1/2, 3 1/2,
     * 2 1/2, 1 1/2 and 1/2 are late at the ends of days: 24 field-days of 2 ha.
     */
    @Test
    void whatMovesLeaveNoTimeForIsLate() {
        CompiledSeason season = CompiledSeason.of(
                dueAtOnce(new TwoFieldsADay(1).moveTimeS(2_080), 8).season(10));
        Plan plan = plantedInOrder(season, 8);

        assertThat(medium(season, plan)).isCloseTo(48, within(0.02));
    }

    /**
     * The planter moves to a field in 2,050 s and plants it in 2,110 s: the first on the first day. As it rains every day then after 2,110 s and nobody
     * drives to wet ground, it moves on one day and plants on the next. Of six fields due on the first day three are late by 2, 4 and 6 days, and two are left.
     */
    @Test
    void whereRainLeavesTimeForTheMoveOrForTheFieldOneOfThemWaits() {
        CompiledSeason season = CompiledSeason.of(
                dueAtOnce(new TwoFieldsADay(1).moveTimeS(2_050).rainAfter(2_110, 8), 6)
                        .season(8));
        Plan plan = plantedInOrder(season, 6);

        assertThat(plan.totals().lateHaDays()).isEqualTo(24);
        assertThat(plan.totals().unservedHa()).isEqualTo(4);
        assertThat(medium(season, plan)).isPositive();
    }

    /**
     * 864 km at 10 m/s are a day. A field takes half of a nurse tank less a thousandth, so 86,314 s of driving, and 202 s of the rig. By the end of day d, counted from 0, it has
     * d days and the 11,960 s from hold time and batch before the first fill to the end of planting, 4 s in which the water it begins with
     * would have been drawn, and the three ways that may lie outside. That is 86,400 d + 271,164 s, for at the most 5.132 fields by the third day,
     * 6.130, 7.129, 8.128 and 9.126 by those after. With two and four before, of ten fields 8, 6, 4.868, 3.870, 2.871, 1.872 and 0.874 are late.
     */
    @Test
    void whatARigHasToDriveForIsLate() {
        CompiledSeason season = CompiledSeason.of(
                dueAtOnce(new TwoFieldsADay(1).farFromWater(864_000), 10).season(14));
        Plan plan = plantedInOrder(season, 10);

        assertThat(medium(season, plan)).isCloseTo(2 * 28.355, within(0.05));
    }

    /** Three planters have a load in the tank for two fields each, which they plant at once, however far away the one rig is. */
    @Test
    void whatIsInTanksTakesNoDrive() {
        Season season = dueAtOnce(new TwoFieldsADay(3).farFromWater(864_000), 6).season(5);
        LocalDateTime now = season.first().atTime(8, 0);
        Standing.OfPlanter full = new Standing.OfPlanter(
                "yard",
                now,
                Optional.empty(),
                Optional.of(new Standing.Tank("L", "R0", new Mix("standard", 4, now.plusHours(2), List.of()))),
                Optional.empty());
        CompiledSeason underWay = CompiledSeason.of(season.change()
                .rigs(season.rigs().subList(0, 1))
                .standing(Optional.of(new Standing(
                        now, Map.of("P0", full, "P1", full, "P2", full), Map.of(), Map.of(), Map.of(), 1, 1)))
                .season());
        Plan plan =
                RandomPlans.record(underWay, List.of(ids(underWay, 0, 2), ids(underWay, 2, 4), ids(underWay, 4, 6)));

        assertThat(plan.totals().lateHaDays()).isZero();
        assertThat(medium(underWay, plan)).isZero();
    }

    /**
     * The 200 L of a field, less a thousandth, take the rig 86,314 s at the well and 2 s at the spring, which gives 100 L a day. A field takes it 86,514 s by the well; by the end of
     * day d, counted from 0, it has 86,400 d + 11,960 s, a day each for the two fields that a nurse tank of water is for, and 43,199 s a day by
     * the spring. That is 2.635 + 1.498 d fields: 5.631 by the third day, then 7.129 and 8.627. With two and four before, of ten 8, 6, 4.369, 2.871 and
     * 1.373 are late.
     */
    @Test
    void whatIsDrawnSlowlyIsLate() {
        CompiledSeason season =
                CompiledSeason.of(dueAtOnce(new TwoFieldsADay(1).slowWellAndSpring(200 / 86_400.0, 100), 10)
                        .season(12));
        Plan plan = plantedInOrder(season, 10);

        assertThat(medium(season, plan)).isCloseTo(2 * 22.613, within(0.05));
    }

    /** 12 ha at 4 ha a load are 3 loads; their 1,200 L at 800 L a nurse tank are 2 trips. Of half of it, 2 loads and 1 trip. */
    @Test
    void loadsFillTanksAndTripsFillNurseTanks() {
        CompiledSeason season = CompiledSeason.of(sixFieldsDueAtOnce().season(5));
        SeasonBounds bounds = SeasonBounds.of(season);

        assertThat(bounds.forPlan(plantedInOrder(season, 6))).satisfies(all -> {
            assertThat(all.planterFills()).isEqualTo(3);
            assertThat(all.waterTrips()).isEqualTo(2);
        });
        assertThat(bounds.forPlan(plantedInOrder(season, 3))).satisfies(half -> {
            assertThat(half.planterFills()).isEqualTo(2);
            assertThat(half.waterTrips()).isEqualTo(1);
        });
    }

    /** Of 4 ha of one recipe a tank serves 2 ha, so that 2 ha are a load; 6 ha of the other are two. All 8 ha would be two. */
    @Test
    void mixInATankIsForFieldsOfItsRecipe() {
        Season oneRecipe = dueAtOnce(new TwoFieldsADay(1), 5).season(9);
        List<Field> fields = IntStream.range(0, 5)
                .mapToObj(i -> i < 2
                        ? oneRecipe.fields().get(i)
                        : oneRecipe.fields().get(i).change().recipe("other").field())
                .toList();
        LocalDateTime now = oneRecipe.start();
        Standing.Tank tank =
                new Standing.Tank("L0001", "R0", new Mix("standard", 2, now.plusHours(11), List.of("B0001")));
        Season season = oneRecipe
                .change()
                .recipes(List.of(oneRecipe.recipe("standard"), WithDefaults.recipe("other", 100, 2, 2 * 3600)))
                .fields(fields)
                .standing(Optional.of(new Standing(
                        now,
                        Map.of(
                                "P0",
                                new Standing.OfPlanter(
                                        "yard", now, Optional.empty(), Optional.of(tank), Optional.empty())),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        1,
                        1)))
                .season();

        CompiledSeason compiled = CompiledSeason.of(season);
        assertThat(new FewestRefills(compiled).fills(0)).isEqualTo(3);
    }

    /** 8.004 ha are loads of 4 ha and of 4.004 ha, a thousandth more than a tank serves, and 1 trip: a nurse tank is for two loads. */
    @Test
    void aThousandthMoreThanTanksHoldTakesNoMoreRefills() {
        TwoFieldsADay larger = dueAtOnce(new TwoFieldsADay(1), 2).aThousandthLarger();
        CompiledSeason season = CompiledSeason.of(dueAtOnce(larger, 2).season(5));
        Plan plan = plantedInOrder(season, 4);

        assertThat(plan.totals().planterFills()).isEqualTo(2);
        assertThat(plan.totals().waterTrips()).isEqualTo(1);
        assertThat(SeasonBounds.of(season).forPlan(plan)).satisfies(bounds -> {
            assertThat(bounds.planterFills()).isEqualTo(2);
            assertThat(bounds.waterTrips()).isEqualTo(1);
        });
    }

    /** Three fields only P0 may plant, due on the first day: it plants two then and one a day late, however idle P1 is. */
    @Test
    void fieldsOfOnePlanterWaitForIt() {
        CompiledSeason season = CompiledSeason.of(new TwoFieldsADay(2)
                .field(0, 0, 1, "P0")
                .field(0, 0, 1, "P0")
                .field(0, 0, 1, "P0")
                .season(5));

        assertThat(SeasonBounds.of(season).forPlan(plantedInOrder(season, 3)).medium())
                .isEqualTo(-200);
    }

    /**
     * Corn on 1,860 ac takes 4,650 lb; 4,500 lb are there before the day after its window: 60 ac are a day late at least, less the 0.0088 ac of
     * the ten grams that a load may lack.
     */
    @Test
    void theSpringIsLateByTheCompostThatComesLate() {
        CompiledSeason season = CompiledSeason.of(read("spring"));
        Plan plan = RandomPlans.record(season, FirstLists.best(season).ids(season.season()));

        assertThat(plan.totals().unservedHa()).isZero();
        assertThat(SeasonBounds.of(season).forPlan(plan)).satisfies(bounds -> {
            assertThat(bounds.lateHaDays() / HA_PER_ACRE).isCloseTo(60 - 0.0088, within(1e-4));
            assertThat(bounds.medium()).isEqualTo((long) -Math.ceil((60 - 0.0088) * HA_PER_ACRE * 1.5 * 100));
        });
    }

    private static TwoFieldsADay sixFieldsDueAtOnce() {
        return dueAtOnce(new TwoFieldsADay(1), 6);
    }

    private static TwoFieldsADay dueAtOnce(TwoFieldsADay season, int fields) {
        IntStream.range(0, fields).forEach(i -> season.field(0, 0, 1));
        return season;
    }

    /** Weighted late ha-days that no plan is below, and this one is not. */
    private static double medium(CompiledSeason season, Plan plan) {
        long medium = SeasonBounds.of(season).forPlan(plan).medium();
        assertThat(plan.score().medium()).isLessThanOrEqualTo(medium);
        return medium / -100.0;
    }

    /** The first planter plants so many fields in the order of the season. */
    private static Plan plantedInOrder(CompiledSeason season, int fields) {
        List<List<String>> lists = IntStream.range(0, season.planterCount())
                .mapToObj(p -> p == 0 ? ids(season, 0, fields) : List.<String>of())
                .toList();
        return RandomPlans.record(season, lists);
    }

    private static List<String> ids(CompiledSeason season, int from, int to) {
        return season.season().fields().subList(from, to).stream()
                .map(field -> field.id())
                .toList();
    }

    private static Season read(String name) {
        Reading reading = SeasonFiles.read(Path.of("..", "scenarios", name), List.of());
        assertThat(reading).isInstanceOf(Reading.Valid.class);
        return ((Reading.Valid) reading).season();
    }
}

package freshfurrow.model.goals;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Each goal in a pair: what it penalises, and what it leaves alone. */
class GoalSetTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 1);

    /** Ten days, late weights 1 and 2.5; weights unlike one another so that no goal can stand in for another. */
    private static final Season SEASON = season(
            new Goals(31, 17, 23, 1.5, 0.5, 10, 0.05, 45, 40, 2, 55, 3, 1.25, 2, OptionalDouble.empty()), 1, 2.5);

    private static final Played NOTHING = new Played(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    @Test
    void aSeasonWithoutFaultCostsNothing() {
        assertThat(scoreOf(NOTHING)).containsExactly(0L, 0L, 0L);
        assertThat(GoalSet.of(SEASON).goals())
                .allSatisfy(goal -> assertThat(goal.cost(NOTHING)).isZero());
    }

    @Test
    void aForbiddenFieldIsABrokenRule() {
        assertThat(scoreOf(new Played(2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(-2L, 0L, 0L);
        assertThat(costOf("forbidden", new Played(0, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void anUnservedHectareCostsMoreDaysThanTheSeasonHasAtTheLargestLateWeight() {
        // 3 ha x (10 + 1) days x 2.5 x 100
        assertThat(scoreOf(new Played(0, 3_000_000, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, -8250L, 0L);
        assertThat(costOf("unplanted", new Played(9, 0, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void lateWeightsBelowOneDoNotMakeUnservedAreaCheap() {
        GoalSet goals = GoalSet.of(season(Goals.DEFAULT, 0.2, 0));

        assertThat(goals.medium(new Played(0, 1_000_000, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .isEqualTo(-1100);
    }

    @Test
    void lateAreaCostsItsWeightedHaDays() {
        // 2 ha planted 3 days late with late weight 2.5: 15 ha-days
        assertThat(scoreOf(new Played(0, 0, 2_000_000L * 3 * 2500, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, -1500L, 0L);
        assertThat(costOf("late", new Played(9, 9, 0, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void theLeastLateAreaIsRoundedUpToAHundredth() {
        assertThat(scoreOf(new Played(0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, -1L, 0L);
        assertThat(scoreOf(new Played(0, 0, 10_000_000, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, -1L, 0L);
        assertThat(scoreOf(new Played(0, 0, 10_000_001, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, -2L, 0L);
    }

    @Test
    void eachRefillCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -124L);
        assertThat(costOf("fills", new Played(9, 9, 9, 0, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void eachWaterTripCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 3, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -51L);
        assertThat(costOf("water trips", new Played(9, 9, 9, 9, 0, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void eachCompostTripCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 2, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -46L);
        assertThat(costOf("compost trips", new Played(9, 9, 9, 9, 9, 0, 9, 9, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void waitingCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 600, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -15L);
        assertThat(costOf("waiting", new Played(9, 9, 9, 9, 9, 9, 0, 9, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void standingForAClosedFieldCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1200)))
                .containsExactly(0L, 0L, -25L);
        assertThat(costOf("idle", new Played(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 0)))
                .isZero();
    }

    @Test
    void drivingCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 1200, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -10L);
        assertThat(costOf("driving", new Played(9, 9, 9, 9, 9, 9, 9, 0, 9, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void dumpedCompostCostsByTheKilogram() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 0, 1_500_000, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -15L);
        assertThat(costOf("dumped compost", new Played(9, 9, 9, 9, 9, 9, 9, 9, 0, 9, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void aPromisedFieldThatIsMovedCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 3, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -135L);
        assertThat(costOf("moved fields", new Played(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 0, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void aScrapOfALargeFieldCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 3, 0, 0, 0)))
                .containsExactly(0L, 0L, -120L);
        assertThat(costOf("scraps", new Played(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 0, 9, 9, 9)))
                .isZero();
    }

    @Test
    void aMachineCalledOutForNothingCostsItsMinutes() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 2, 0, 0)))
                .containsExactly(0L, 0L, -110L);
        assertThat(costOf("call-outs", new Played(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 0, 9, 9)))
                .isZero();
    }

    @Test
    void aMinutePastTheDaysHoursCostsWhatItIsWorth() {
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 300, 0)))
                .containsExactly(0L, 0L, -15L);
        assertThat(costOf("overtime", new Played(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 0, 9)))
                .isZero();
    }

    @Test
    void plantingLaterInTheSeasonCostsALittle() {
        // 20 ha on the sixth day: 20 x 5 x 0.05
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 0, 0, 100_000_000, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -5L);
        assertThat(costOf("early", new Played(9, 9, 9, 9, 9, 9, 9, 9, 9, 0, 9, 9, 9, 9, 9)))
                .isZero();
    }

    @Test
    void theScoreIsTheSumOfTheGoalsRoundedOnce() {
        // 12 s of waiting are 0.3 min and 24 s of driving 0.2 min: neither alone makes a minute
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 12, 0, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, 0L);
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 0, 24, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, 0L);
        assertThat(scoreOf(new Played(0, 0, 0, 0, 0, 0, 12, 24, 0, 0, 0, 0, 0, 0, 0)))
                .containsExactly(0L, 0L, -1L);
    }

    @Test
    void anUnservedFieldOutweighsTheLatestPlantingOfIt() {
        GoalSet goals = GoalSet.of(SEASON);
        long area = 7_654_321;
        int latestDays = SEASON.days() - 1;

        assertThat(goals.medium(new Played(0, area, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .isLessThan(
                        goals.medium(new Played(0, 0, area * latestDays * 2500, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)));
    }

    @Test
    void goalsHaveNamesOfTheirOwnAndASentence() {
        assertThat(GoalSet.of(SEASON).goals()).extracting(Goal::name).doesNotHaveDuplicates();
        assertThat(GoalSet.of(SEASON).goals())
                .allSatisfy(goal -> assertThat(goal.sentence()).endsWith("."));
    }

    private static List<Long> scoreOf(Counters counters) {
        GoalSet goals = GoalSet.of(SEASON);
        return List.of(goals.hard(counters), goals.medium(counters), goals.soft(counters));
    }

    @Test
    void byMoneyWhatCostsTakesThePlaceOfLateness() {
        Costs prices = new Costs(Optional.empty(), 24, 14, 0.5, 0.2, 10, 700, 50, 0.003, 60, Map.of());
        GoalSet goals = GoalSet.of(season(Goals.DEFAULT.withByMoney(Optional.of(prices)), 1, 2.5));

        assertThat(goals.goals()).extracting(Goal::name).doesNotHaveDuplicates();
        assertThat(goals.goals().stream()
                        .filter(goal -> goal.level() == Level.MEDIUM)
                        .map(Goal::name))
                .containsExactly(
                        "hours", "roads", "compost", "late", "unplanted", "untreated", "water", "overtime pay");
        // 3 ha unplanted at 700, 2 ha-days late at 10, 1 ha untreated at 50, in millionths; 4 fills x 30 min as ever
        assertThat(goals.medium(
                        new Played(0, 3_000_000, 2_000_000_000L, 4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1_000_000_000L)))
                .isEqualTo(-2_170_000_000L);
        assertThat(goals.soft(new Played(0, 0, 0, 4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))
                .isEqualTo(-120);
    }

    private static double costOf(String name, Counters counters) {
        return GoalSet.of(SEASON).goals().stream()
                .filter(goal -> goal.name().equals(name))
                .mapToDouble(goal -> goal.cost(counters))
                .findFirst()
                .orElseThrow();
    }

    private static Season season(Goals goals, double... lateWeights) {
        List<Field> fields = IntStream.range(0, lateWeights.length)
                .mapToObj(i -> WithDefaults.field(
                        "F" + i,
                        "F" + i,
                        10,
                        Optional.empty(),
                        List.of(),
                        "corn",
                        new DateWindow(FIRST, FIRST.plusDays(2)),
                        "standard",
                        Drainage.MODERATE,
                        lateWeights[i],
                        Set.of()))
                .toList();
        return new Season(
                "goals",
                FIRST,
                FIRST.plusDays(9),
                ZoneOffset.UTC,
                new ClosedDays(Set.of(), Set.of()),
                Map.of(),
                List.of(),
                fields,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Drying(0, 0, 0, 0),
                List.of(),
                Optional.empty(),
                (from, to) -> 0,
                goals,
                DisplayUnits.METRIC,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private record Played(
            int forbiddenFields,
            long unservedDm2,
            long lateMilliDm2Days,
            int fills,
            int waterTrips,
            int compostTrips,
            long waitS,
            long driveS,
            long dumpedMg,
            long earlyDm2Days,
            int movedFields,
            int scraps,
            int callOuts,
            long overtimeS,
            long untreatedMilliDm2,
            long idleS)
            implements Counters {
        Played(
                int forbiddenFields,
                long unservedDm2,
                long lateMilliDm2Days,
                int fills,
                int waterTrips,
                int compostTrips,
                long waitS,
                long driveS,
                long dumpedMg,
                long earlyDm2Days,
                int movedFields,
                int scraps,
                int callOuts,
                long overtimeS,
                long untreatedMilliDm2) {
            this(
                    forbiddenFields,
                    unservedDm2,
                    lateMilliDm2Days,
                    fills,
                    waterTrips,
                    compostTrips,
                    waitS,
                    driveS,
                    dumpedMg,
                    earlyDm2Days,
                    movedFields,
                    scraps,
                    callOuts,
                    overtimeS,
                    untreatedMilliDm2,
                    0);
        }

        @Override
        public int brokenPromises() {
            return 0;
        }

        @Override
        public long lateDm2Days() {
            return lateMilliDm2Days / 1000;
        }

        @Override
        public long untreatedDm2() {
            return untreatedMilliDm2 / 1000;
        }

        @Override
        public long compostMg() {
            return 0;
        }

        @Override
        public long drawnMl() {
            return 0;
        }

        @Override
        public long driveM() {
            return 0;
        }

        @Override
        public long workS() {
            return 0;
        }
    }
}

package freshfurrow.solver.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.example.InventedSeason;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class ListEstimateTest {
    private static final double DM2_PER_HA = 1e6;

    /** 12.2 m at 2.2 m/s and a field efficiency of 0.65. */
    private static final double HA_PER_S = 12.2 * 2.2 * 0.65 / 10_000;

    /** From 7:00 to 12:00 and from 12:30 to 20:00. */
    private static final double DAY_S = 12.5 * 3600;

    private static final double MOVE_S = 720;
    private static final double ENOUGH_KG = 1_000;

    @Test
    void whatDoesNotFitIntoADayIsPlantedOnTheNextAndIsLateThen() {
        CompiledSeason season = CompiledSeason.of(fields(0, 100));
        ListEstimate estimate = new ListEstimate(season, new SeasonEstimate(season), new Stops(season));

        estimate.tryList(0, new int[] {0}, 1);

        double lateHa = 100 - (DAY_S - MOVE_S) * HA_PER_S;
        assertThat(estimate.lateMilliDm2Days() / 1000.0 / DM2_PER_HA).isCloseTo(lateHa, within(1e-6));
        assertThat(estimate.unservedDm2()).isZero();
    }

    @Test
    void noFieldIsPlantedBeforeItsWindowOpens() {
        CompiledSeason season = CompiledSeason.of(fields(3, 10, 10));
        ListEstimate estimate = new ListEstimate(season, new SeasonEstimate(season), new Stops(season));

        estimate.tryList(0, new int[] {0, 1}, 2);

        assertThat(estimate.earlyDm2Days() / DM2_PER_HA).isCloseTo(3 * 20, within(1e-6));
        assertThat(estimate.lateMilliDm2Days()).isZero();
    }

    @Test
    void aPlanterIsIdleBeforeAWindowWhereAFieldOfItsListIsOpen() {
        Season season = fields(3, 10, 10);
        Field open = season.fields().get(1);
        DateWindow allDays = new DateWindow(season.first(), season.last());
        CompiledSeason compiled = CompiledSeason.of(InventedSeason.withFields(
                season,
                List.of(season.fields().get(0), open.change().window(allDays).field())));
        ListEstimate estimate = new ListEstimate(compiled, new SeasonEstimate(compiled), new Stops(compiled));

        estimate.tryList(0, new int[] {0, 1}, 2);
        assertThat((double) estimate.idleS()).isCloseTo(3 * DAY_S - MOVE_S, within(1.0));

        estimate.tryList(0, new int[] {1, 0}, 2);
        assertThat(estimate.idleS()).isZero();
    }

    @Test
    void whatStandsInNoListIsNotPlanted() {
        CompiledSeason season = CompiledSeason.of(fields(0, 10, 20));
        ListEstimate estimate = new ListEstimate(season, new SeasonEstimate(season), new Stops(season));

        estimate.tryList(0, new int[] {0}, 1);

        assertThat(estimate.unservedDm2() / DM2_PER_HA).isCloseTo(20, within(1e-6));
    }

    /** 30 ha at 2.24 kg/ha are 67.2 kg: with 33.6 kg half of that is planted. */
    @Test
    void whatCompostDoesNotReachIsNotPlanted() {
        Season season = fields(0, 10, 20);
        CompiledSeason half = CompiledSeason.of(
                InventedSeason.withCompost(season, List.of(new CompostLot("windrow", 33.6, season.first()))));
        ListEstimate estimate = new ListEstimate(half, new SeasonEstimate(half), new Stops(half));

        estimate.tryList(0, new int[] {0, 1}, 2);

        // but for the leeway
        assertThat(estimate.unservedDm2() / DM2_PER_HA).isCloseTo(15, within(0.02));

        estimate.tryList(0, new int[] {0}, 1);

        assertThat(estimate.unservedDm2() / DM2_PER_HA).isCloseTo(20, within(1e-6));
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4})
    void listsTriedAfterOthersComeToWhatTheyComeToByThemselves(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(30, 3, 1, 12_000, seed));
        SeasonEstimate rough = new SeasonEstimate(season);
        ListEstimate estimate = new ListEstimate(season, rough, new Stops(season));
        Random random = new Random(seed);
        List<List<Integer>> lists = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        IntStream.range(0, 30).forEach(field -> lists.get(field % 3).add(field));
        lists.forEach(list -> tryList(estimate, lists.indexOf(list), list));
        estimate.keep();

        for (int move = 0; move < 200; move++) {
            List<Integer> from = lists.get(random.nextInt(3));
            List<Integer> to = lists.get(random.nextInt(3));
            List<List<Integer>> before = lists.stream().map(List::copyOf).toList();
            if (!from.isEmpty()) {
                Integer field = from.remove(random.nextInt(from.size()));
                to.add(random.nextInt(to.size() + 1), field);
            }
            if (random.nextInt(5) == 0) {
                Collections.reverse(to);
            }
            for (int planter = 0; planter < 3; planter++) {
                tryList(estimate, planter, lists.get(planter));
            }
            assertThat(figures(estimate)).isEqualTo(figures(fresh(season, rough, lists)));
            if (random.nextBoolean()) {
                estimate.keep();
            } else {
                for (int planter = 0; planter < 3; planter++) {
                    lists.get(planter).clear();
                    lists.get(planter).addAll(before.get(planter));
                    tryList(estimate, planter, lists.get(planter));
                }
            }
        }
    }

    private static ListEstimate fresh(CompiledSeason season, SeasonEstimate rough, List<List<Integer>> lists) {
        ListEstimate estimate = new ListEstimate(season, rough, new Stops(season));
        for (int planter = 0; planter < lists.size(); planter++) {
            tryList(estimate, planter, lists.get(planter));
        }
        return estimate;
    }

    private static void tryList(ListEstimate estimate, int planter, List<Integer> list) {
        estimate.tryList(planter, list.stream().mapToInt(Integer::intValue).toArray(), list.size());
    }

    private static List<Long> figures(ListEstimate estimate) {
        return List.of(
                estimate.unservedDm2(),
                estimate.lateMilliDm2Days(),
                estimate.earlyDm2Days(),
                estimate.driveS(),
                estimate.idleS(),
                (long) estimate.fills(),
                (long) estimate.forbiddenFields(),
                (long) estimate.movedFields());
    }

    /** Fields of so many hectares at one place, for one planter, each to be planted on one day, counted from the first. */
    private static Season fields(int day, double... ha) {
        Season season = InventedSeason.of(ha.length, 1, 1, 0, 1);
        DateWindow window =
                new DateWindow(season.first().plusDays(day), season.first().plusDays(day));
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < ha.length; i++) {
            Field field = season.fields().get(i);
            fields.add(field.change()
                    .areaHa(ha[i])
                    .window(window)
                    .recipe("standard")
                    .lateWeight(1)
                    .planters(Set.of())
                    .field());
        }
        Season dry = InventedSeason.withRain(InventedSeason.withFields(season, fields), List.of());
        return InventedSeason.withCompost(dry, List.of(new CompostLot("windrow", ENOUGH_KG, season.first())));
    }
}

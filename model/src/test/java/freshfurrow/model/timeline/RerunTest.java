package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.state.Tally;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A rerun from a checkpoint comes to the figures of a full run, down to the last counter. */
class RerunTest {
    @Property(tries = 150)
    void movesOneAfterTheOtherComeToTheFiguresOfFullRuns(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int fields) {
        compare(CompiledSeason.of(RandomSeasons.season(seed, fields)), new Random(seed), 60);
    }

    @Property(tries = 50)
    void seasonsOfPlantersAndSprayersDoToo(@ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int fields) {
        compare(CompiledSeason.of(RandomSeasons.mixed(seed, fields)), new Random(seed), 60);
    }

    @Property(tries = 50)
    void seasonsWithSprayersMountedOnRigsDoToo(@ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int fields) {
        compare(CompiledSeason.of(RandomSeasons.withMounted(seed, fields)), new Random(seed), 60);
    }

    @Property(tries = 100)
    void seasonsThatAreUnderWayDoToo(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 25) int fields, @ForAll @IntRange(max = 60) int share) {
        Season left = GoingOnTest.left(RandomSeasons.season(seed, fields), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());

        compare(CompiledSeason.of(left), new Random(seed), 60);
    }

    @Property(tries = 60)
    void byMoneyTheyDoToo(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season left = GoingOnTest.left(RandomSeasons.withMounted(seed, 15), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());
        Costs prices = new Costs(Optional.empty(), 24, 14, 0.37, 0.18, 9.9, 740, 55, 0.003, 51, Map.of());

        compare(
                CompiledSeason.of(left.change()
                        .goals(left.goals().withByMoney(Optional.of(prices)))
                        .season()),
                new Random(seed),
                60);
    }

    @Property(tries = 5)
    void seasonsOfMoreRequestsThanThereAreCheckpointsDoToo(@ForAll long seed) {
        CompiledSeason season = CompiledSeason.of(longSeason());
        Timeline timeline = new Timeline(season);
        List<List<Integer>> lists = dealt(season, new Random(seed));

        timeline.rerun(arrays(lists), sizes(lists), Long.MIN_VALUE);

        assertThat(timeline.fills()).isGreaterThan(256);
        compare(season, new Random(seed), 60);
    }

    private static Season longSeason() {
        WorkedSeason season = new WorkedSeason()
                .days(60)
                .lots(new CompostLot("heap", 100_000, WorkedSeason.FIRST))
                .planter("P2", planter -> planter.tank(700))
                .rig("R2", rig -> rig);
        for (int field = 0; field < 70; field++) {
            season.field("F" + field, 20);
        }
        return season.season();
    }

    private static void compare(CompiledSeason season, Random random, int moves) {
        long unit = season.season().goals().byMoney().isPresent() ? 1_000_000 : 1;
        Timeline restarted = new Timeline(season);
        Timeline full = new Timeline(season);
        List<List<Integer>> lists = dealt(season, random);
        for (int move = 0; move < moves; move++) {
            List<List<Integer>> changed = new ArrayList<>();
            lists.forEach(list -> changed.add(new ArrayList<>(list)));
            change(changed, season.fieldCount(), random);

            full.run(arrays(changed), sizes(changed));
            long leastMedium =
                    random.nextBoolean() ? Long.MIN_VALUE : full.medium() + unit * (random.nextInt(100) - 50);
            restarted.rerun(arrays(changed), sizes(changed), leastMedium);

            if (full.medium() < leastMedium) {
                assertThat(restarted.medium()).isLessThan(leastMedium).isGreaterThanOrEqualTo(full.medium());
                continue;
            }
            assertThat(figures(restarted)).isEqualTo(figures(full));
            if (random.nextInt(3) == 0) {
                lists = changed;
                restarted.adopt();
            } else if (random.nextInt(5) == 0) {
                lists = changed;
            }
        }
    }

    private static void change(List<List<Integer>> lists, int fields, Random random) {
        List<Integer> from = lists.get(random.nextInt(lists.size()));
        List<Integer> to = lists.get(random.nextInt(lists.size()));
        switch (random.nextInt(5)) {
            case 0 -> Collections.shuffle(from.subList(random.nextInt(from.size() + 1), from.size()), random);
            case 1 -> {
                Integer absent = IntStream.range(0, fields)
                        .boxed()
                        .filter(field -> lists.stream().noneMatch(list -> list.contains(field)))
                        .findFirst()
                        .orElse(null);
                if (absent != null) {
                    to.add(random.nextInt(to.size() + 1), absent);
                }
            }
            case 2 -> {
                if (!from.isEmpty()) {
                    from.remove(random.nextInt(from.size()));
                }
            }
            default -> {
                if (!from.isEmpty()) {
                    Integer moved = from.remove(random.nextInt(from.size()));
                    to.add(random.nextInt(to.size() + 1), moved);
                }
            }
        }
    }

    /** Fields of all kinds, whether the planter may plant them or not. */
    private static List<List<Integer>> dealt(CompiledSeason season, Random random) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int planter = 0; planter < season.planterCount(); planter++) {
            lists.add(new ArrayList<>());
        }
        List<Integer> fields =
                new ArrayList<>(IntStream.range(0, season.fieldCount()).boxed().toList());
        Collections.shuffle(fields, random);
        fields.forEach(field -> lists.get(random.nextInt(lists.size())).add(field));
        return lists;
    }

    private static List<Long> figures(Timeline timeline) {
        List<Long> figures =
                new ArrayList<>(List.of(timeline.hard(), timeline.medium(), timeline.soft(), timeline.unservedDm2()));
        for (int counter = 0; counter < Tally.SIZE; counter++) {
            figures.add(timeline.count(counter));
        }
        return figures;
    }

    private static int[][] arrays(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    private static int[] sizes(List<List<Integer>> lists) {
        return lists.stream().mapToInt(List::size).toArray();
    }
}

package freshfurrow.solver.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.progress.News;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.construction.FollowedLists;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** Advice is followed as users follow it: written into the season file, which is read and played out again. */
class FollowedReliefsTest {
    private static final LocalDateTime NOON = LocalDate.of(2027, 4, 22).atTime(12, 0);

    @Property(tries = 25)
    void whatIsSaidToBeEnoughIsAndAStepLessIsNot(
            @ForAll @LongRange(min = 1, max = 100_000) long seed, @ForAll boolean weather) throws IOException {
        Following following = new Following(seed, weather);

        following.check(season -> season);
    }

    @Property(tries = 25)
    void soItIsAfterARainAndABreakdownInTheMiddleOfTheSeason(
            @ForAll @LongRange(min = 1, max = 100_000) long seed, @ForAll boolean weather) throws IOException {
        Following following = new Following(seed, weather);
        Plan before = following.first();
        News news = new News(
                List.of(new Rain(NOON.toLocalDate(), 11 * 3600, 6)),
                List.of(
                        new Outage("R0", NOON, NOON.plusHours(5)),
                        new Outage("P0", NOON.plusDays(1), NOON.plusHours(30))),
                Set.of());

        following.check(whole -> {
            PlanStart start =
                    SoFar.of(whole, before, NOON, news, SeasonLog.EMPTY, false).start();
            return start.remaining(whole);
        });
    }

    /** Where seed does not wait for extract, and the search or the planters let some fields go without it. */
    @Property(tries = 25)
    void soItIsForFieldsThatArePlantedWithoutExtract(
            @ForAll @LongRange(min = 1, max = 100_000) long seed, @ForAll boolean weather) throws IOException {
        Following following = new Following(seed, weather, true);

        following.check(season -> season);
    }

    @Property(tries = 15)
    void soItIsForThemInTheMiddleOfTheSeason(
            @ForAll @LongRange(min = 1, max = 100_000) long seed, @ForAll boolean weather) throws IOException {
        Following following = new Following(seed, weather, true);
        Plan before = following.first();
        News news = new News(List.of(), List.of(new Outage("R0", NOON, NOON.plusHours(5))), Set.of());

        following.check(whole -> SoFar.of(whole, before, NOON, news, SeasonLog.EMPTY, false)
                .start()
                .remaining(whole));
    }

    /** A load is held down by what is left of a lot, and no planter waits. */
    @Example
    void compostIsShortAsWellWhereALoadIsMadeOfTheLastOfIt() throws IOException {
        whatIsSaidToBeEnoughIsAndAStepLessIsNot(46_885, true);
        whatIsSaidToBeEnoughIsAndAStepLessIsNot(115, true);
    }

    /** Mix on board keeps until what was written on its load, whatever hold time is tried for what is still to be made. */
    @Example
    void aLongerHoldTimeIsNoOlderMixesMadeBefore() throws IOException {
        for (boolean weather : new boolean[] {false, true}) {
            soItIsAfterARainAndABreakdownInTheMiddleOfTheSeason(90, weather);
            soItIsAfterARainAndABreakdownInTheMiddleOfTheSeason(995, weather);
        }
    }

    /** What is left of a season. */
    private interface Left {
        Season of(Season whole);
    }

    /** A season in its file, and the lists that it is planned with. */
    private static final class Following {
        private final SeasonText text;
        private final Optional<GroundRecord> ground;
        private final Season whole;

        private final Set<String> without;

        Following(long seed, boolean weather) throws IOException {
            this(seed, weather, false);
        }

        /** @param untreated whether fields may go without extract; every third of them is to */
        Following(long seed, boolean weather, boolean untreated) throws IOException {
            Path folder = Files.createTempDirectory("season");
            text = new SeasonText(seed, folder, untreated);
            text.write();
            Season read = text.read();
            ground = weather ? Optional.of(wet(read, new Random(seed))) : Optional.empty();
            whole = inItsSpring(read);
            without = IntStream.range(0, untreated ? read.fields().size() : 0)
                    .filter(field -> (field + seed) % 3 == 0)
                    .mapToObj(field -> read.fields().get(field).id())
                    .collect(Collectors.toSet());
        }

        Plan first() {
            CompiledSeason compiled = CompiledSeason.of(whole);
            return record(whole, orders(FirstLists.best(compiled).ids(whole), without));
        }

        void check(Left left) throws IOException {
            Season season = left.of(whole);
            CompiledSeason compiled = CompiledSeason.of(season);
            List<List<String>> lists = FollowedLists.left(
                            compiled, FirstLists.best(CompiledSeason.of(whole)).orders(whole))
                    .ids(season);
            PlantingOrders orders = orders(lists, without);
            Plan plan = record(season, orders);
            for (Field field : season.fields()) {
                FieldExplanation why = FieldExplanation.of(compiled, whole, plan, field);
                if (why.positions().own().isPresent() && why.reliefs().isPresent()) {
                    for (Reliefs.Enough enough : why.reliefs().get().enough()) {
                        check(left, orders, field, enough.relief(), relieved -> isInTime(relieved, field));
                        if (enough.relief() instanceof Relief.MoreCompost) {
                            assertThat(lacksCompost(why.plan()) || isUsedUp(season, why.plan()))
                                    .as("compost is short where more of it helps")
                                    .isTrue();
                        }
                    }
                }
                if (why.untreated().isPresent()) {
                    assertThat(why.untreated().get().withoutHa())
                            .isEqualTo(withoutHa(plan, field), within(1e-9))
                            .isPositive();
                    PlantingOrders with = orders(lists, less(without, field.id()));
                    for (Reliefs.Enough enough : why.untreated().get().reliefs().enough()) {
                        check(left, with, field, enough.relief(), relieved -> isTreated(plan, relieved, field));
                    }
                }
            }
        }

        private void check(Left left, PlantingOrders orders, Field field, Relief relief, Predicate<Plan> isEnough)
                throws IOException {
            assertThat(isEnough.test(with(left, orders, relief)))
                    .as(relief + " for " + field.id())
                    .isTrue();
            Optional<Relief> less = aStepLess(relief);
            if (less.isPresent()) {
                assertThat(isEnough.test(with(left, orders, less.get())))
                        .as(less.get() + ", a step less, for " + field.id())
                        .isFalse();
            }
            if (relief instanceof Relief.CompostSooner sooner) {
                Season season = left.of(whole);
                assertThat(season.lot(sooner.lot()).orElseThrow().from().minusDays(sooner.days()))
                        .isAfterOrEqualTo(season.standing()
                                .map(standing -> standing.now().toLocalDate())
                                .orElse(season.first()));
            }
        }

        private Plan with(Left left, PlantingOrders orders, Relief relief) throws IOException {
            return record(left.of(inItsSpring(text.patched(ReliefPatch.of(whole, relief)))), orders);
        }

        private static boolean isInTime(Plan plan, Field field) {
            return plan.unserved().stream().noneMatch(one -> one.field().equals(field.id()))
                    && plantings(plan, field).noneMatch(planting -> planting.start()
                            .toLocalDate()
                            .isAfter(field.window().last()));
        }

        /** All of it with extract, and no more without it or unplanted elsewhere. */
        private static boolean isTreated(Plan before, Plan plan, Field field) {
            return withoutHa(plan, field) == 0
                    && plan.unserved().stream().noneMatch(left -> left.field().equals(field.id()))
                    && plan.totals().unservedHa() <= before.totals().unservedHa() + 1e-6
                    && plan.totals().untreatedHa() <= before.totals().untreatedHa() - withoutHa(before, field) + 1e-6;
        }

        private static double withoutHa(Plan plan, Field field) {
            return plan.planters().values().stream()
                    .flatMap(planter -> planter.activities().stream())
                    .filter(activity -> activity instanceof Activity.PlantWithout planting
                            && planting.field().equals(field.id()))
                    .mapToDouble(activity -> ((Activity.PlantWithout) activity).areaHa())
                    .sum();
        }

        private static Set<String> less(Set<String> all, String one) {
            return all.stream().filter(other -> !other.equals(one)).collect(Collectors.toSet());
        }

        /** Fields that are not in the lists are not among those without extract either. */
        private static PlantingOrders orders(List<List<String>> lists, Set<String> without) {
            return new PlantingOrders(
                    lists,
                    without.stream()
                            .filter(id -> lists.stream().anyMatch(list -> list.contains(id)))
                            .collect(Collectors.toSet()));
        }

        private Season inItsSpring(Season season) {
            return season.change().ground(ground).season();
        }
    }

    private static Optional<Relief> aStepLess(Relief relief) {
        Relief less = relief;
        if (relief instanceof Relief.MoreCompost it) {
            less = it.kg() > 1.5 ? new Relief.MoreCompost(it.lot(), it.kg() - 1) : relief;
        } else if (relief instanceof Relief.Refilled it) {
            less = it.kg() > 1.5 ? new Relief.Refilled(it.lot(), it.kg() - 1) : relief;
        } else if (relief instanceof Relief.CompostSooner it) {
            less = it.days() > 1 ? new Relief.CompostSooner(it.lot(), it.days() - 1) : relief;
        } else if (relief instanceof Relief.LongerDay it) {
            less = it.minutes() > 5 ? new Relief.LongerDay(it.planter(), it.minutes() - 5) : relief;
        } else if (relief instanceof Relief.LongerDayForAll it) {
            less = it.minutes() > 5 ? new Relief.LongerDayForAll(it.minutes() - 5) : relief;
        } else if (relief instanceof Relief.MoreRigs it) {
            less = it.count() > 1 ? new Relief.MoreRigs(it.like(), it.count() - 1) : relief;
        } else if (relief instanceof Relief.FasterBatches it) {
            less = it.percent() > 5 ? new Relief.FasterBatches(it.percent() - 5) : relief;
        } else if (relief instanceof Relief.FasterWater it) {
            less = it.percent() > 5 ? new Relief.FasterWater(it.percent() - 5) : relief;
        } else if (relief instanceof Relief.MoreHoses it) {
            less = it.count() > 1 ? new Relief.MoreHoses(it.count() - 1) : relief;
        } else if (relief instanceof Relief.HigherDailyLimit it) {
            less = it.percent() > 5 ? new Relief.HigherDailyLimit(it.percent() - 5) : relief;
        } else if (relief instanceof Relief.LongerWait it) {
            less = it.minutes() > 5 ? new Relief.LongerWait(it.planter(), it.minutes() - 5) : relief;
        } else if (relief instanceof Relief.LongerHold it) {
            less = it.minutes() > 5 ? new Relief.LongerHold(it.recipe(), it.minutes() - 5) : relief;
        }
        return less.equals(relief) ? Optional.empty() : Optional.of(less);
    }

    private static boolean lacksCompost(Plan plan) {
        return plan.unserved().stream().anyMatch(left -> left.why().contains("compost"))
                || plan.planters().values().stream()
                        .flatMap(planter -> planter.activities().stream())
                        .anyMatch(
                                activity -> activity instanceof Activity.Wait wait && wait.why() == WaitReason.COMPOST);
    }

    /** Whether before a lot comes, or at the season's end, less is left of what there was than the largest load takes. */
    private static boolean isUsedUp(Season season, Plan plan) {
        Map<String, Double> kgByBatch =
                plan.batches().stream().collect(Collectors.toMap(Plan.Batch::id, Plan.Batch::compostKg));
        double largestLoadKg = plan.loads().stream()
                .mapToDouble(load -> load.batches().stream()
                        .mapToDouble(batch -> kgByBatch.getOrDefault(batch, 0.0))
                        .sum())
                .max()
                .orElse(0);
        return Stream.concat(
                        season.compost().stream().map(CompostLot::from),
                        Stream.of(season.last().plusDays(1)))
                .filter(date ->
                        season.compost().stream().anyMatch(lot -> lot.from().isBefore(date)))
                .anyMatch(date -> leftKg(season, plan, date) < largestLoadKg);
    }

    private static double leftKg(Season season, Plan plan, LocalDate date) {
        double stockKg = season.compost().stream()
                .filter(lot -> lot.from().isBefore(date))
                .mapToDouble(CompostLot::massKg)
                .sum();
        double takenKg = plan.batches().stream()
                .filter(batch -> batch.start().toLocalDate().isBefore(date))
                .mapToDouble(Plan.Batch::compostKg)
                .sum();
        return stockKg - takenKg;
    }

    private static Stream<Activity> plantings(Plan plan, Field field) {
        return plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(activity -> activity instanceof Activity.Planting planting
                        && planting.field().equals(field.id()));
    }

    private static GroundRecord wet(Season season, Random random) {
        Map<Drainage, List<WetDay>> wet = new EnumMap<>(Drainage.class);
        for (Drainage drainage : Drainage.values()) {
            List<WetDay> days = new ArrayList<>();
            for (int day = 0; day < season.days(); day++) {
                if (random.nextInt(4) == 0) {
                    days.add(new WetDay(season.first().plusDays(day), 30, 25, 5));
                }
            }
            wet.put(drainage, days);
        }
        return new GroundRecord("made up", Map.of(), wet);
    }

    private static Plan record(Season season, PlantingOrders orders) {
        return PlanRecorder.record(
                CompiledSeason.of(season), orders, Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64)));
    }
}

package freshfurrow.solver.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.goals.Goal;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.goals.Level;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class FieldPositionsTest {
    private static final int FIELDS = 8;
    private static final int PLANTERS = 2;

    @Property(tries = 10)
    void aFieldWhereItStandsHasThePlansOwnScore(
            @ForAll @LongRange(min = 1, max = 1000) long seed, @ForAll @IntRange(max = FIELDS - 1) int field) {
        CompiledSeason season = season(seed);
        FieldLists lists = FirstLists.best(season);
        FieldPositions positions = FieldPositions.of(season, lists, field);

        Position own = positions.own().orElseThrow();
        assertThat(own.lists()).isEqualTo(lists);
        assertThat(own.lists().of(own.planter()).get(own.index())).isEqualTo(field);
        assertThat(own.outcome().score()).isEqualTo(recorded(season, lists));
        assertThat(positions.planned()).isEqualTo(own.outcome());
    }

    @Property(tries = 10)
    void everyPositionOfEveryListHasTheScoreOfItsOwnFullRun(
            @ForAll @LongRange(min = 1, max = 1000) long seed, @ForAll @IntRange(max = FIELDS - 1) int field) {
        CompiledSeason season = season(seed);
        FieldPositions positions = FieldPositions.of(season, FirstLists.best(season), field);

        // the seven other fields leave nine places in two lists, of which one is its own
        assertThat(positions.others()).hasSize(FIELDS - 1 + PLANTERS - 1).doesNotHaveDuplicates();
        assertThat(positions.others())
                .isSortedAccordingTo((a, b) -> Outcome.BEST_FIRST.compare(a.outcome(), b.outcome()));
        assertThat(positions.others())
                .allSatisfy(other -> assertThat(other.outcome().score()).isEqualTo(recorded(season, other.lists())));
    }

    @Property(tries = 10)
    void thePartsAddUpToTheScore(
            @ForAll @LongRange(min = 1, max = 1000) long seed, @ForAll @IntRange(max = FIELDS - 1) int field) {
        thePartsAddUp(season(seed), field);
    }

    @Property(tries = 10)
    void byMoneyThePartsAddUpToo(
            @ForAll @LongRange(min = 1, max = 1000) long seed, @ForAll @IntRange(max = FIELDS - 1) int field) {
        Season season = season(seed).season();
        Costs prices = new Costs(Optional.empty(), 24, 14, 0.37, 0.18, 9.9, 740, 55, 0.003, 51, Map.of());

        thePartsAddUp(
                CompiledSeason.of(season.change()
                        .goals(season.goals().withByMoney(Optional.of(prices)))
                        .season()),
                field);
    }

    private static void thePartsAddUp(CompiledSeason season, int field) {
        assertThat(FieldPositions.of(season, FirstLists.best(season), field).others())
                .allSatisfy(other -> {
                    Plan.Score score = other.outcome().score();
                    assertThat((long) parts(season, other, Level.HARD)).isEqualTo(-score.hard());
                    assertThat((long) Math.ceil(parts(season, other, Level.MEDIUM) - 1e-6))
                            .isEqualTo(-score.medium());
                    assertThat(parts(season, other, Level.SOFT)).isEqualTo((double) -score.soft(), within(0.5 + 1e-6));
                });
    }

    @Test
    void onlyPlantersThatMayPlantItAreTried() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.restrictedTo("P1", 4, 2));
        FieldLists lists = new FieldLists(List.of(List.of(1), List.of(0, 2, 3)));

        assertThat(FieldPositions.of(season, lists, 0).others())
                .extracting(Position::planter, Position::index)
                .containsExactlyInAnyOrder(tuple(1, 1), tuple(1, 2));
    }

    @Test
    void aBetterPositionIsFound() {
        // A may be planted on any day, B on day 1 only; each is 20 ha: 4 loads of 5,800 s, more than half a day
        FieldExplanation why =
                new WhySeason().field("A", 20, 1, 4).field("B", 20, 1, 1).explain("B", "A B");

        assertThat(why.positions().better()).singleElement().satisfies(better -> assertThat(better.index())
                .isZero());
        assertThat(why.best().get(0).plan().score())
                .isEqualTo(why.positions().better().get(0).outcome().score());
        assertThat(why.plan().score().medium()).isNegative();
        assertThat(why.best().get(0).plan().score().medium()).isZero();
    }

    private static double parts(CompiledSeason season, Position position, Level level) {
        return GoalSet.of(season.season()).goals().stream()
                .filter(goal -> goal.level() == level)
                .mapToDouble((Goal goal) -> goal.cost(position.outcome()))
                .sum();
    }

    private static CompiledSeason season(long seed) {
        Season season = InventedSeason.hurried(FIELDS, PLANTERS, seed);
        return CompiledSeason.of(InventedSeason.withFields(
                season,
                season.fields().stream()
                        .map(field -> field.change().planters(Set.of()).field())
                        .toList()));
    }

    private static Plan.Score recorded(CompiledSeason season, FieldLists lists) {
        return PlanRecorder.record(
                        season,
                        lists.ids(season.season()),
                        new Plan.SeasonSource(
                                "s", "s.yaml", "0".repeat(64), season.season().units()))
                .score();
    }
}

package freshfurrow.solver.steady;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Seeds;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;

class SteadySearchTest {
    private static final int FIELDS = 20;
    private static final long MOVES = 9_000;
    private static final long FREE_MOVES = 6_000;
    /** So that effort tells days apart, and what is free and what is promised part company. */
    private static final Goals EARLY_DAYS_COUNT =
            new Goals(30, 20, 20, 1, 0.5, 10, 0.25, 60, 0, 1, 0, 0, 0, 2, OptionalDouble.empty());

    private static final double ANY_EFFORT = Double.MAX_VALUE;

    @ParameterizedTest
    @Seeds({33, 38, 195})
    void promisesThatNoSingleChangeKeepsAreKeptBySearching(long seed) {
        CompiledSeason season = afterRain(seed);
        ListPlayer player = new ListPlayer(season);
        FieldLists free = new Search(season, 1, 2).improve(told(seed), moves(FREE_MOVES), better -> {});
        SteadyScoring allowed =
                SteadyScoring.besides(player.play(free), FIELDS, season.season().goals());
        FieldLists bySingleChanges = new KeptPromises(season, allowed, StopSignal.untilTold()).in(free);

        FieldLists found = steady(season, told(seed));

        assertThat(player.play(found).movedFields())
                .isLessThan(player.play(bySingleChanges).movedFields());
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8})
    void keepingPromisesAddsOnePerCentOfLatenessAtTheMostAndLeavesNoMoreUnplanted(long seed) {
        CompiledSeason season = afterRain(seed);
        ListPlayer player = new ListPlayer(season);
        FieldLists free = new Search(season, 1, 2).improve(told(seed), moves(FREE_MOVES), better -> {});
        long medium = player.play(free).medium();
        long unservedDm2 = player.play(free).unservedDm2();
        int moved = player.play(free).movedFields();

        FieldLists found = steady(season, told(seed));

        assertThat((double) -player.play(found).medium()).isLessThanOrEqualTo(-1.01 * medium);
        assertThat(player.play(found).unservedDm2()).isLessThanOrEqualTo(unservedDm2);
        assertThat(player.play(found).movedFields()).isLessThanOrEqualTo(moved);
    }

    @Test
    void listsBeyondTheAllowanceAreWorseThanAnyWithinAndFewerMovedFieldsAreBetterThanLessLateness() {
        CompiledSeason season = afterRain(7);
        Timeline played = new ListPlayer(season).play(told(7));
        // 13,290 late with 13 of 20 promised fields moved; a moved field costs 300, one more than the allowance of 299
        assertThat(played.medium()).isEqualTo(-13_290);
        assertThat(played.movedFields()).isEqualTo(13);

        SteadyScoring.Free asLate = new SteadyScoring.Free(-13_290, 0, 60);
        SteadyScoring.Free lessLate = new SteadyScoring.Free(-13_289, 0, 60);

        assertThat(medium(played, new SteadyScoring(asLate, -13_290, ANY_EFFORT, 300, FIELDS)))
                .as("within: 13,290 + 13 x 300")
                .isEqualTo(-17_190);
        assertThat(medium(played, new SteadyScoring(lessLate, -13_289, ANY_EFFORT, 300, FIELDS)))
                .as("beyond: 13,290 + 21 x 300")
                .isEqualTo(-19_590);
    }

    @Test
    void effortIsAllowedForLessLatenessOnly() {
        CompiledSeason season = afterRain(7);
        Timeline played = new ListPlayer(season).play(told(7));
        // 13 moved fields, 60 min each, are no effort
        double effortMin = -played.soft() - 780;
        SteadyScoring.Free asLate = new SteadyScoring.Free(-13_290, 0, 60);
        SteadyScoring.Free later = new SteadyScoring.Free(-13_291, 0, 60);

        assertThat(medium(played, new SteadyScoring(asLate, -13_500, effortMin, 300, FIELDS)))
                .as("as much effort as allowed")
                .isEqualTo(-17_190);
        assertThat(medium(played, new SteadyScoring(asLate, -13_500, effortMin - 1, 300, FIELDS)))
                .as("more effort, as late")
                .isEqualTo(-19_590);
        assertThat(medium(played, new SteadyScoring(later, -13_500, effortMin - 1, 300, FIELDS)))
                .as("more effort, less late")
                .isEqualTo(-17_190);
    }

    @Test
    void whereNothingIsPromisedItIsThePlainSearch() {
        CompiledSeason season = CompiledSeason.of(hurried(3));

        assertThat(steady(season, told(3)))
                .isEqualTo(new Search(season, 1, 2).improve(told(3), moves(MOVES), better -> {}));
    }

    @Test
    void movesOfBothPartsAreCounted() {
        SteadySearch search = new SteadySearch(afterRain(2), 1, 2);

        search.improve(List.of(told(2)), moves(1_001), better -> {});

        assertThat(search.movesTried()).isEqualTo(1_001);
    }

    @Test
    @Timeout(20)
    void stopEndsBothParts() {
        SteadySearch search = new SteadySearch(afterRain(2), 1, 2);
        SearchLimits anHour = SearchLimits.time(Duration.ofHours(1));
        anHour.stop().set();

        search.improve(List.of(told(2)), anHour, better -> {});

        assertThat(search.movesTried()).isZero();
    }

    private static long medium(Timeline played, SteadyScoring scoring) {
        return scoring.of(played).mediumScore();
    }

    /** Planters stand for windows as it suits the lists. */
    private static Season hurried(long seed) {
        Goals idleIsFree = new Goals(30, 20, 20, 1, 0.5, 10, 0.1, 60, 45, 1, 60, 2, 0, 2, OptionalDouble.empty());
        return InventedSeason.hurried(FIELDS, 3, seed)
                .change()
                .goals(idleIsFree)
                .season();
    }

    private static FieldLists told(long seed) {
        return FirstLists.byHand(CompiledSeason.of(hurried(seed)));
    }

    /** A season in which the lists by hand were told, and rain falls on the second day. */
    private static CompiledSeason afterRain(long seed) {
        Season season = hurried(seed);
        CompiledSeason dry = CompiledSeason.of(season);
        Plan told = PlanRecorder.record(
                dry, told(seed).ids(season), Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64)));
        List<Rain> rain = new ArrayList<>(season.rain());
        rain.add(new Rain(season.first().plusDays(1), 6 * 3600, 15));
        Standing standing = Standing.at(season.first().atStartOfDay())
                .withPromised(Promises.of(told, season.first().atStartOfDay(), 9));
        return CompiledSeason.of(season.change()
                .rain(rain)
                .standing(Optional.of(standing))
                .goals(EARLY_DAYS_COUNT)
                .season());
    }

    private static FieldLists steady(CompiledSeason season, FieldLists start) {
        return new SteadySearch(season, 1, 2).improve(List.of(start), moves(MOVES), better -> {});
    }

    private static SearchLimits moves(long moves) {
        return SearchLimits.moves(moves);
    }
}

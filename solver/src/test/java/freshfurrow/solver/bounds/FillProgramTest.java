package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.relaxation.FillProgram;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Fewest fills of punctual plans against arithmetic done by hand: a hectare takes 1,025 s with its pumping, a day has 4,160 s. */
class FillProgramTest {
    private static final FillProgram.NoWorse NOTHING_LATE = new FillProgram.NoWorse(0, 0, 1);

    /**
     * P0 plants two fields a day out of one load, as 60 s + 4 x 1,025 s are its day; P1 needs no setup, and a load for each field. Of eight fields due in two
     * days P0 plants 8 ha at the most out of two loads, so P1 the other 8, out of 8 / 2.002.
     */
    @Test
    void thePlanterWithTheLargeTankHasNoHoursForAll() {
        Season season = withTanks(fields(2, 8).season(2), 400, 200);
        Season unsettled =
                withPlanter(season, 1, planter -> planter.change().fillSetupS(0).planter());

        assertThat(fills(unsettled)).isBetween(5.99, 5.9961);
        assertThat(new FewestRefills(CompiledSeason.of(unsettled)).fills(0)).isEqualTo(4);
    }

    /** In four days there is time for P0 alone: a load a day, of 4 ha as there is no time for the 4.004 that a tank may hold. */
    @Test
    void whereThereIsTimeTheLargeTankIsForAll() {
        Season season = withTanks(fields(2, 8).season(4), 400, 200);

        assertThat(fills(season)).isBetween(3.999, 4.0);
    }

    /**
     * A load is for 2.5025 ha and takes 60 + 2,565 s; that leaves 1,535 s of the day, 1.439 ha out of one more. In four days 14 ha are four whole loads
     * and 3.99 ha of such: 2.77 more. By the area alone they would be 5.6 loads.
     */
    @Test
    void theLastLoadOfADayIsPlantedInWhatIsLeftOfIt() {
        Season season = withTanks(fields(1, 7).season(4), 250);

        assertThat(fills(season)).isBetween(6.75, 6.78);
        assertThat(new FewestRefills(CompiledSeason.of(season)).fills(0)).isEqualTo(6);
    }

    /** The rig begins with the planter, and its shortest batch takes 200 s: that leaves 1.244 ha for a second load, and 3.99 ha are 3.21 of such. */
    @Test
    void theFirstLoadOfADayWaitsForABatch() {
        Season season = withTanks(fields(1, 7).season(4), 250);
        WorkHours hours = new WorkHours(List.of(new DaySpan(8 * 3600, 20 * 3600)));
        Season sameHours = season.change()
                .rigs(season.rigs().stream()
                        .map(rig -> rig.change().hours(hours).rig())
                        .toList())
                .season();

        assertThat(fills(sameHours)).isBetween(7.19, 7.22);
    }

    /** Of 8 ha 4 may be left: a load. */
    @Test
    void whatMayBeLeftTakesNoFill() {
        CompiledSeason season = CompiledSeason.of(fields(1, 4).season(4));

        assertThat(new FillProgram(season, FieldGroups.of(season))
                        .least(new FillProgram.NoWorse(4e6, Double.POSITIVE_INFINITY, 0), 1, 0))
                .isBetween(0.999, 1.0);
    }

    /** Two fields a day: on the last three of four days, days 1, 2 and 3, at 3 a ha and day: 4 ha on day 0, 4 on day 1, 4 on day 2. */
    @Test
    void plantingLaterCostsItsDays() {
        CompiledSeason season = CompiledSeason.of(fields(1, 6).season(4));

        assertThat(new FillProgram(season, FieldGroups.of(season)).least(NOTHING_LATE, 0, 3 / 1e6))
                .isBetween(35.9, 36.0);
    }

    private static TwoFieldsADay fields(int planters, int count) {
        TwoFieldsADay fields = new TwoFieldsADay(planters);
        IntStream.range(0, count).forEach(i -> fields.field(0, 3, 1));
        return fields;
    }

    private static double fills(Season season) {
        CompiledSeason compiled = CompiledSeason.of(season);
        return new FillProgram(compiled, FieldGroups.of(compiled)).least(NOTHING_LATE, 1, 0);
    }

    private static Season withTanks(Season season, double... tanksL) {
        Season changed = season;
        for (int p = 0; p < tanksL.length; p++) {
            double tankL = tanksL[p];
            changed = withPlanter(
                    changed, p, planter -> planter.change().tankL(tankL).planter());
        }
        return changed;
    }

    private static Season withPlanter(Season season, int index, UnaryOperator<Planter> change) {
        List<Applicator> planters = new ArrayList<>(season.applicators());
        planters.set(index, change.apply((Planter) planters.get(index)));
        return season.change().applicators(planters).season();
    }
}

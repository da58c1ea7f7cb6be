package freshfurrow.solver.steady;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class KeptPromisesTest {
    @Property(tries = 20)
    void noMorePromisesAreBrokenAndLatenessGrowsByTwoPerCentAtTheMost(@ForAll long seed) {
        Season season = InventedSeason.of(14, 2, 1, 8_000, seed);
        CompiledSeason plain = CompiledSeason.of(season);
        FieldLists first = FirstLists.best(plain);
        Plan promised = PlanRecorder.record(
                plain, first.ids(season), Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64)));
        Standing standing = Standing.at(season.first().atStartOfDay())
                .withPromised(Promises.of(promised, season.first().atStartOfDay(), 9));
        CompiledSeason underWay = CompiledSeason.of(
                season.change().standing(Optional.of(standing)).season());
        ListPlayer player = new ListPlayer(underWay);
        FieldLists shuffled = shuffled(first, new Random(seed));
        int movedBefore = player.play(shuffled).movedFields();
        long mediumBefore = player.play(shuffled).medium();
        SteadyScoring allowed =
                SteadyScoring.besides(player.play(shuffled), season.fields().size(), season.goals());

        FieldLists kept = new KeptPromises(underWay, allowed, StopSignal.untilTold()).in(shuffled);

        assertThat(player.play(kept).movedFields()).isLessThanOrEqualTo(movedBefore);
        assertThat(player.play(kept).medium()).isGreaterThanOrEqualTo(Math.round(mediumBefore * 1.02) - 1);
        assertThat(player.play(first).movedFields()).isZero();
        assertThat(new KeptPromises(underWay, allowed, StopSignal.untilTold()).in(first))
                .isEqualTo(first);
    }

    private static FieldLists shuffled(FieldLists lists, Random random) {
        List<List<Integer>> changed = new ArrayList<>();
        for (List<Integer> list : lists.byPlanter()) {
            List<Integer> other = new ArrayList<>(list);
            if (!other.isEmpty()) {
                Collections.swap(other, 0, random.nextInt(other.size()));
            }
            changed.add(other);
        }
        return new FieldLists(changed);
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * A season that is played out to a time only has all that begins before it, what days begin and end with included. Mix that nobody comes
 * for is let out later there: that it is left over is known only when the next load is.
 */
class PartOfASeasonTest {
    @Property(tries = 300)
    void allThatBeginsBeforeIsAsInTheWholeSeason(@ForAll long seed) {
        Season season = RandomSeasons.season(seed);
        CompiledSeason compiled = CompiledSeason.of(season);
        PlantingOrders orders = RandomSeasons.orders(season, RandomSeasons.lists(season, seed));
        Plan.SeasonSource source = Plan.SeasonSource.of(season, "season.yaml", "0".repeat(64));
        int until = new Random(seed).nextInt(season.days() * 86_400);

        Plan part = PlanRecorder.recordUntil(compiled, orders, source, Optional.empty(), until);

        assertThat(begunBefore(season, part, until))
                .isEqualTo(begunBefore(season, PlanRecorder.record(compiled, orders, source), until));
    }

    private static List<String> begunBefore(Season season, Plan plan, int until) {
        List<Activity> all = new ArrayList<>();
        plan.planters().values().forEach(planter -> all.addAll(planter.activities()));
        all.removeIf(activity -> activity instanceof Activity.Wait);
        plan.rigs().values().forEach(rig -> all.addAll(rig.activities()));
        all.removeIf(Activity.Dump.class::isInstance);
        return all.stream()
                .filter(activity -> season.time().seconds(activity.start()) < until)
                .map(activity -> activity.kind() + " at " + activity.at() + " " + when(activity))
                .toList();
    }

    /** A rig is closed up once mix is let out. */
    private static String when(Activity activity) {
        return activity instanceof Activity.CloseUp
                ? "on " + activity.start().toLocalDate()
                : activity.start() + " " + activity.end();
    }
}

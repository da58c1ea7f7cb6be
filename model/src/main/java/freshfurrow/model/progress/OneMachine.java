package freshfurrow.model.progress;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts a rig, and the sprayers that are mounted on it, to one place: where the one stands that did the last of their work. */
final class OneMachine {
    private OneMachine() {}

    /**
     * Changes the maps so that machines that are one stand at one place and are free from one moment on.
     *
     * @param now of what the plan has, only that counts which has begun before
     */
    static void unite(
            Season season,
            Plan plan,
            LocalDateTime now,
            Map<String, Standing.OfPlanter> planters,
            Map<String, Standing.OfRig> rigs) {
        season.applicators().stream()
                .map(Applicator::on)
                .flatMap(Optional::stream)
                .distinct()
                .forEach(rig -> unite(season.oneWith(rig), plan, now, planters, rigs));
    }

    private static void unite(
            Set<String> all,
            Plan plan,
            LocalDateTime now,
            Map<String, Standing.OfPlanter> planters,
            Map<String, Standing.OfRig> rigs) {
        Optional<String> last = all.stream()
                .filter(id -> lastBegun(plan, id, now).isPresent())
                .max(Comparator.comparing(id -> lastBegun(plan, id, now).orElseThrow()));
        LocalDateTime free = Stream.concat(
                        all.stream().map(rigs::get).filter(Objects::nonNull).map(Standing.OfRig::freeFrom),
                        all.stream().map(planters::get).filter(Objects::nonNull).map(Standing.OfPlanter::freeFrom))
                .max(Comparator.naturalOrder())
                .orElse(now);
        Optional<String> place = last.map(id ->
                rigs.containsKey(id) ? rigs.get(id).at() : planters.get(id).at());
        for (String id : all) {
            rigs.computeIfPresent(id, (any, its) -> its.standing(place.orElse(its.at()), free));
            planters.computeIfPresent(id, (any, its) -> its.standing(place.orElse(its.at()), free));
        }
    }

    private static Optional<LocalDateTime> lastBegun(Plan plan, String id, LocalDateTime now) {
        List<Activity> activities = plan.rigs().containsKey(id)
                ? plan.rigs().get(id).activities()
                : plan.planters().containsKey(id) ? plan.planters().get(id).activities() : List.of();
        return activities.stream()
                .map(Activity::start)
                .filter(start -> start.isBefore(now))
                .max(Comparator.naturalOrder());
    }
}

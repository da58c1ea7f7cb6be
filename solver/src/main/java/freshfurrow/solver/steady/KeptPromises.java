package freshfurrow.solver.steady;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Puts fields back to the planter and day that were promised, one after the other, as long as all of that together adds no more than one
 * per cent to the late and unserved area. The score alone would move a field for the least gain in lateness, as lateness outweighs any number
 * of moved fields.
 */
public final class KeptPromises {
    private static final double MOST_ADDED = 0.01;

    private final ListPlayer player;
    private final Map<Integer, Integer> planterOf = new LinkedHashMap<>();
    private final long leastMedium;

    private KeptPromises(CompiledSeason season, FieldLists lists) {
        player = new ListPlayer(season);
        HardMediumSoftLongScore score = player.score(lists);
        leastMedium = (long) Math.ceil(score.mediumScore() * (1 + MOST_ADDED));
        promises(season.season());
    }

    private void promises(Season season) {
        Map<String, Standing.Promise> promised =
                season.standing().map(Standing::promised).orElse(Map.of());
        for (int field = 0; field < season.fields().size(); field++) {
            Standing.Promise promise = promised.get(season.fields().get(field).id());
            for (int p = 0; promise != null && p < season.planters().size(); p++) {
                if (season.planters().get(p).id().equals(promise.planter())) {
                    planterOf.put(field, p);
                }
            }
        }
    }

    /** The lists with as many promises kept as cost next to nothing. */
    public static FieldLists in(CompiledSeason season, FieldLists lists) {
        return new KeptPromises(season, lists).improve(lists);
    }

    private FieldLists improve(FieldLists lists) {
        FieldLists best = lists;
        int moved = player.play(lists).movedFields();
        boolean better = true;
        while (moved > 0 && better) {
            better = false;
            for (Map.Entry<Integer, Integer> promise : planterOf.entrySet()) {
                FieldLists kept = with(best, promise.getKey(), promise.getValue(), moved);
                int movedThen = player.play(kept).movedFields();
                better |= movedThen < moved;
                moved = movedThen;
                best = kept;
            }
        }
        return best;
    }

    /** The best lists with fewer fields moved by one change of a field's place; the same lists when there are none. */
    private FieldLists with(FieldLists lists, int field, int planter, int moved) {
        FieldLists best = lists;
        @Nullable HardMediumSoftLongScore bestScore = null;
        int fewest = moved - 1;
        for (FieldLists candidate : changes(lists, field, planter)) {
            Timeline played = player.play(candidate);
            HardMediumSoftLongScore score = HardMediumSoftLongScore.of(played.hard(), played.medium(), played.soft());
            boolean fewer = played.movedFields() < fewest;
            if (score.hardScore() == 0
                    && score.mediumScore() >= leastMedium
                    && played.movedFields() <= fewest
                    && (fewer || bestScore == null || score.compareTo(bestScore) > 0)) {
                best = candidate;
                bestScore = score;
                fewest = played.movedFields();
            }
        }
        return best;
    }

    /** The field anywhere in the planter's list, or in the place of any field there, which then takes the field's place. */
    private static List<FieldLists> changes(FieldLists lists, int field, int planter) {
        List<FieldLists> changes = new ArrayList<>();
        List<List<Integer>> without = lists.byPlanter().stream()
                .map(list -> list.stream().filter(other -> other != field).toList())
                .toList();
        for (int i = 0; i <= without.get(planter).size(); i++) {
            List<List<Integer>> inserted = new ArrayList<>(without);
            List<Integer> list = new ArrayList<>(without.get(planter));
            list.add(i, field);
            inserted.set(planter, list);
            changes.add(new FieldLists(inserted));
        }
        for (int other : without.get(planter)) {
            changes.add(new FieldLists(lists.byPlanter().stream()
                    .map(list -> list.stream()
                            .map(one -> one == field ? other : one == other ? field : one)
                            .toList())
                    .toList()));
        }
        return changes;
    }
}

package freshfurrow.solver.construction;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Lists to go on with in a season that is under way: those that were followed, without what is done. */
public final class FollowedLists {
    private FollowedLists() {}

    /**
     * The lists to go on with: what is {@link #left} of those that were followed, or {@link FirstLists#best} where those are better by the
     * score of the timeline.
     *
     * @param followed as for {@link #left}
     */
    public static FieldLists orBetter(CompiledSeason season, PlantingOrders followed) {
        return orBetter(season, followed, StopSignal.untilTold());
    }

    /**
     * The lists to go on with, as far as there is time.
     *
     * @param stop once set, fields that stand in no list stay in none, and fewer of the first lists are tried
     */
    public static FieldLists orBetter(CompiledSeason season, PlantingOrders followed, StopSignal stop) {
        FieldLists left = left(season, followed, stop);
        FieldLists quick = FirstLists.best(season, stop);
        ListPlayer player = new ListPlayer(season);
        return player.score(quick).compareTo(player.score(left)) > 0 ? quick : left;
    }

    /**
     * What is left of lists, in their order; a field that stands in none is put at the end of the list where it costs least. Fields go without
     * extract only where that is allowed.
     *
     * @param followed in the season's order of planters
     */
    public static FieldLists left(CompiledSeason season, PlantingOrders followed) {
        return left(season, followed, StopSignal.untilTold());
    }

    /**
     * What is left of lists, as far as there is time.
     *
     * @param stop once set, fields that stand in no list stay in none
     */
    public static FieldLists left(CompiledSeason season, PlantingOrders followed, StopSignal stop) {
        FieldLists known = FieldLists.of(season.season(), followed);
        Set<Integer> missing = new HashSet<>();
        for (int field = 0; field < season.fieldCount(); field++) {
            missing.add(field);
        }
        List<List<Integer>> lists = new ArrayList<>();
        for (int p = 0; p < season.planterCount(); p++) {
            int planter = p;
            List<Integer> list = known.of(p).stream()
                    .filter(field -> season.allows(planter, field))
                    .toList();
            list.forEach(missing::remove);
            lists.add(list);
        }
        FieldLists all = known.with(lists)
                .goingWithout(known.withoutExtract().stream()
                        .filter(season::mayGoWithout)
                        .collect(Collectors.toSet()));
        ListPlayer player = new ListPlayer(season);
        for (int field : missing.stream().sorted().toList()) {
            if (stop.isSet()) {
                break;
            }
            all = withField(season, player, all, field);
        }
        return all;
    }

    private static FieldLists withField(CompiledSeason season, ListPlayer player, FieldLists lists, int field) {
        FieldLists best = lists;
        HardMediumSoftLongScore bestScore = player.scoreFromChange(lists);
        player.stepTaken(Long.MAX_VALUE);
        for (int p = 0; p < season.planterCount(); p++) {
            if (season.allows(p, field)) {
                List<List<Integer>> longer = new ArrayList<>(lists.byPlanter());
                List<Integer> list = new ArrayList<>(longer.get(p));
                list.add(field);
                longer.set(p, list);
                FieldLists choice = lists.with(longer);
                HardMediumSoftLongScore score = player.scoreFromChange(choice);
                if (score.compareTo(bestScore) > 0) {
                    best = choice;
                    bestScore = score;
                }
            }
        }
        return best;
    }
}

package freshfurrow.solver.construction;

import freshfurrow.model.season.Field;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Lists to go on with in a season that is under way: those that were followed, without what is done. */
public final class FollowedLists {
    private FollowedLists() {}

    /**
     * The lists to go on with: what is {@link #left} of those that were followed, or {@link FirstLists#best} where those are better by the
     * score of the timeline.
     *
     * @param followed as for {@link #left}
     */
    public static FieldLists orBetter(CompiledSeason season, List<List<String>> followed) {
        FieldLists left = left(season, followed);
        FieldLists quick = FirstLists.best(season);
        ListPlayer player = new ListPlayer(season);
        return player.score(quick).compareTo(player.score(left)) > 0 ? quick : left;
    }

    /**
     * What is left of lists, in their order; a field that stands in none is put at the end of the list where it costs least.
     *
     * @param followed ids of fields for each planter, in the season's order
     */
    public static FieldLists left(CompiledSeason season, List<List<String>> followed) {
        List<String> ids = season.season().fields().stream().map(Field::id).toList();
        Set<Integer> missing = new HashSet<>();
        for (int field = 0; field < ids.size(); field++) {
            missing.add(field);
        }
        List<List<Integer>> lists = new ArrayList<>();
        for (int p = 0; p < season.planterCount(); p++) {
            int planter = p;
            List<Integer> list = followed.get(p).stream()
                    .map(ids::indexOf)
                    .filter(field -> field >= 0 && season.allows(planter, field))
                    .toList();
            missing.removeAll(list);
            lists.add(list);
        }
        FieldLists all = new FieldLists(lists);
        ListPlayer player = new ListPlayer(season);
        for (int field : missing.stream().sorted().toList()) {
            all = withField(season, player, all, field);
        }
        return all;
    }

    private static FieldLists withField(CompiledSeason season, ListPlayer player, FieldLists lists, int field) {
        List<FieldLists> choices = new ArrayList<>(List.of(lists));
        for (int p = 0; p < season.planterCount(); p++) {
            if (season.allows(p, field)) {
                List<List<Integer>> longer = new ArrayList<>(lists.byPlanter());
                List<Integer> list = new ArrayList<>(longer.get(p));
                list.add(field);
                longer.set(p, list);
                choices.add(new FieldLists(longer));
            }
        }
        return choices.stream().max(Comparator.comparing(player::score)).orElse(lists);
    }
}

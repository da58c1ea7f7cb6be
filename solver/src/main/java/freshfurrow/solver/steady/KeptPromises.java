package freshfurrow.solver.steady;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Scoring;
import java.util.ArrayList;
import java.util.List;

/** Puts fields back to the planter and day that were promised, one after the other, as long as that makes lists better. */
final class KeptPromises {
    private final CompiledSeason season;
    private final ListPlayer player;

    /** @param scoring says what is better */
    KeptPromises(CompiledSeason season, Scoring scoring) {
        this.season = season;
        player = new ListPlayer(season, scoring);
    }

    /** The lists with as many promises kept as single changes can keep. */
    FieldLists in(FieldLists lists) {
        FieldLists best = lists;
        int moved = player.play(lists).movedFields();
        boolean better = true;
        while (moved > 0 && better) {
            better = false;
            for (int field = 0; field < season.fieldCount(); field++) {
                int planter = season.promisedPlanter(field);
                if (planter < 0) {
                    continue;
                }
                FieldLists kept = with(best, field, planter, moved);
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
        HardMediumSoftLongScore bestScore = player.score(lists);
        for (FieldLists candidate : changes(lists, field, planter)) {
            HardMediumSoftLongScore score = player.score(candidate);
            if (score.compareTo(bestScore) > 0 && player.play(candidate).movedFields() < moved) {
                best = candidate;
                bestScore = score;
            }
        }
        return best;
    }

    /** The field anywhere in the planter's list, or in the place of any field there, which then takes the field's place. */
    private static List<FieldLists> changes(FieldLists lists, int field, int planter) {
        List<FieldLists> changes = new ArrayList<>();
        FieldLists without = lists.without(field);
        for (int i = 0; i <= without.of(planter).size(); i++) {
            changes.add(without.with(planter, i, field));
        }
        for (int other : without.of(planter)) {
            changes.add(new FieldLists(lists.byPlanter().stream()
                    .map(list -> list.stream()
                            .map(one -> one == field ? other : one == other ? field : one)
                            .toList())
                    .toList()));
        }
        return changes;
    }
}

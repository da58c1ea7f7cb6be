package freshfurrow.solver.steady;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Scoring;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts fields back to the planter and day that were promised, one after the other, as long as that makes lists better. */
final class KeptPromises {
    private final CompiledSeason season;
    private final ListPlayer player;

    private final Scoring scoring;
    private final StopSignal stop;

    /**
     * @param scoring says what is better
     * @param stop once set, no more promises are looked at
     */
    KeptPromises(CompiledSeason season, Scoring scoring, StopSignal stop) {
        this.season = season;
        this.scoring = scoring;
        this.stop = stop;
        player = new ListPlayer(season, scoring);
    }

    /** The lists with as many promises kept as single changes can keep. */
    FieldLists in(FieldLists lists) {
        FieldLists best = lists;
        int moved = base(lists).movedFields();
        boolean better = true;
        while (moved > 0 && better) {
            better = false;
            for (int field = 0; field < season.fieldCount() && !stop.isSet(); field++) {
                int planter = season.promisedPlanter(field);
                if (planter < 0) {
                    continue;
                }
                FieldLists kept = with(best, field, planter, moved);
                if (!kept.equals(best)) {
                    best = kept;
                    moved = base(kept).movedFields();
                    better = true;
                }
            }
        }
        return best;
    }

    /** The best lists with fewer fields moved by one change of a field's place; the same lists when there are none. */
    private FieldLists with(FieldLists lists, int field, int planter, int moved) {
        FieldLists best = lists;
        HardMediumSoftLongScore bestScore = player.scoreFromChange(lists);
        for (FieldLists candidate : changes(lists, field, planter)) {
            if (stop.isSet()) {
                break;
            }
            Optional<HardMediumSoftLongScore> score =
                    player.playFromChange(candidate, moved - 1).map(scoring::of);
            if (score.isPresent() && score.get().compareTo(bestScore) > 0) {
                best = candidate;
                bestScore = score.get();
            }
        }
        return best;
    }

    /** The lists played out, from which changes are played. */
    private Timeline base(FieldLists lists) {
        Timeline played = player.playFromChange(lists, season.fieldCount()).orElseThrow();
        player.stepTaken(Long.MAX_VALUE);
        return played;
    }

    /** The field anywhere in the planter's list, or in the place of any field there, which then takes the field's place. */
    static List<FieldLists> changes(FieldLists lists, int field, int planter) {
        List<FieldLists> changes = new ArrayList<>();
        FieldLists without = lists.without(field);
        for (int i = 0; i <= without.of(planter).size(); i++) {
            changes.add(without.with(planter, i, field));
        }
        for (int other : without.of(planter)) {
            changes.add(lists.with(lists.byPlanter().stream()
                    .map(list -> list.stream()
                            .map(one -> one == field ? other : one == other ? field : one)
                            .toList())
                    .toList()));
        }
        return changes;
    }
}

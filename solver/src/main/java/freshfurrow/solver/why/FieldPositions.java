package freshfurrow.solver.why;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every position of one field in the lists of the planters that may plant it, each played out, all other fields staying in
 * their order.
 *
 * @param planned the lists as they are, played out
 * @param own where the field stands; empty when it stands in no list
 * @param others all other positions, the best score first; among equals the earlier planter and position
 */
public record FieldPositions(Outcome planned, Optional<Position> own, List<Position> others) {
    public FieldPositions {
        others = List.copyOf(others);
    }

    /**
     * Plays out each of the field's positions in full, as many runs as there are fields and planters at the most.
     *
     * @param field index of the field in the season's fields
     */
    public static FieldPositions of(CompiledSeason season, FieldLists lists, int field) {
        ListPlayer player = new ListPlayer(season);
        Outcome planned = Outcome.of(player.play(lists));
        FieldLists without = lists.without(field);
        Optional<Position> own = Optional.empty();
        List<Position> others = new ArrayList<>();
        for (int planter = 0; planter < season.planterCount(); planter++) {
            for (int index = 0; index <= without.of(planter).size(); index++) {
                FieldLists there = without.with(planter, index, field);
                if (there.equals(lists)) {
                    own = Optional.of(new Position(planter, index, lists, planned));
                } else if (season.allows(planter, field)) {
                    others.add(new Position(planter, index, there, Outcome.of(player.play(there))));
                }
            }
        }
        others.sort(Comparator.comparing(Position::outcome, Outcome.BEST_FIRST));
        return new FieldPositions(planned, own, others);
    }

    /** The positions at which the season plays out better than as it is planned, the best first. */
    public List<Position> better() {
        return others.stream()
                .filter(other -> Outcome.BEST_FIRST.compare(other.outcome(), planned) < 0)
                .toList();
    }

    /** How many other positions have the very score of the lists as they are. */
    public int asGood() {
        return (int) others.stream()
                .filter(other -> other.outcome().score().equals(planned.score()))
                .count();
    }
}

package freshfurrow.solver.construction;

import freshfurrow.model.timeline.CompiledSeason;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * The planters that are sent out. Those that stay at home plant only what none of these may. Planters that share a rig wait for one
 * another, so that fewer of them may plant as much with less waiting and fewer calls of machines.
 */
final class Fleet {
    private final CompiledSeason season;
    private final BitSet sentOut;
    private final BitSet onlyByOthers;

    Fleet(CompiledSeason season, BitSet sentOut) {
        this.season = season;
        this.sentOut = (BitSet) sentOut.clone();
        onlyByOthers = IntStream.range(0, season.fieldCount())
                .filter(field -> sentOut.stream().noneMatch(planter -> season.allows(planter, field)))
                .collect(BitSet::new, BitSet::set, BitSet::or);
    }

    /** All planters of a season. */
    static Fleet whole(CompiledSeason season) {
        BitSet all = new BitSet();
        all.set(0, season.planterCount());
        return new Fleet(season, all);
    }

    boolean plants(int planter, int field) {
        return season.allows(planter, field) && (sentOut.get(planter) || onlyByOthers.get(field));
    }

    boolean isWhole() {
        return size() == season.planterCount();
    }

    /** How many are sent out. */
    int size() {
        return sentOut.cardinality();
    }
}

package freshfurrow.model.timeline;

/** Compost in lots, used in the order in which they become available. */
final class CompostLots {
    private final CompiledSeason season;
    private final long[] v;
    private final int base;

    CompostLots(CompiledSeason season, State state) {
        this.season = season;
        this.v = state.v;
        this.base = state.lots;
    }

    /** Left in all lots that are there at {@code t}, mg; 0 when it is too little for a batch. */
    long available(int t) {
        long mg = 0;
        for (int lot = 0; lot < season.compost.count() && season.compost.fromS(lot) <= t; lot++) {
            mg += v[base + lot];
        }
        return mg > Extraction.LEAST_MG ? mg : 0;
    }

    /**
     * Whether a load is made of what there is: it may lack a gram, lest the rounding of lots and areas leave the last of a field
     * unplanted.
     */
    static boolean isEnough(long thereMg, long askedMg) {
        return askedMg <= thereMg + Extraction.LEAST_MG;
    }

    /** When the first lot that holds enough for a batch is there, s; {@link Calendar#NEVER} when there is none. */
    int availableFrom() {
        for (int lot = 0; lot < season.compost.count(); lot++) {
            if (v[base + lot] > Extraction.LEAST_MG) {
                return season.compost.fromS(lot);
            }
        }
        return Calendar.NEVER;
    }

    /** Takes compost out of lots that hold enough. */
    void take(long mg) {
        long wanted = mg;
        for (int lot = 0; wanted > 0 && lot < season.compost.count(); lot++) {
            long taken = Math.min(wanted, v[base + lot]);
            if (taken > 0) {
                v[base + lot] -= taken;
                wanted -= taken;
            }
        }
        if (wanted > 0) {
            throw new IllegalStateException("a batch takes " + wanted + " mg more compost than there is");
        }
    }
}

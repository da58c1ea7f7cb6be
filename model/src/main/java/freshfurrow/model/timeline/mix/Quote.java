package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * What one rig answers to a request: when and how it could bring a load of a given size. Nothing is changed by asking, and the same
 * question twice in a row is worked out once.
 */
public final class Quote {
    private static final long NOTHING = -1;

    private final Delivery delivery;
    private final RigDay day;

    // the question
    private MixSource source;
    private boolean together;

    /** Of the source for the request, by {@link LoadCeiling}. */
    private long ceilingDm2 = NOTHING;

    // the question that the delivery is the answer to
    private long askedLoadDm2 = NOTHING;
    private long askedMixDm2;
    private MixSource askedSource;
    private boolean askedTogether;

    /** The answer tells of the batches, not of the start only. */
    private boolean laid;

    public Quote(SeasonTables tables, int rig, MixSource source, RigDay day) {
        this.delivery = new Delivery(tables.rigs(), rig, tables.compost().count());
        this.day = day;
        this.source = source;
        this.askedSource = source;
    }

    /** One for each rig. */
    public static Quote[] ofAllRigs(SeasonTables tables, MixSources sources, RigDay day) {
        Quote[] quotes = new Quote[tables.rigs().count()];
        for (int r = 0; r < quotes.length; r++) {
            quotes[r] = new Quote(tables, r, sources.fresh(r), day);
        }
        return quotes;
    }

    public int rig() {
        return delivery.rig();
    }

    /** Another request, or another state of things: what was worked out before tells nothing. */
    public void begin(MixSource newSource) {
        source = newSource;
        together = false;
        ceilingDm2 = NOTHING;
        askedLoadDm2 = NOTHING;
    }

    public MixSource source() {
        return source;
    }

    public void from(MixSource otherSource) {
        source = otherSource;
        ceilingDm2 = NOTHING;
    }

    boolean hasCeiling() {
        return ceilingDm2 != NOTHING;
    }

    long ceilingDm2() {
        return ceilingDm2;
    }

    void ceiling(long dm2) {
        ceilingDm2 = dm2;
    }

    /** Whether all batches are made after a break rather than some before it. */
    public boolean isTogether() {
        return together;
    }

    public void together(boolean allAfterBreak) {
        together = allAfterBreak;
    }

    /** The answer to the last question. */
    public Delivery delivery() {
        return delivery;
    }

    /** Works out a load for {@code loadDm2}, out of a mix for {@code mixDm2}. */
    public Delivery ask(long loadDm2, long mixDm2) {
        start(loadDm2, mixDm2);
        if (!laid) {
            laid = true;
            if (delivery.isInSeason()) {
                source.lay(delivery, together);
            }
        }
        return delivery;
    }

    /** The load last asked for, as it is brought: the rig begins with it as late as may be. */
    public Delivery settled() {
        day.settle(source, delivery, together);
        return delivery;
    }

    /** The same as far as the start of the transfer; how old the mix is then, only {@link #ask} tells. */
    public Delivery start(long loadDm2, long mixDm2) {
        if (loadDm2 != askedLoadDm2 || mixDm2 != askedMixDm2 || source != askedSource || together != askedTogether) {
            askedLoadDm2 = loadDm2;
            askedMixDm2 = mixDm2;
            askedSource = source;
            askedTogether = together;
            laid = false;
            delivery.of(loadDm2, mixDm2);
            day.plan(source, delivery);
        }
        return delivery;
    }
}

package freshfurrow.model.timeline.load;

/** The largest load that is in the ground in time, and what held it down. {@link LoadSizer} owns it; valid until its next load. */
final class Fit {
    private long dm2;
    private boolean heldDown;
    private boolean compostShort;
    private boolean acrossBreak;

    void begin() {
        heldDown = false;
        compostShort = false;
        acrossBreak = false;
    }

    /** A size was tried for which there is not the compost. */
    void compostFallsShort() {
        compostShort = true;
    }

    /** A size was tried whose batches were made partly before a break and partly after it. */
    void liesAcrossBreak() {
        acrossBreak = true;
    }

    void is(long size) {
        dm2 = size;
    }

    void isHeldDownAt(long size) {
        dm2 = size;
        heldDown = true;
    }

    /** 0 when nothing would be in time. */
    long dm2() {
        return dm2;
    }

    /** Whether age holds it down, and not tank, fields, water or compost. */
    boolean isHeldDownByAge() {
        return heldDown && !compostShort;
    }

    /** Whether a larger load might fit if all batches were made after a break. */
    boolean isAcrossBreak() {
        return acrossBreak;
    }
}

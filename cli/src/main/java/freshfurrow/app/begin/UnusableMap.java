package freshfurrow.app.begin;

/** A map that no fields can be taken from. */
public final class UnusableMap extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param reason a sentence or two for people */
    UnusableMap(String reason) {
        super(reason);
    }

    public String reason() {
        return String.valueOf(getMessage());
    }
}

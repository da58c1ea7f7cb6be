package freshfurrow.app.begin;

/** A map that no fields can be taken from. */
public final class UnusableMap extends Exception {
    private static final long serialVersionUID = 1L;

    /**
     * Says why.
     *
     * @param reason a sentence or two for people
     */
    public UnusableMap(String reason) {
        super(reason);
    }

    public String reason() {
        return String.valueOf(getMessage());
    }
}

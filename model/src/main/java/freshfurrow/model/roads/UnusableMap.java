package freshfurrow.model.roads;

/** A map of roads that cannot be read. */
public final class UnusableMap extends Exception {
    private static final long serialVersionUID = 1;

    private final String remedy;

    public UnusableMap(String reason, String remedy) {
        super(reason);
        this.remedy = remedy;
    }

    public String reason() {
        return getMessage();
    }

    public String remedy() {
        return remedy;
    }
}

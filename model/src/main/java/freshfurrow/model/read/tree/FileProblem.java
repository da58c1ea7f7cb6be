package freshfurrow.model.read.tree;

/** A file or a part of one that cannot be read at all. */
public final class FileProblem extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Place place;
    private final String remedy;

    public FileProblem(Place place, String reason, String remedy) {
        super(reason);
        this.place = place;
        this.remedy = remedy;
    }

    public Place place() {
        return place;
    }

    public String reason() {
        return getMessage();
    }

    public String remedy() {
        return remedy;
    }
}

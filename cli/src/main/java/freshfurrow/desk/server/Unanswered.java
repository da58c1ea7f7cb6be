package freshfurrow.desk.server;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** A request that is not answered with what it asks for. */
public class Unanswered extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int status;

    /**
     * One that is answered with a reason.
     *
     * @param status of HTTP, 400 to 499, or 503 for what can be done later
     * @param reason a sentence for whoever sees the page
     */
    public Unanswered(int status, String reason) {
        super(reason);
        this.status = status;
    }

    /** What was sent makes no sense to the desk. */
    public static Unanswered senseless(String reason) {
        return new Unanswered(400, reason);
    }

    static Unanswered closed() {
        return new Unanswered(403, "Open the desk by the link that freshfurrow printed when it was started.");
    }

    int status() {
        return status;
    }

    String reason() {
        return String.valueOf(getMessage());
    }

    /** Adds to what is sent with the reason. */
    protected void describe(ObjectNode answer) {}
}

package freshfurrow.app.refusal;

/** Thrown in place of a result, when there can be none for a reason that lies with what was asked or with the files it needs. */
public final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Refusal refusal;

    public Refused(Refusal refusal) {
        super(refusal.toString());
        this.refusal = refusal;
    }

    public Refusal refusal() {
        return refusal;
    }
}

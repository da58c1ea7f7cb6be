package freshfurrow.model.example;

/** How many of the random tries of a test are run: as many percent as the system property {@code freshfurrow.triesPercent} says, else all. */
public final class Tries {
    private static final int PERCENT = Integer.getInteger("freshfurrow.triesPercent", 100);

    private Tries() {}

    /** So many of all tries, at least one. */
    public static int of(int all) {
        return of(all, PERCENT);
    }

    static int of(int all, int percent) {
        return Math.max(1, all * percent / 100);
    }
}

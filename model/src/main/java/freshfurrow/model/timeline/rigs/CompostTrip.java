package freshfurrow.model.timeline.rigs;

/**
 * A rig's way by the places of lots, one loading after the other: part of its {@link Delivery}, which owns it. Times are s.
 */
public final class CompostTrip {
    private final int[] lot;
    private final int[] start;
    private final int[] end;
    private final long[] mg;
    private int loadings;
    private long allMg;
    private int leavesS;
    private int inOnePieceS;
    private int metres;
    private boolean afterWater;

    /** @param lots how many there are */
    CompostTrip(int lots) {
        lot = new int[lots];
        start = new int[lots];
        end = new int[lots];
        mg = new long[lots];
    }

    /** From where a rig has no loading yet, and is free at a time. */
    void none(int freeS) {
        loadings = 0;
        allMg = 0;
        leavesS = freeS;
        inOnePieceS = 0;
        metres = 0;
        afterWater = false;
    }

    void add(int ofLot, int from, int until, long loadedMg, int driveS, int way) {
        lot[loadings] = ofLot;
        start[loadings] = from;
        end[loadings] = until;
        mg[loadings] = loadedMg;
        loadings++;
        allMg += loadedMg;
        leavesS = until;
        inOnePieceS += driveS + until - from;
        metres += way;
    }

    void afterWater(boolean after) {
        afterWater = after;
    }

    public boolean isMade() {
        return loadings > 0;
    }

    int loadings() {
        return loadings;
    }

    /** Of a loading, counted from 0; likewise what follows. */
    int lot(int loading) {
        return lot[loading];
    }

    int start(int loading) {
        return start[loading];
    }

    int end(int loading) {
        return end[loading];
    }

    long mg(int loading) {
        return mg[loading];
    }

    /** All that is loaded, mg; 0 when no trip is made. */
    public long mg() {
        return allMg;
    }

    /** When the last of it is loaded. */
    int leavesS() {
        return leavesS;
    }

    /** From where the rig was to where it loads last, were there no breaks and every lot there, s. */
    int inOnePieceS() {
        return inOnePieceS;
    }

    /** The way to the last of the lots. */
    int metres() {
        return metres;
    }

    /** Whether the rig draws water first. */
    boolean isAfterWater() {
        return afterWater;
    }
}

package freshfurrow.model.timeline.rigs;

/** A rig's way by a water point: part of its {@link Delivery}, which owns it. */
public final class WaterTrip {
    private static final int NONE = -1;

    /** By which point the way is to lead, where that is said. */
    private int only = NONE;

    private int point = NONE;
    private int at;
    private int drawStart;
    private int drawS;
    private long drawMl;
    private int onwardS;
    private int metres;
    private boolean waited;

    /** From now on the way leads by that point and no other. */
    public void onlyBy(int waterPoint) {
        only = waterPoint;
    }

    public void byAnyPoint() {
        only = NONE;
    }

    boolean mayBeBy(int waterPoint) {
        return only == NONE || only == waterPoint;
    }

    void none() {
        point = NONE;
        waited = false;
    }

    void to(int waterPoint, int start, int durationS, long ml) {
        point = waterPoint;
        drawStart = start;
        drawS = durationS;
        drawMl = ml;
    }

    /** @param place of the water point */
    void by(int place, int driveOnwardS, int metresInAll, boolean waitedForWater) {
        at = place;
        onwardS = driveOnwardS;
        metres = metresInAll;
        waited = waitedForWater;
    }

    public boolean isMade() {
        return point != NONE;
    }

    /** Meaningless, as all that follows, when no trip is made. */
    public int point() {
        return point;
    }

    /** Where it is. */
    public int at() {
        return at;
    }

    int drawStart() {
        return drawStart;
    }

    int drawEnd() {
        return drawStart + drawS;
    }

    public int drawS() {
        return drawS;
    }

    long drawMl() {
        return drawMl;
    }

    /** Drive from the water point to the planter, s. */
    public int onwardS() {
        return onwardS;
    }

    /** To the water point and on to the planter. */
    int metres() {
        return metres;
    }

    /** The rig comes to the water no sooner than it has to, but it would have stood there, or not, had it come at once. */
    public void waitedFor(boolean waitedForWater) {
        waited = waitedForWater;
    }

    /** Whether the rig stands at the water point until hose, hours or limit let it draw, or would if it came at once. */
    public boolean isWaitedFor() {
        return waited;
    }
}

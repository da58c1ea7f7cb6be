package freshfurrow.model.timeline.state;

import freshfurrow.model.plan.WaitReason;

/** Told of all that happens while a timeline is played, in order for each machine. Times are s, places and things indices. */
public interface Journal {
    /** A planter has this in its tank to begin with; what it plants before its first fill comes out of it. */
    void carried(int planter, int recipe, long ml, int deadline);

    void planterMoved(int planter, int from, int to, int start, int end);

    void waited(int planter, int place, int start, int end, WaitReason why);

    /**
     * A load was transferred; what is planted next for the planter comes out of it. It holds the batches extracted by the rig
     * since it last began a new mix.
     */
    void filled(int planter, int rig, int recipe, int place, int start, int end, long ml, int deadline);

    void planted(int planter, int field, int start, int end, long dm2);

    /**
     * What a planter plants without extract from now on, until this is told of it again, it does for this reason.
     *
     * @param untilS at the latest; past all seasons where nothing ends it
     * @param rig that would bring a load then; -1 for none
     * @param waitS how long the planter would wait for that, s of its working time; 0 without a rig
     */
    void goesWithout(int planter, WithoutReason why, int untilS, int rig, int waitS);

    /** Planted without extract, with an empty tank. */
    void plantedWithout(int planter, int field, int start, int end, long dm2);

    void flushed(int planter, int place, int start, int end);

    void rigMoved(int rig, int from, int to, int start, int end);

    void drew(int rig, int point, int start, int end, long ml);

    /** A rig loads compost of a lot where that lies. */
    void loadedCompost(int rig, int lot, int start, int end, long mg);

    /** The rig begins to make something new: batches from here on do not mix with those before. */
    void newMix(int rig);

    void extracted(int rig, int place, int start, int end, long compostMg, long waterMl);

    void cleaned(int rig, int place, int start, int end);

    void dumped(int rig, int place, int start, int end, long ml);

    void unserved(int field, long dm2, Shortfall why, int since);

    /**
     * A load that a rig has brought for a planter, and that is let out after this, is too old before any of it could be planted.
     *
     * @param s when that is known
     */
    void wasted(int planter, int rig, int recipe, int s, long ml, long dm2);
}

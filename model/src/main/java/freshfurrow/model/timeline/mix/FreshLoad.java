package freshfurrow.model.timeline.mix;

/**
 * The load that a rig would make anew for a request, of the same size and made in the same time by all rigs that are alike. {@link
 * FreshLoads} owns and writes it; it is valid until the next request.
 */
public final class FreshLoad {
    /** Area of its mix; 0 when there is nothing to make it of or for. */
    long dm2;

    /** Of its mix, what the nurse tank holds. */
    long waterMl;

    /** Water that it is not made without. */
    long leastMl;

    /** Compost that its batches take. */
    long compostMg;

    /** To extract it in one go, s. */
    int chainS;

    /** Setup and pumping of as much of it as the planter takes, s. */
    int transferS;

    /** When the planter could take it if the rig were there, s. */
    int takenFrom;

    /** Area of its mix; 0 when there is nothing to make it of or for. */
    public long dm2() {
        return dm2;
    }
}

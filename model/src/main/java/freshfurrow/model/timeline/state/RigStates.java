package freshfurrow.model.timeline.state;

/** How rigs stand: a block of the {@link State} for each. */
public final class RigStates {
    private static final int PLACE = 0;
    private static final int FREE = 1;
    private static final int WATER_ML = 2;
    private static final int MIX_DM2 = 3;
    private static final int MIX_RECIPE = 4;
    private static final int MIX_USE_BY = 5;
    private static final int MIX_PLANT_BY = 6;
    private static final int CLEAN_DUE = 7;
    private static final int OUT = 8;
    static final int SIZE = OUT + DaysOut.SIZE;

    private final long[] v;
    private final int first;

    RigStates(long[] v, int first) {
        this.v = v;
        this.first = first;
    }

    private int at(int rig) {
        return first + rig * SIZE;
    }

    public int place(int rig) {
        return (int) v[at(rig) + PLACE];
    }

    public void moveTo(int rig, int place) {
        v[at(rig) + PLACE] = place;
    }

    /** When it has done what it is at, s. */
    public int freeS(int rig) {
        return (int) v[at(rig) + FREE];
    }

    public void freeFrom(int rig, int s) {
        v[at(rig) + FREE] = s;
    }

    /** Water on board that is in no mix. */
    public long waterMl(int rig) {
        return v[at(rig) + WATER_ML];
    }

    public void water(int rig, long ml) {
        v[at(rig) + WATER_ML] = ml;
    }

    /** Area that the mix on board is for; 0 when there is none. */
    public long mixDm2(int rig) {
        return v[at(rig) + MIX_DM2];
    }

    /** Meaningless when there is no mix. */
    public int mixRecipe(int rig) {
        return (int) v[at(rig) + MIX_RECIPE];
    }

    /** When the hold time of the oldest batch in the mix is over, s; meaningless when there is no mix. */
    public int mixUseByS(int rig) {
        return (int) v[at(rig) + MIX_USE_BY];
    }

    /** When the last drop of the mix is to be in the ground, s: the reserve before that, but for mix made before the season is played. */
    public int mixPlantByS(int rig) {
        return (int) v[at(rig) + MIX_PLANT_BY];
    }

    public void mix(int rig, long dm2, int recipe, int useByS, int plantByS) {
        int at = at(rig);
        v[at + MIX_DM2] = dm2;
        v[at + MIX_RECIPE] = recipe;
        v[at + MIX_USE_BY] = useByS;
        v[at + MIX_PLANT_BY] = plantByS;
    }

    public void passOn(int rig, long dm2) {
        int slot = at(rig) + MIX_DM2;
        v[slot] = Math.max(0, v[slot] - dm2);
    }

    /** It sets off at a time. Returns how many call-outs for nothing that tells of: 1 at the most. */
    public int left(int rig, int s) {
        return DaysOut.left(v, at(rig) + OUT, s);
    }

    public void filledAPlanter(int rig, int s) {
        DaysOut.worked(v, at(rig) + OUT, s);
    }

    /** Whether its last call-out was for nothing, 1 or 0. */
    public int wasOutForNothing(int rig) {
        return DaysOut.forNothing(v, at(rig) + OUT);
    }

    /** Whether it has to be cleaned before its next batch. */
    public boolean isCleanDue(int rig) {
        return v[at(rig) + CLEAN_DUE] == 1;
    }

    public void cleanDue(int rig, boolean due) {
        v[at(rig) + CLEAN_DUE] = due ? 1 : 0;
    }
}

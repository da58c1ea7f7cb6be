package freshfurrow.model.timeline.rigs;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.tables.RigTable;

/**
 * When and how one rig brings a load: the answer to the last question that the rig was asked, and valid until the next. Only what works
 * a delivery out writes it: the question, the source of the mix and {@link Preparation}. Times are s.
 */
public final class Delivery {
    private final int rig;
    final Extraction extraction;
    final WaterTrip trip = new WaterTrip();
    final CompostTrip compost;

    /** Areas of the load and of the mix that it is taken out of. */
    long loadDm2;

    long mixDm2;

    /** The rig does nothing for it before this. */
    int notBefore;

    /** When mix to be let out first is out; when the rig may set off where there is none. */
    int dumpEnd;

    /** Drive with mix on board from where it is made to the planter. */
    int carryS;

    /** When rig and mix could be there if the rig came as soon as it can: it may come later, but none too late. */
    int rigReady;

    /** The last batch is done, or, where mix is made at the water, the rig sets off with it. */
    int depart;

    /** When rig and mix are there as it turns out; told once the load is brought. */
    int there;

    public int transferStart;
    int transferS;

    /** When the hold time of the oldest batch is over. */
    int useBy;

    /** When the last drop is to be in the ground: the reserve before that, but for mix that is made already. */
    int plantBy;

    int metres;

    /** The rig has a break between its first batch and the transfer. */
    boolean acrossBreak;

    /** Age holds the load down, and not tank, fields, water or compost; told of a load that was sized only. */
    boolean heldDownByAge;

    /** All that the rig drives, draws and loads before it makes mix, or brings what it has, were there no breaks, s. */
    int fetchS;

    /** @param lots how many lots of compost there are */
    public Delivery(RigTable rigs, int rig, int lots) {
        this.rig = rig;
        this.compost = new CompostTrip(lots);
        this.extraction = new Extraction(rigs);
    }

    public int rig() {
        return rig;
    }

    /** {@link Calendar#NEVER} when the rig cannot bring it in the season. */
    public int transferStart() {
        return transferStart;
    }

    /** When the first batch is begun or, where all of the mix is made, the transfer. */
    public int begins() {
        return extraction.batches() > 0 ? extraction.start() : transferStart;
    }

    /** When rig and mix are there as it turns out; told once the load is brought. */
    public int there() {
        return there;
    }

    /** The transfer turns out to last from one time to another. */
    public void transferred(int start, int end) {
        transferStart = start;
        transferS = end - start;
    }

    /** It starts then, though it might start sooner. */
    public void putOff(int s) {
        transferStart = s;
    }

    public int transferEnd() {
        return transferStart + transferS;
    }

    public boolean isInSeason() {
        return transferStart < Calendar.NEVER;
    }

    public Extraction extraction() {
        return extraction;
    }

    public WaterTrip trip() {
        return trip;
    }

    public CompostTrip compost() {
        return compost;
    }

    /** All that the rig drives, draws and loads before it makes mix, or brings what it has, were there no breaks, s. */
    public int fetchS() {
        return fetchS;
    }

    /** Another size is asked for. */
    public void of(long newLoadDm2, long newMixDm2) {
        loadDm2 = newLoadDm2;
        mixDm2 = newMixDm2;
    }

    /** Area of the load. */
    public long loadDm2() {
        return loadDm2;
    }

    /** Area of the mix that the load is taken out of. */
    public long mixDm2() {
        return mixDm2;
    }

    /** When mix to be let out first is out; when the rig may set off where there is none. */
    public int dumpEnd() {
        return dumpEnd;
    }

    /** The rig does nothing for it before this. */
    public int notBefore() {
        return notBefore;
    }

    /** When rig and mix could be there if the rig came as soon as it can: it may come later, but none too late. */
    public int rigReady() {
        return rigReady;
    }

    public void rigReady(int s) {
        rigReady = s;
    }

    public int transferS() {
        return transferS;
    }

    /** When the hold time of the oldest batch is over. */
    public int useBy() {
        return useBy;
    }

    /** When the last drop is to be in the ground: the reserve before that, but for mix that is made already. */
    public int plantBy() {
        return plantBy;
    }

    public void keeps(int mixPlantBy, int mixUseBy) {
        plantBy = mixPlantBy;
        useBy = mixUseBy;
    }

    public void notBefore(int s) {
        notBefore = s;
    }

    public int metres() {
        return metres;
    }

    /** Whether the rig has a break between its first batch and the transfer. */
    public boolean isAcrossBreak() {
        return acrossBreak;
    }

    /** Whether age holds the load down, and not tank, fields, water or compost; told of a load that was sized only. */
    public boolean isHeldDownByAge() {
        return heldDownByAge;
    }

    public void heldDownByAge(boolean byAge) {
        heldDownByAge = byAge;
    }
}

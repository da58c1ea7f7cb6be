package freshfurrow.model.timeline;

/** The load that a rig would make anew for a request: of the same size, and made in the same time, by all rigs that are alike. */
final class AnewLoad {
    private final CompiledSeason season;
    private final LoadSizer sizer;

    /** Of one of the rigs, and asked nothing: no answer of a rig is lost over it. */
    private final Quote quote;

    /** Area of its mix, dm2; 0 when there is nothing to make it of or for. */
    long dm2;

    /** Of its mix, what the nurse tank holds, mL. */
    long waterMl;

    /** Water that it is not made without, mL. */
    long leastMl;

    /** To extract it in one go, s. */
    int chainS;

    /** Setup and pumping of as much of it as the planter takes, s. */
    int transferS;

    /** When the planter could take it if the rig were there, s. */
    int takenFrom;

    AnewLoad(CompiledSeason season, LoadSizer sizer, Quote quote) {
        this.season = season;
        this.sizer = sizer;
        this.quote = quote;
        quote.source = RigChoice.anew(season, quote.rig);
    }

    void workOut(int planter, int place, int recipe, int need, boolean oneBatch) {
        int rig = quote.rig;
        quote.request(planter, place, recipe, need);
        dm2 = sizer.ceiling(quote, oneBatch);
        waterMl = Math.min(season.recipes.mixMl(dm2, recipe), season.rigs.nurseMl(rig));
        leastMl = season.recipes.mixMl(Leeway.least(dm2), recipe);
        chainS = quote.extraction.chainS(rig, season.recipes.compostMg(dm2, recipe));
        transferS = quote.transferS(sizer.loadOf(quote, dm2));
        takenFrom = season.planters.hours(planter).earliest(need, transferS);
    }
}

package freshfurrow.model.timeline;

import static freshfurrow.model.quantity.Factors.G_PER_KG;
import static freshfurrow.model.timeline.tables.Scale.DM2_PER_HA;
import static freshfurrow.model.timeline.tables.Scale.ML_PER_L;

import freshfurrow.model.timeline.journal.ActivityJournal;
import freshfurrow.model.timeline.journal.LotShares;
import freshfurrow.model.timeline.rigs.Extraction;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One load by itself, as the timeline makes and plants it where nothing comes between: no roads, no breaks, no queue, enough water and
 * compost.
 *
 * @param areaHa what it plants, ha
 * @param mixL finished mix, L
 * @param compostKg kg
 * @param batches in the order in which they are made, one at least
 * @param drumS from the start of the first batch to the end of the last, cleans between them included, s
 * @param cleanS the clean after the last batch, s
 * @param useByS from the start of the first batch to the end of its hold time, s
 * @param transferS setup of planter and pumping, s
 * @param plantS to plant the area at the planter's field capacity, s
 */
public record OneLoad(
        double areaHa,
        double mixL,
        double compostKg,
        List<DrumBatch> batches,
        int drumS,
        int cleanS,
        int useByS,
        int transferS,
        int plantS) {
    public OneLoad {
        batches = List.copyOf(batches);
    }

    /**
     * One batch.
     *
     * @param compostKg kg
     * @param waterL drum water, its share of a full drum, L
     * @param durationS s
     */
    public record DrumBatch(double compostKg, double waterL, int durationS) {}

    /**
     * The load for an area.
     *
     * @param planter index of a planter of the season; likewise {@code rig} and {@code recipe}
     * @param areaHa above 0, ha; counted in whole square decimetres
     */
    public static OneLoad forArea(CompiledSeason season, int planter, int rig, int recipe, double areaHa) {
        long dm2 = Math.max(1, Math.round(areaHa * DM2_PER_HA));
        SeasonTables tables = season.tables();
        long mixMl = tables.recipes().mixMl(dm2, recipe);
        Extraction chain = new Extraction(tables.rigs());
        chain.plan(rig, tables.recipes().compostMg(dm2, recipe));
        List<DrumBatch> batches = IntStream.rangeClosed(1, chain.batches())
                .mapToObj(batch -> new DrumBatch(
                        (LotShares.grams(chain.compostUpTo(batch)) - LotShares.grams(chain.compostUpTo(batch - 1)))
                                / G_PER_KG,
                        chain.waterOf(batch, rig) / ML_PER_L,
                        chain.batchS()))
                .toList();
        return new OneLoad(
                dm2 / DM2_PER_HA,
                mixMl / ML_PER_L,
                ActivityJournal.kilograms(chain.compostMg()),
                batches,
                chain.chainS(),
                tables.rigs().cleanS(rig),
                batches.get(0).durationS() + tables.recipes().holdS(recipe),
                new RigTimes(tables, new State(tables).rigs()).transferS(planter, rig, recipe, dm2),
                (int) Math.ceil(dm2 / tables.planters().capacityDm2PerS(planter)));
    }

    /**
     * The largest area that a volume of finished mix serves, ha; 0 when it serves none.
     *
     * @param litres 0 or more, L; counted in whole millilitres
     */
    public static double areaHaOf(CompiledSeason season, int recipe, double litres) {
        return season.tables().recipes().areaOfMix(Math.round(litres * ML_PER_L), recipe) / DM2_PER_HA;
    }
}

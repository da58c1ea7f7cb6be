package freshfurrow.model.goals;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;
import static freshfurrow.model.quantity.Factors.HOUR_S;
import static freshfurrow.model.quantity.Factors.MG_PER_KG;
import static freshfurrow.model.quantity.Factors.ML_PER_L;
import static freshfurrow.model.quantity.Factors.M_PER_KM;

import freshfurrow.model.season.CostItem;

/** What is counted while a season plays out, in whole numbers of 0 or more. Areas are in units of 1e-6 ha ("dm2"). */
public interface Counters {
    /** Fields that stand in the list of a planter that may not plant them. */
    int forbiddenFields();

    /** Fields that are fixed to a day and begun on another one, or never. */
    int brokenPromises();

    /** Area of all fields of the season that is not planted by its end, dm2. */
    long unservedDm2();

    /**
     * Area planted after its window times the days after the window's last date times the field's late weight in
     * thousandths, summed over all fields: dm2 x days / 1000.
     */
    long lateMilliDm2Days();

    /** Area planted without extract times the extract weight of its field in thousandths, dm2 / 1000. */
    long untreatedMilliDm2();

    /** Loads transferred into planters. */
    int fills();

    /** Draws of water by rigs. */
    int waterTrips();

    /** Loadings of compost by rigs, where the season says where it lies. */
    int compostTrips();

    /** Working time that planters wait for a rig, water or compost, s. */
    long waitS();

    /**
     * Working time that planters stand for fields that are closed while a field could be planted that they plant later, s. Of each day the first
     * such wait counts, and of it as long as the one of these fields could be planted that could be for longest.
     */
    long idleS();

    /** Driving time of planters, without folding and gates, and of rigs, s. */
    long driveS();

    /** Compost in mix that was dumped, mg. */
    long dumpedMg();

    /** Fields promised for the days ahead that are planted by another planter or begun on another day. */
    int movedFields();

    /** Days on which a planter plants less of a field than is worth coming for, though the field is larger. */
    int scraps();

    /** Days on which a machine leaves its stand, and a planter is neither filled nor plants, or a rig fills no planter. */
    int callOuts();

    /** Time planted past the last hours of a day, s. */
    long overtimeS();

    /** Area planted times the days from the season's first day to its planting, dm2 x days. */
    long earlyDm2Days();

    /** Area planted after its window times the days after, unweighted, dm2 x days. */
    long lateDm2Days();

    /** Area planted without extract, unweighted, dm2. */
    long untreatedDm2();

    /** Compost that goes into batches, mg. */
    long compostMg();

    /** Water drawn by rigs, mL. */
    long drawnMl();

    /** What planters and rigs drive, m. */
    long driveM();

    /** Hours at work of all machines, s; told only of seasons that are judged by money. */
    long workS();

    /** How much there is of what costs money, in the unit of the item. */
    default double amount(CostItem item) {
        return switch (item) {
            case WORK -> (double) workS() / HOUR_S;
            case ROAD -> driveM() / M_PER_KM;
            case COMPOST -> compostMg() / MG_PER_KG;
            case LATE -> lateDm2Days() / DM2_PER_HA;
            case UNPLANTED -> unservedDm2() / DM2_PER_HA;
            case UNTREATED -> untreatedDm2() / DM2_PER_HA;
            case WATER -> drawnMl() / ML_PER_L;
            case OVERTIME -> (double) overtimeS() / HOUR_S;
        };
    }
}

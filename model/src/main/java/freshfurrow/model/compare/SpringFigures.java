package freshfurrow.model.compare;

import freshfurrow.model.season.Costs;
import java.util.OptionalDouble;

/**
 * What one spring came to for one variant.
 *
 * @param finishS end of the last planting, s since the season's first midnight; the season's end where area is left unplanted
 * @param lateHaDays area planted after its window times days after, unweighted, 0 or more
 * @param unservedHa area not planted, ha, 0 or more
 * @param fills planter fills
 * @param waterTrips draws of water
 * @param waitH hours of working time that planters waited for a rig, water or compost
 * @param rigUse share of the rigs' hours at work in which they drove, drew, mixed, pumped or cleaned, 0 to 1
 * @param dumpedKg compost of mix that was let out unused, kg
 * @param compostKg compost taken from the lots, kg
 * @param workH hours at work of all machines: for each day from a machine's first deed to its last, breaks left out
 * @param driveKm planters and rigs together, km
 * @param untreatedHa area planted without extract, ha, 0 or more
 * @param treatedShare share of what planters planted that they planted with extract, 0 to 1; 1 where they planted nothing
 * @param staleLoads loads of which some got too old, and mixes that were let out, 0 or more
 * @param runningCost money for all that has a price, without what machines cost a year; empty where the season names no costs
 */
public record SpringFigures(
        int finishS,
        double lateHaDays,
        double unservedHa,
        int fills,
        int waterTrips,
        double waitH,
        double rigUse,
        double dumpedKg,
        double compostKg,
        double workH,
        double driveKm,
        double untreatedHa,
        double treatedShare,
        int staleLoads,
        OptionalDouble runningCost) {
    public SpringFigures {
        if (finishS < 0
                || fills < 0
                || waterTrips < 0
                || staleLoads < 0
                || !(lateHaDays >= 0
                        && unservedHa >= 0
                        && waitH >= 0
                        && dumpedKg >= 0
                        && compostKg >= 0
                        && workH >= 0
                        && driveKm >= 0
                        && untreatedHa >= 0)
                || !(rigUse >= 0 && rigUse <= 1)
                || !(treatedShare >= 0 && treatedShare <= 1)) {
            throw new IllegalArgumentException("a spring's figures are 0 or more, and shares are at most 1");
        }
    }

    /**
     * The same spring with what it costs at those prices.
     *
     * @param waterL drawn by rigs, L, 0 or more
     * @param overtimeH planted past the last hours of days, h, 0 or more
     */
    public SpringFigures at(Costs costs, double waterL, double overtimeH) {
        double cost = costs.of(item -> switch (item) {
            case WORK -> workH;
            case ROAD -> driveKm;
            case COMPOST -> compostKg;
            case LATE -> lateHaDays;
            case UNPLANTED -> unservedHa;
            case UNTREATED -> untreatedHa;
            case WATER -> waterL;
            case OVERTIME -> overtimeH;
        });
        return new SpringFigures(
                finishS,
                lateHaDays,
                unservedHa,
                fills,
                waterTrips,
                waitH,
                rigUse,
                dumpedKg,
                compostKg,
                workH,
                driveKm,
                untreatedHa,
                treatedShare,
                staleLoads,
                OptionalDouble.of(cost));
    }

    /** Whether all was planted, and none of it after its window. */
    public boolean insideWindows() {
        return lateHaDays == 0 && unservedHa == 0;
    }
}

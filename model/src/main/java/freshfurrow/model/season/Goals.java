package freshfurrow.model.season;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a plan's shortcomings are worth against each other, in minutes.
 *
 * @param refillMin minutes that one planter fill is worth
 * @param waterTripMin minutes that one water trip is worth
 * @param compostTripMin minutes that one loading of compost is worth
 * @param waitMinPerMin minutes that a minute of a waiting planter is worth
 * @param driveMinPerMin minutes that a minute of driving is worth, planters and rigs alike
 * @param dumpMinPerKg minutes that a kilogram of compost dumped with its mix is worth
 * @param earlyMinPerHaDay minutes that planting one hectare one day later is worth: a tie-break by default
 * @param movedMin minutes that it is worth not to move a field of the days ahead to another planter or day than was promised
 * @param scrapMin minutes that it is worth not to plant a scrap: less than {@code leastPieceHa} of a larger field on one day
 * @param leastPieceHa ha, 0 or more
 * @param callOutMin minutes that it is worth not to call a machine out on a day on which it then plants, fills or is filled no load
 * @param overtimeMinPerMin minutes that a minute of planting past the day's last hours is worth
 * @param idleMinPerMin minutes that a minute is worth in which a planter stands for a closed field and could plant another one of its list
 * @param steadyDays how many days ahead are promised when a plan is made again, 0 or more
 * @param untreatedDays a hectare planted without extract weighs as much as one planted so many days late; empty where nothing is planted
 *     without
 * @param byMoney the prices by which plans are judged, before any of these minutes; empty where they are judged by lateness and effort
 */
public record Goals(
        double refillMin,
        double waterTripMin,
        double compostTripMin,
        double waitMinPerMin,
        double driveMinPerMin,
        double dumpMinPerKg,
        double earlyMinPerHaDay,
        double movedMin,
        double scrapMin,
        double leastPieceHa,
        double callOutMin,
        double overtimeMinPerMin,
        double idleMinPerMin,
        int steadyDays,
        OptionalDouble untreatedDays,
        Optional<Costs> byMoney) {
    public static final Goals DEFAULT =
            new Goals(30, 20, 20, 1, 0.5, 10, 0.1, 60, 45, 1, 60, 2, 1, 2, OptionalDouble.empty());

    /** Goals by lateness and effort. */
    public Goals(
            double refillMin,
            double waterTripMin,
            double compostTripMin,
            double waitMinPerMin,
            double driveMinPerMin,
            double dumpMinPerKg,
            double earlyMinPerHaDay,
            double movedMin,
            double scrapMin,
            double leastPieceHa,
            double callOutMin,
            double overtimeMinPerMin,
            double idleMinPerMin,
            int steadyDays,
            OptionalDouble untreatedDays) {
        this(
                refillMin,
                waterTripMin,
                compostTripMin,
                waitMinPerMin,
                driveMinPerMin,
                dumpMinPerKg,
                earlyMinPerHaDay,
                movedMin,
                scrapMin,
                leastPieceHa,
                callOutMin,
                overtimeMinPerMin,
                idleMinPerMin,
                steadyDays,
                untreatedDays,
                Optional.empty());
    }

    public Goals {
        if (!(refillMin >= 0
                && waterTripMin >= 0
                && compostTripMin >= 0
                && waitMinPerMin >= 0
                && driveMinPerMin >= 0
                && dumpMinPerKg >= 0
                && earlyMinPerHaDay >= 0
                && movedMin >= 0
                && scrapMin >= 0
                && leastPieceHa >= 0
                && callOutMin >= 0
                && overtimeMinPerMin >= 0
                && idleMinPerMin >= 0
                && steadyDays >= 0
                && untreatedDays.orElse(0) >= 0)) {
            throw new IllegalArgumentException("goal weights are 0 or more");
        }
    }

    /** These goals with another weight of planting without extract. */
    public Goals withUntreatedDays(OptionalDouble other) {
        return with(other, byMoney);
    }

    /** These goals with other prices to judge plans by, or none. */
    public Goals withByMoney(Optional<Costs> prices) {
        return with(untreatedDays, prices);
    }

    private Goals with(OptionalDouble otherUntreatedDays, Optional<Costs> prices) {
        return new Goals(
                refillMin,
                waterTripMin,
                compostTripMin,
                waitMinPerMin,
                driveMinPerMin,
                dumpMinPerKg,
                earlyMinPerHaDay,
                movedMin,
                scrapMin,
                leastPieceHa,
                callOutMin,
                overtimeMinPerMin,
                idleMinPerMin,
                steadyDays,
                otherUntreatedDays,
                prices);
    }
}

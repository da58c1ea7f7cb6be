package freshfurrow.model.season;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What a season costs its people, in money of one currency; each price is 0 or more.
 *
 * @param currency code of ISO 4217, where it is told
 * @param labourPerH for one person with each machine, per hour at work
 * @param fuelPerH of a machine at work, per hour
 * @param fuelPerKm of a machine on the road
 * @param compostPerKg of compost taken from a lot
 * @param latePerHaDay loss of yield for each hectare planted a day after its window
 * @param unservedPerHa loss for each hectare not planted
 * @param untreatedPerHa loss for each hectare planted without extract
 * @param waterPerL of water drawn
 * @param overtimePerH of planting past a day's last hours, all told: hours at work end with the last hours
 * @param yearly what a machine costs a year whether it works or not, by its id; machines that are not named cost nothing
 */
public record Costs(
        Optional<String> currency,
        double labourPerH,
        double fuelPerH,
        double fuelPerKm,
        double compostPerKg,
        double latePerHaDay,
        double unservedPerHa,
        double untreatedPerHa,
        double waterPerL,
        double overtimePerH,
        Map<String, Double> yearly) {
    public Costs {
        yearly = Collections.unmodifiableMap(new LinkedHashMap<>(yearly));
        if (!(labourPerH >= 0
                && fuelPerH >= 0
                && fuelPerKm >= 0
                && compostPerKg >= 0
                && latePerHaDay >= 0
                && unservedPerHa >= 0
                && untreatedPerHa >= 0
                && waterPerL >= 0
                && overtimePerH >= 0
                && yearly.values().stream().allMatch(cost -> cost >= 0))) {
            throw new IllegalArgumentException("a price is below 0");
        }
    }

    /** What all machines together cost a year. */
    public double yearlySum() {
        return yearly.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** What one of its unit costs, 0 or more. */
    public double price(CostItem item) {
        return switch (item) {
            case WORK -> labourPerH + fuelPerH;
            case ROAD -> fuelPerKm;
            case COMPOST -> compostPerKg;
            case LATE -> latePerHaDay;
            case UNPLANTED -> unservedPerHa;
            case UNTREATED -> untreatedPerHa;
            case WATER -> waterPerL;
            case OVERTIME -> overtimePerH;
        };
    }

    /** What so much of everything costs, without what machines cost a year. */
    public double of(ToDoubleFunction<CostItem> amounts) {
        double cost = 0;
        for (CostItem item : CostItem.values()) {
            cost += price(item) * amounts.applyAsDouble(item);
        }
        return cost;
    }

    /** Whether anything but what machines cost a year has a price above 0. */
    public boolean hasPrice() {
        return of(item -> 1) > 0;
    }
}

package freshfurrow.app.season;

import freshfurrow.model.season.CostItem;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.bounds.LeastBill;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What planting costs at the least, in compost and planting time, where plans are judged by money; and whether leaving fields out is cheaper.
 *
 * @param leastPerHa of the field that it costs least on, per hectare
 * @param mostPerHa of the field that it costs most on, per hectare
 * @param cheaperLeftOut fields on which it costs more than unplanted area does
 */
public record PlantingCosts(double leastPerHa, double mostPerHa, int cheaperLeftOut) {
    /** Empty where plans are not judged by money, or no field may be planted. */
    static Optional<PlantingCosts> of(CompiledSeason season) {
        return season.season().goals().byMoney().flatMap(prices -> {
            LeastBill bill = new LeastBill(season, prices);
            double[] perHa = IntStream.range(0, season.fieldCount())
                    .mapToDouble(bill::plantedPerHa)
                    .filter(Double::isFinite)
                    .sorted()
                    .toArray();
            double unplanted = prices.price(CostItem.UNPLANTED);
            return perHa.length == 0
                    ? Optional.empty()
                    : Optional.of(new PlantingCosts(perHa[0], perHa[perHa.length - 1], (int) Arrays.stream(perHa)
                            .filter(cost -> cost > unplanted)
                            .count()));
        });
    }
}

package freshfurrow.app.springs;

import freshfurrow.app.refusal.Refused;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.model.supply.SupplyNeeds;
import freshfurrow.solver.lived.SpringProgress;
import freshfurrow.solver.lived.SupplySprings;
import java.util.List;

/**
 * The compost and water that a season uses in the springs of its weather record.
 *
 * @param springs in which it was counted
 */
public record SeasonSupply(Season season, SupplyNeeds needs, SpringCount springs) {
    /**
     * Counts it. Blocks until all springs are lived.
     *
     * @throws Refused when the season cannot be used, or there are no such springs
     */
    public static SeasonSupply of(SupplyOrder order, SpringProgress progress) {
        Reading.Valid read = order.season().read();
        SeasonSprings weather = SeasonSprings.of(read, order.seed());
        List<Integer> numbers = weather.those(order.springs());
        SupplyNeeds needs = new SupplySprings(weather, order.threads(), progress)
                .needs(read.season(), numbers, order.steps(), order.seed(), order.sure());
        return new SeasonSupply(read.season(), needs, weather.count(numbers));
    }
}

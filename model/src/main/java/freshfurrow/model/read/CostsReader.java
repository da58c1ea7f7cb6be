package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Costs;
import java.util.Collection;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The prices of a season file; what is left out costs nothing. */
final class CostsReader {
    private static final Range PRICE = Range.from0(1e6, "0 to 1,000,000 an hour");
    private static final Range PRICE_PER_KM = Range.from0(1e6, "0 to 1,000,000 a kilometre");
    private static final Range PRICE_PER_KG = Range.from0(1e6, "0 to 1,000,000 a kilogram");
    private static final Range PRICE_PER_HA = Range.from0(1e6, "0 to 1,000,000 a hectare");
    private static final Range PRICE_PER_L = Range.from0(1e6, "0 to 1,000,000 a litre");
    private static final Range YEARLY = Range.from0(1e8, "0 to 100,000,000");

    private CostsReader() {}

    /** The prices, where there are any, with yearly costs of the machines of these ids. */
    static Optional<Costs> read(Keys season, Collection<String> machines) {
        return season.keys("costs").map(own -> {
            Costs costs = new Costs(
                    own.text("currency").flatMap(code -> currency(own, code)),
                    price(own, "labour", Kind.PRICE_PER_TIME, PRICE),
                    price(own, "fuelWork", Kind.PRICE_PER_TIME, PRICE),
                    price(own, "fuelRoad", Kind.PRICE_PER_DISTANCE, PRICE_PER_KM),
                    price(own, "compost", Kind.PRICE_PER_MASS, PRICE_PER_KG),
                    price(own, "late", Kind.PRICE_PER_AREA_DAY, PRICE_PER_HA),
                    price(own, "unserved", Kind.PRICE_PER_AREA, PRICE_PER_HA),
                    price(own, "untreated", Kind.PRICE_PER_AREA, PRICE_PER_HA),
                    price(own, "water", Kind.PRICE_PER_VOLUME, PRICE_PER_L),
                    price(own, "overtime", Kind.PRICE_PER_TIME, PRICE),
                    yearly(own, machines));
            own.refuseOthers();
            return costs;
        });
    }

    private static double price(Keys own, String key, Kind kind, Range range) {
        return own.optionalQuantity(key, kind, range).orElse(0.0);
    }

    private static Map<String, Double> yearly(Keys own, Collection<String> machines) {
        Map<String, Double> yearly = new LinkedHashMap<>();
        own.keys("yearly").ifPresent(costs -> {
            machines.forEach(id -> costs.number(id, YEARLY).ifPresent(cost -> yearly.put(id, cost)));
            costs.refuseOthers();
        });
        return yearly;
    }

    private static Optional<String> currency(Keys own, String code) {
        try {
            return Optional.of(Currency.getInstance(code).getCurrencyCode());
        } catch (IllegalArgumentException e) {
            own.problem("currency", "'" + code + "' is not a currency", "write its code in ISO 4217, like USD or EUR");
            return Optional.empty();
        }
    }
}

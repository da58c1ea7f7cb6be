package freshfurrow.model.plan;

import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What a plan costs by its season's prices, without what machines cost a year.
 *
 * @param currency code of ISO 4217, where the season tells it
 * @param lines what has a price above 0, in the order of {@link CostItem}
 */
public record Bill(Optional<String> currency, List<Line> lines) {
    private static final double HUNDREDTHS = 100;
    private static final double MILLIONTHS = 1e6;

    public Bill {
        lines = List.copyOf(lines);
    }

    /**
     * One of its lines.
     *
     * @param amount in the unit of the item, 0 or more
     * @param price of one unit, above 0
     * @param cost the product, to hundredths of the currency
     */
    public record Line(CostItem item, double amount, double price, double cost) {}

    /** The bill for so much of everything. */
    public static Bill of(Costs costs, ToDoubleFunction<CostItem> amounts) {
        List<Line> lines = new ArrayList<>();
        for (CostItem item : CostItem.values()) {
            double price = costs.price(item);
            if (price > 0) {
                double amount = amounts.applyAsDouble(item);
                lines.add(new Line(
                        item,
                        rounded(amount, MILLIONTHS),
                        rounded(price, MILLIONTHS),
                        rounded(price * amount, HUNDREDTHS)));
            }
        }
        return new Bill(costs.currency(), lines);
    }

    /** What all lines come to. */
    public double sum() {
        return rounded(lines.stream().mapToDouble(Line::cost).sum(), HUNDREDTHS);
    }

    /** What of it late, unplanted and untreated area makes: the harm of it, not the work. */
    public double harm() {
        return lines.stream()
                .filter(line -> switch (line.item()) {
                    case LATE, UNPLANTED, UNTREATED -> true;
                    case WORK, ROAD, COMPOST, WATER, OVERTIME -> false;
                })
                .mapToDouble(Line::cost)
                .sum();
    }

    private static double rounded(double figure, double parts) {
        return Math.round(figure * parts) / parts;
    }
}

package freshfurrow.cli.words;

import freshfurrow.app.season.PlantingCosts;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.MoneyText;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The prices that plans are judged by, what has none, and where they make leaving fields out pay. */
final class PricesSummary {
    private final Season season;
    private final Optional<PlantingCosts> planting;
    private final WorkWords words;

    PricesSummary(Season season, Optional<PlantingCosts> planting) {
        this.season = season;
        this.planting = planting;
        words = WorkWords.of(season);
    }

    /** A line each; nothing where plans are not judged by money. */
    List<String> entries() {
        List<String> entries = new ArrayList<>();
        season.goals().byMoney().ifPresent(prices -> {
            MoneyText money = money(prices);
            entries.add(items(prices, true)
                    .map(item -> MoneyText.name(item) + " " + money.price(item, prices.price(item)))
                    .collect(Collectors.joining(", ")));
            String free = items(prices, false).map(MoneyText::name).collect(Collectors.joining(", "));
            if (!free.isEmpty()) {
                entries.add("no price, and so no say: " + free);
            }
            planting.ifPresent(costs -> daysLate(prices, costs).ifPresent(entries::add));
        });
        return entries;
    }

    private Optional<String> daysLate(Costs prices, PlantingCosts costs) {
        double late = prices.price(CostItem.LATE);
        double days = (prices.price(CostItem.UNPLANTED) - costs.leastPerHa()) / late;
        return late > 0 && days >= 0 && days < season.days()
                ? Optional.of("a field is cheaper left out than " + words.done()
                        + String.format(Locale.ROOT, " more than %.0f days late", Math.ceil(days)))
                : Optional.empty();
    }

    /** A sentence each. */
    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        season.goals().byMoney().ifPresent(prices -> {
            planting.filter(costs -> costs.cheaperLeftOut() > 0)
                    .ifPresent(costs -> cautions.add(leavingOut(prices, costs)));
            String overtime = season.applicators().stream()
                    .filter(planter -> planter.overtimeS() > 0)
                    .map(Applicator::id)
                    .collect(Collectors.joining(", "));
            if (!overtime.isEmpty() && prices.price(CostItem.OVERTIME) == 0 && prices.price(CostItem.WORK) > 0) {
                cautions.add(
                        overtime + ": hours past the last of a day cost nothing, as `costs.overtime` is not given.");
            }
        });
        return cautions;
    }

    private String leavingOut(Costs prices, PlantingCosts costs) {
        MoneyText money = money(prices);
        return "Leaving fields out pays: " + words.undone() + " area costs "
                + money.price(CostItem.UNPLANTED, prices.price(CostItem.UNPLANTED)) + ", and " + words.noun()
                + " costs more on " + Figures.count(costs.cheaperLeftOut(), "field", "fields")
                + ", in compost and planting time alone up to " + money.price(CostItem.UNPLANTED, costs.mostPerHa())
                + ". The cheapest plan leaves them out; the price of such area should be what their crop is worth.";
    }

    private MoneyText money(Costs prices) {
        return new MoneyText(season.units(), prices.currency());
    }

    private static Stream<CostItem> items(Costs prices, boolean priced) {
        return Arrays.stream(CostItem.values()).filter(item -> prices.price(item) > 0 == priced);
    }
}

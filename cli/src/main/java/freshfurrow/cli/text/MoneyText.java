package freshfurrow.cli.text;

import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.CostItem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;

/** Money, and what has a price, as people read them: in their units, with the code of their currency where they told it. */
public final class MoneyText {
    /** Smaller prices are shown with four digits that count. */
    private static final double CENTS_FROM = 1;

    private final Figures figures;
    private final Optional<String> currency;

    public MoneyText(DisplayUnits units, Optional<String> currency) {
        figures = new Figures(units);
        this.currency = currency;
    }

    /** A sum, as {@code 4,271.20 USD}. */
    public String sum(double money) {
        return String.format(Locale.ROOT, "%,.2f", money == 0 ? 0.0 : money)
                + currency.map(code -> " " + code).orElse("");
    }

    /** What has a price, as it stands in a list. */
    public static String name(CostItem item) {
        return switch (item) {
            case WORK -> "hours";
            case ROAD -> "roads";
            case COMPOST -> "compost";
            case LATE -> "late";
            case UNPLANTED -> "unplanted";
            case UNTREATED -> "untreated";
            case WATER -> "water";
            case OVERTIME -> "overtime";
        };
    }

    /** An amount, as {@code 112.4 h of machines at work}. */
    public String amount(CostItem item, double amount) {
        return switch (item) {
            case WORK -> hours(amount) + " of machines at work";
            case OVERTIME -> hours(amount) + " past the last hours of days";
            case ROAD -> figures.distance(amount);
            case COMPOST -> figures.mass(amount);
            case LATE -> figures.areaDays(amount);
            case UNPLANTED, UNTREATED -> figures.area(amount);
            case WATER -> figures.volume(amount);
        };
    }

    private static String hours(double hours) {
        return String.format(Locale.ROOT, "%,.1f h", hours);
    }

    /** A price, as {@code 0.08/lb}. */
    public String price(CostItem item, double price) {
        DisplayUnits units = figures.units();
        return switch (item) {
            case WORK, OVERTIME -> price(price) + "/h";
            case ROAD ->
                price(price / units.distance().fromKilometres(1)) + "/"
                        + units.distance().symbol();
            case COMPOST ->
                price(price / units.mass().fromKilograms(1)) + "/"
                        + units.mass().symbol();
            case LATE ->
                price(price / units.area().fromHectares(1)) + "/" + units.area().symbol() + "/d";
            case UNPLANTED, UNTREATED ->
                price(price / units.area().fromHectares(1)) + "/" + units.area().symbol();
            case WATER ->
                price(price / units.volume().fromLitres(1)) + "/"
                        + units.volume().symbol();
        };
    }

    private static String price(double price) {
        if (price >= CENTS_FROM || price == 0) {
            return String.format(Locale.ROOT, "%,.2f", price);
        }
        String text = new BigDecimal(price)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
        return text.matches("0\\.\\d") ? text + "0" : text;
    }
}

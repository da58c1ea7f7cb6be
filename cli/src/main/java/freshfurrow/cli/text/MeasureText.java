package freshfurrow.cli.text;

import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.PairedDifference;
import freshfurrow.model.compare.Spread;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** What variants are compared by, in words and in the units of a season's people. */
public final class MeasureText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE MM-dd", Locale.ENGLISH);
    private static final double DAY_S = 86_400;

    private final LivingRules rules;
    private final int endS;

    public MeasureText(LivingRules rules) {
        this.rules = rules;
        endS = (int) (ChronoUnit.DAYS.between(rules.first(), rules.last()) + 1) * (int) DAY_S;
    }

    /** What it is called, with its unit. */
    public String label(Measure measure) {
        String area = rules.units().area().symbol();
        return switch (measure) {
            case FINISH -> "finish";
            case LATE -> "late " + area + "-days";
            case UNSERVED -> "not planted, " + area;
            case FILLS -> "planter fills";
            case WATER_TRIPS -> "water trips";
            case WAIT -> "planters waiting, h";
            case RIG_USE -> "rigs busy, % of their hours at work";
            case DUMPED -> "compost let out unused, " + rules.units().mass().symbol();
            case WORK -> "hours at work, all machines";
            case DRIVE -> "road, " + rules.units().distance().symbol();
        };
    }

    /** A figure in the unit of its label: days for a finish. */
    public double figure(Measure measure, double si) {
        return switch (measure) {
            case FINISH -> si / DAY_S;
            case LATE, UNSERVED -> rules.units().area().fromHectares(si);
            case FILLS, WATER_TRIPS, WAIT, WORK -> si;
            case RIG_USE -> si * 100;
            case DUMPED -> rules.units().mass().fromKilograms(si);
            case DRIVE -> rules.units().distance().fromKilometres(si);
        };
    }

    /** A figure as people read it; a finish is a date. */
    public String value(Measure measure, double si) {
        return measure == Measure.FINISH ? date(si) : number(figure(measure, si));
    }

    /** A difference as people read it, with its sign; of finishes, in days. */
    public String difference(Measure measure, double si) {
        String text = number(figure(measure, si));
        String signed = text.startsWith("-") || isZero(text) ? text : "+" + text;
        return measure == Measure.FINISH ? signed + " d" : signed;
    }

    /** By how much the luck of plans may move a figure either way. */
    public String luck(Measure measure, double si) {
        return "±" + number(figure(measure, si)) + (measure == Measure.FINISH ? " d" : "");
    }

    /** A median with what one spring in ten is below and above. */
    public String spread(Measure measure, Spread spread) {
        return value(measure, spread.median()) + " (" + value(measure, spread.low()) + ", "
                + value(measure, spread.high()) + ")";
    }

    /** A mean difference with its 95 % interval. */
    public String differenceWithInterval(Measure measure, PairedDifference difference) {
        return difference(measure, difference.mean()) + " (" + difference(measure, difference.lower()) + " to "
                + difference(measure, difference.upper()) + ")";
    }

    /** Money of a median spring, with what one spring in ten is below and above. */
    public String money(Spread spread) {
        return money(spread.median()) + " (" + money(spread.low()) + ", " + money(spread.high()) + ")";
    }

    /** Money, as {@code 12,300 USD}. */
    public String money(double amount) {
        String text = String.format(Locale.ROOT, "%,.0f", amount);
        return (text.equals("-0") ? "0" : text)
                + rules.currency().map(code -> " " + code).orElse("");
    }

    private String date(double si) {
        if (si >= endS) {
            return "not by " + DAY.format(rules.last());
        }
        LocalDate date = rules.first().plusDays((long) Math.floor(si / DAY_S));
        return DAY.format(date);
    }

    private static String number(double figure) {
        String text = String.format(Locale.ROOT, Math.abs(figure) >= 100 ? "%,.0f" : "%.1f", figure);
        return text.equals("-0.0") ? "0.0" : text;
    }

    private static boolean isZero(String text) {
        return text.equals("0.0");
    }
}

package freshfurrow.cli.text;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.compare.LivingRules;
import freshfurrow.model.compare.Measure;
import freshfurrow.model.compare.PairedDifference;
import freshfurrow.model.compare.Spread;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** What variants are compared by, in words and in the units of a season's people. */
public final class MeasureText {
    private final LivingRules rules;
    private final WorkWords words;
    private final DateText dates;
    private final int endS;

    public MeasureText(LivingRules rules) {
        this.rules = rules;
        words = new WorkWords(rules.works());
        dates = new DateText(rules.units().clock());
        endS = (int) (ChronoUnit.DAYS.between(rules.first(), rules.last()) + 1) * DAY_S;
    }

    /** What it is called, with its unit. */
    public String label(Measure measure) {
        String area = rules.units().area().symbol();
        return switch (measure) {
            case FINISH -> "finish";
            case LATE -> "late " + area + "-days";
            case UNSERVED -> words.undone() + " " + area;
            case TREATED -> "planted with extract (% of planted area)";
            case FILLS -> words.machine() + " fills";
            case WATER_TRIPS -> "water trips";
            case WAIT -> "waiting of " + words.machines() + " (h)";
            case RIG_USE -> "rigs busy (% of working hours)";
            case STALE -> "stale loads";
            case DUMPED -> "compost dumped (" + rules.units().mass().symbol() + ")";
            case WORK -> "work of all machines (h)";
            case DRIVE -> "driving (" + rules.units().distance().symbol() + ")";
        };
    }

    /** A difference that is not nothing, as a clause after 'With it': {@code planters wait 19.9 h less}. */
    public String change(Measure measure, double si) {
        double figure = figure(measure, si);
        String size = number(Math.abs(figure));
        String fewer = size + (figure < 0 ? " fewer " : " more ");
        String less = figure < 0 ? " less" : " more";
        return switch (measure) {
            case FINISH -> "you finish " + size + " days " + (figure < 0 ? "sooner" : "later");
            case LATE, UNSERVED -> "there are " + fewer + label(measure);
            case TREATED -> size + " %" + less + " of the planted area gets extract";
            case FILLS -> words.machines() + " take " + fewer + "fills";
            case WATER_TRIPS -> "rigs make " + fewer + label(measure);
            case WAIT -> words.machines() + " wait " + size + " h" + less;
            case RIG_USE -> "rigs are busy for " + size + " % (of their working hours)" + less;
            case STALE -> fewer + (size.equals("1") ? "load goes stale" : "loads go stale");
            case DUMPED -> size + " " + rules.units().mass().symbol() + less + " compost is dumped";
            case WORK -> "machines work " + size + " h" + less;
            case DRIVE ->
                "machines drive " + size + " " + rules.units().distance().symbol() + less;
        };
    }

    /** A figure in the unit of its label: days for a finish. */
    public double figure(Measure measure, double si) {
        return switch (measure) {
            case FINISH -> si / DAY_S;
            case LATE, UNSERVED -> rules.units().area().fromHectares(si);
            case FILLS, WATER_TRIPS, STALE, WAIT, WORK -> si;
            case RIG_USE, TREATED -> si * 100;
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

    /** By how much planning noise may move a figure either way. */
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
            return "not by " + dates.brief(rules.last());
        }
        LocalDate date = rules.first().plusDays((long) Math.floor(si / DAY_S));
        return dates.brief(date);
    }

    private static String number(double figure) {
        String text = String.format(Locale.ROOT, Math.abs(figure) >= 100 ? "%,.0f" : "%.1f", figure);
        return text.equals("-0.0") ? "0.0" : text;
    }

    private static boolean isZero(String text) {
        return text.equals("0.0");
    }
}

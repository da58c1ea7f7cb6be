package freshfurrow.cli.text;

import static freshfurrow.model.quantity.Factors.HOUR_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.DisplayUnits;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** SI figures as people of a season read them, in their units. */
public record Figures(DisplayUnits units) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE uuuu-MM-dd", Locale.ENGLISH);

    /** International inch. */
    private static final double MM_PER_INCH = 25.4;

    /** From this figure on decimals are of no use to a crew. */
    private static final double WHOLE_FROM = 100;

    /** An area, as {@code 28.2 ac} or {@code 11.41 ha}. */
    public String area(double hectares) {
        return areaFigure(hectares) + " " + units.area().symbol();
    }

    /** Area times days, as {@code 12.5 ac-days}. */
    public String areaDays(double hectareDays) {
        double figure = units.area().fromHectares(hectareDays);
        return (figure >= WHOLE_FROM ? format("%,.0f", figure) : areaFigure(hectareDays)) + " "
                + units.area().symbol() + "-days";
    }

    /** Water or mix, as {@code 1,200 gal}. */
    public String volume(double litres) {
        return shortest(units.volume().fromLitres(litres)) + " "
                + units.volume().symbol();
    }

    /** Compost or a load on wheels, as {@code 12.4 lb}. */
    public String mass(double kilograms) {
        return shortest(units.mass().fromKilograms(kilograms)) + " "
                + units.mass().symbol();
    }

    /** A depth of rain or of water in the ground, as {@code 0.8 in} or {@code 20.3 mm}: inches go with acres. */
    public String rain(double millimetres) {
        return units.area() == AreaUnit.ACRE
                ? format("%.2f", millimetres / MM_PER_INCH).replaceFirst("0$", "") + " in"
                : shortest(millimetres) + " mm";
    }

    /** A way by road, as {@code 1.2 mi}. */
    public String distance(double kilometres) {
        return format("%,.1f", units.distance().fromKilometres(kilometres))
                + " "
                + units.distance().symbol();
    }

    /** A number of things, as {@code 1 fill} or {@code 2 fills}. */
    public static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** 3,210. */
    public static String count(long number) {
        return format("%,d", number);
    }

    /** A share of one, as {@code 87 %}; rounded down, so that only what is full is called 100 %. */
    public static String percent(double share) {
        return format("%.0f %%", Math.floor(share * 100 + 1e-3));
    }

    /** How full a tank is, as {@code tank 80 % full}. */
    public static String tank(double share) {
        String percent = percent(share);
        return percent.equals("100 %") ? "tank full" : "tank " + percent + " full";
    }

    /** A length of time of 0 or more, in minutes begun and ended, as {@code 2 h 05 min}. */
    public static String span(Duration duration) {
        long hours = duration.toHours();
        return hours == 0 ? duration.toMinutes() + " min" : format("%d h %02d min", hours, duration.toMinutesPart());
    }

    /** A length of time in whole seconds, as {@code 1 h 54 min 10 s}; parts that are 0 are left out. */
    public static String toTheSecond(long seconds) {
        StringBuilder text = new StringBuilder();
        part(text, seconds / HOUR_S, "h");
        part(text, seconds % HOUR_S / MINUTE_S, "min");
        part(text, seconds % MINUTE_S, "s");
        return text.isEmpty() ? "0 min" : text.toString();
    }

    private static void part(StringBuilder text, long figure, String unit) {
        if (figure > 0) {
            text.append(text.isEmpty() ? "" : " ").append(figure).append(' ').append(unit);
        }
    }

    /** As {@code Tue 2027-04-20}. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** As {@code Tuesday, April 20, 2027} or {@code Tuesday 20 April 2027}. */
    public String longDay(LocalDate date) {
        return new DateText(units.clock()).full(date);
    }

    /** The exact time of day in minutes begun, as {@code 07:05} or {@code 7:05 am}. */
    public String clock(LocalDateTime time) {
        return clock(time, time.toLocalDate());
    }

    /** The same, with its date when that is another than the one spoken of. */
    public String clock(LocalDateTime time, LocalDate date) {
        String clock = new ClockText(units.clock()).timeOn(date, time);
        return ClockText.isOn(date, time) ? clock : clock + " on " + day(time.toLocalDate());
    }

    /** As {@code Tue 2027-04-20 07:10}. */
    public String moment(LocalDateTime time) {
        return day(time.toLocalDate()) + " " + clock(time);
    }

    /** As {@code Tue 2027-04-20 07:10 to 09:12}, with the second date where it is another. */
    public String fromTo(LocalDateTime start, LocalDateTime end) {
        boolean sameDay = end.toLocalDate().equals(start.toLocalDate());
        return moment(start) + " to " + (sameDay ? clock(end) : moment(end));
    }

    /** Times for crews on a date. */
    public CrewClock crewClock(LocalDate date) {
        return new CrewClock(units.clock(), date);
    }

    private String areaFigure(double hectares) {
        String pattern = "%,." + units.area().decimals() + "f";
        String figure = format(pattern, units.area().fromHectares(hectares));
        boolean vanishes = hectares >= Plan.LEAST_HA && figure.equals(format(pattern, 0.0));
        return vanishes ? "<" + format(pattern, Math.pow(10, -units.area().decimals())) : figure;
    }

    /** One decimal where it says something. */
    private static String shortest(double figure) {
        if (Math.abs(figure) >= WHOLE_FROM) {
            return format("%,.0f", figure);
        }
        String tenths = format("%.1f", figure);
        if (figure > 0 && tenths.equals("0.0")) {
            return "<0.1";
        }
        return tenths.endsWith(".0") ? tenths.substring(0, tenths.length() - 2) : tenths;
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}

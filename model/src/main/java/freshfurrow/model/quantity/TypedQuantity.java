package freshfurrow.model.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity as people type it, written as a season file has it: {@code 1,200} as {@code 1200 gal}, {@code 10 minutes} as
 * {@code 10 min}, {@code 1 h 30 min} as {@code 90 min}. In units that are not of the United States a comma parts decimals, {@code 42,5 ha}, where
 * it cannot part thousands, and nothing is taken to be meant by it where it can do either. In those of the United States it parts
 * thousands where three digits follow it, and else nothing is taken to be meant by it.
 */
public final class TypedQuantity {
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u202f]+");
    private static final Pattern FORM =
            Pattern.compile("([+-]?)(\\d{1,3}(?:,\\d{3})+|\\d+|(?=\\.))(\\.\\d*)? ?([^\\d.,+-].*)?");
    private static final Pattern ONE_COMMA = Pattern.compile("([+-]?\\d+),(\\d+)( ?[^\\d.,+-].*)?");
    private static final Pattern COULD_BE_THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");
    private static final Set<String> OF_THE_UNITED_STATES =
            Set.of("ac", "gal", "lb", "ft", "in", "mi", "mph", "floz", "psi", "F");
    private static final Set<String> METRIC =
            Set.of("ha", "m2", "L", "mL", "m3", "kg", "g", "t", "m", "cm", "mm", "km", "kPa", "bar", "C");

    private static final Pattern HOURS_AND_MINUTES =
            Pattern.compile("(\\d+) ?(?:h|hr|hrs|hour|hours) ?(?:and )?(\\d+) ?(?:m|min|mins|minute|minutes)?");
    private static final Pattern PER = Pattern.compile(" (?:per|an?) ");
    private static final Pattern SHORT_TONS = Pattern.compile("(\\S+) ?(?:short )?tons?", Pattern.CASE_INSENSITIVE);
    private static final BigDecimal POUNDS_PER_SHORT_TON = BigDecimal.valueOf(2000);
    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

    /** What people write for parts of units; those of a unit with a slash are looked up one by one. */
    private static final Map<String, String> PARTS = Map.ofEntries(
            Map.entry("acre", "ac"),
            Map.entry("acres", "ac"),
            Map.entry("hectare", "ha"),
            Map.entry("hectares", "ha"),
            Map.entry("gallon", "gal"),
            Map.entry("gallons", "gal"),
            Map.entry("gals", "gal"),
            Map.entry("l", "L"),
            Map.entry("liter", "L"),
            Map.entry("liters", "L"),
            Map.entry("litre", "L"),
            Map.entry("litres", "L"),
            Map.entry("m³", "m3"),
            Map.entry("m²", "m2"),
            Map.entry("pound", "lb"),
            Map.entry("pounds", "lb"),
            Map.entry("lbs", "lb"),
            Map.entry("kgs", "kg"),
            Map.entry("kilogram", "kg"),
            Map.entry("kilograms", "kg"),
            Map.entry("kilo", "kg"),
            Map.entry("kilos", "kg"),
            Map.entry("tonne", "t"),
            Map.entry("tonnes", "t"),
            Map.entry("foot", "ft"),
            Map.entry("feet", "ft"),
            Map.entry("'", "ft"),
            Map.entry("inch", "in"),
            Map.entry("inches", "in"),
            Map.entry("\"", "in"),
            Map.entry("mile", "mi"),
            Map.entry("miles", "mi"),
            Map.entry("meter", "m"),
            Map.entry("meters", "m"),
            Map.entry("metre", "m"),
            Map.entry("metres", "m"),
            Map.entry("kph", "km/h"),
            Map.entry("kmh", "km/h"),
            Map.entry("minute", "min"),
            Map.entry("minutes", "min"),
            Map.entry("mins", "min"),
            Map.entry("hour", "h"),
            Map.entry("hours", "h"),
            Map.entry("hr", "h"),
            Map.entry("hrs", "h"),
            Map.entry("second", "s"),
            Map.entry("seconds", "s"),
            Map.entry("sec", "s"),
            Map.entry("secs", "s"),
            Map.entry("day", "d"),
            Map.entry("days", "d"));

    private static final Map<String, String> WHOLES = Map.of(
            "gpm",
            "gal/min",
            "gpa",
            "gal/ac",
            "lpm",
            "L/min",
            "miles per hour",
            "mph",
            "miles/h",
            "mph",
            "mi/h",
            "mph");

    private TypedQuantity() {}

    /**
     * The quantity as a file has it; empty when it cannot be told what is meant, and a reader of the file would have to ask.
     *
     * @param usual the unit that is meant where none is typed; none when that is empty
     */
    public static Optional<String> asWritten(String typed, Kind kind, String usual) {
        String text = SPACES.matcher(typed).replaceAll(" ").strip();
        Optional<String> mixed = kind == Kind.TIME ? hoursAndMinutes(text) : Optional.empty();
        Optional<String> tons = kind == Kind.MASS && usual.equals("lb") ? shortTons(text) : Optional.empty();
        return mixed.or(() -> tons).or(() -> plain(text, kind, usual));
    }

    /** Where pounds are usual, a ton is 2,000 of them; elsewhere it might be a tonne, and is not guessed. */
    private static Optional<String> shortTons(String text) {
        Matcher tons = SHORT_TONS.matcher(text);
        return Optional.of(tons)
                .filter(Matcher::matches)
                .flatMap(any -> plain(tons.group(1), Kind.MASS, "lb"))
                .map(pounds -> new BigDecimal(pounds.substring(0, pounds.indexOf(' ')))
                                .multiply(POUNDS_PER_SHORT_TON)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " lb");
    }

    private static Optional<String> hoursAndMinutes(String text) {
        Matcher time = HOURS_AND_MINUTES.matcher(text.toLowerCase(Locale.ROOT));
        return time.matches()
                ? Optional.of(new BigDecimal(time.group(1))
                                .multiply(MINUTES)
                                .add(new BigDecimal(time.group(2)))
                                .toPlainString()
                        + " min")
                : Optional.empty();
    }

    private static Optional<String> plain(String text, Kind kind, String usual) {
        Matcher comma = ONE_COMMA.matcher(text);
        if (comma.matches()) {
            Optional<String> unit = Optional.ofNullable(comma.group(3))
                    .map(String::strip)
                    .map(typed -> unit(typed, kind))
                    .orElse(Optional.of(usual));
            boolean couldBeThousands = COULD_BE_THOUSANDS
                    .matcher(comma.group(1) + "," + comma.group(2))
                    .matches();
            if (couldBeThousands && unit.filter(is -> isOf(METRIC, is)).isPresent()) {
                return Optional.empty();
            }
            if (!couldBeThousands
                    && unit.filter(is -> !isOf(OF_THE_UNITED_STATES, is)).isPresent()) {
                return plain(text.replace(',', '.'), kind, usual);
            }
        }
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        String figure = form.group(1).replace("+", "")
                + form.group(2).replace(",", "")
                + Optional.ofNullable(form.group(3)).orElse("");
        return Optional.ofNullable(form.group(4))
                .map(String::strip)
                .map(unit -> unit(unit, kind))
                .orElseGet(() -> Optional.of(usual).filter(kind::has))
                .map(unit -> figure + " " + unit);
    }

    private static boolean isOf(Set<String> system, String unit) {
        return Arrays.stream(unit.split("/", -1)).anyMatch(system::contains);
    }

    private static Optional<String> unit(String typed, Kind kind) {
        if (kind.has(typed)) {
            return Optional.of(typed);
        }
        String lower = typed.toLowerCase(Locale.ROOT);
        List<String> parts = new ArrayList<>();
        for (String part : PER.matcher(lower).replaceAll("/").split("/", -1)) {
            String known = part.strip();
            parts.add(PARTS.getOrDefault(known, known));
        }
        String joined = String.join("/", parts);
        return Optional.of(WHOLES.getOrDefault(lower, WHOLES.getOrDefault(joined, joined)))
                .flatMap(unit -> kind.symbols().stream()
                        .filter(symbol -> symbol.equalsIgnoreCase(unit))
                        .findFirst());
    }
}

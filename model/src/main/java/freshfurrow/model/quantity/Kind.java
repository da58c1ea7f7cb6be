package freshfurrow.model.quantity;

import static freshfurrow.model.quantity.KnownUnits.ACRE;
import static freshfurrow.model.quantity.KnownUnits.FAHRENHEIT;
import static freshfurrow.model.quantity.KnownUnits.FLUID_OUNCE;
import static freshfurrow.model.quantity.KnownUnits.FOOT;
import static freshfurrow.model.quantity.KnownUnits.GALLON;
import static freshfurrow.model.quantity.KnownUnits.HECTARE;
import static freshfurrow.model.quantity.KnownUnits.INCH;
import static freshfurrow.model.quantity.KnownUnits.KILOPASCAL;
import static freshfurrow.model.quantity.KnownUnits.MILE;
import static freshfurrow.model.quantity.KnownUnits.MILE_PER_HOUR;
import static freshfurrow.model.quantity.KnownUnits.MILLIMETRE;
import static freshfurrow.model.quantity.KnownUnits.POUND;
import static freshfurrow.model.quantity.KnownUnits.PSI;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.KILOMETRE_PER_HOUR;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/** What a quantity of a season file or a command line measures, the units it may be written in and the SI unit it is kept in. */
public enum Kind {
    /** Kept in hectares. */
    AREA("an area", "40 ac", "16 ha", HECTARE, in("ac", ACRE), in("ha", HECTARE), in("m2", SQUARE_METRE)),
    /** Kept in litres. */
    VOLUME("a volume", "600 gal", "2300 L", LITRE, in("gal", GALLON), in("L", LITRE), in("m3", CUBIC_METRE)),
    /** Kept in litres. */
    CAUGHT_VOLUME(
            "a caught volume",
            "32 floz",
            "950 mL",
            LITRE,
            in("floz", FLUID_OUNCE),
            in("mL", LITRE.divide(1000)),
            in("L", LITRE),
            in("gal", GALLON)),
    /** Kept in kilograms. */
    MASS(
            "a mass",
            "25 lb",
            "11 kg",
            KILOGRAM,
            in("lb", POUND),
            in("kg", KILOGRAM),
            in("g", GRAM),
            in("t", KILOGRAM.multiply(1000))),
    /** Kept in metres. */
    LENGTH(
            "a length",
            "40 ft",
            "9 m",
            METRE,
            in("ft", FOOT),
            in("in", INCH),
            in("mi", MILE),
            in("m", METRE),
            in("cm", METRE.prefix(MetricPrefix.CENTI)),
            in("mm", MILLIMETRE),
            in("km", METRE.prefix(MetricPrefix.KILO))),
    /** Kept in metres per second. */
    SPEED(
            "a speed",
            "5 mph",
            "8 km/h",
            METRE_PER_SECOND,
            in("mph", MILE_PER_HOUR),
            in("km/h", KILOMETRE_PER_HOUR),
            in("m/s", METRE_PER_SECOND)),
    /** Kept in seconds. */
    TIME("a time", "20 min", "20 min", SECOND, in("min", MINUTE), in("h", HOUR), in("s", SECOND), in("d", DAY)),
    /** Kept in litres per hectare. */
    VOLUME_PER_AREA(
            "a volume per area",
            "16 gal/ac",
            "150 L/ha",
            LITRE.divide(HECTARE),
            in("gal/ac", GALLON.divide(ACRE)),
            in("L/ha", LITRE.divide(HECTARE)),
            in("L/ac", LITRE.divide(ACRE)),
            in("gal/ha", GALLON.divide(HECTARE))),
    /** Kept in kilograms per hectare. */
    MASS_PER_AREA(
            "a mass per area",
            "1.5 lb/ac",
            "1.7 kg/ha",
            KILOGRAM.divide(HECTARE),
            in("lb/ac", POUND.divide(ACRE)),
            in("kg/ha", KILOGRAM.divide(HECTARE)),
            in("kg/ac", KILOGRAM.divide(ACRE)),
            in("lb/ha", POUND.divide(HECTARE))),
    /** Kept in square metres per second. */
    AREA_PER_TIME(
            "an area per time",
            "12 ac/h",
            "5 ha/h",
            SQUARE_METRE.divide(SECOND),
            in("ac/h", ACRE.divide(HOUR)),
            in("ha/h", HECTARE.divide(HOUR))),
    /** Kept in litres per second. */
    FLOW(
            "a flow",
            "40 gal/min",
            "150 L/min",
            LITRE.divide(SECOND),
            in("gal/min", GALLON.divide(MINUTE)),
            in("L/min", LITRE.divide(MINUTE)),
            in("L/s", LITRE.divide(SECOND)),
            in("m3/h", CUBIC_METRE.divide(HOUR))),
    /** Kept in kilopascals. */
    PRESSURE(
            "a pressure",
            "40 psi",
            "3 bar",
            KILOPASCAL,
            in("psi", PSI),
            in("kPa", KILOPASCAL),
            in("bar", KILOPASCAL.multiply(100))),
    /** Kept in millimetres. */
    RAIN("a depth of rain", "0.8 in", "20 mm", MILLIMETRE, in("in", INCH), in("mm", MILLIMETRE)),
    /** Kept in degrees Celsius. */
    TEMPERATURE("a temperature", "20 C", "20 C", CELSIUS, in("C", CELSIUS), in("F", FAHRENHEIT)),
    /** Kept in days per millimetre. */
    DRYING(
            "a drying time per depth of rain",
            "2 d/in",
            "0.08 d/mm",
            DAY.divide(MILLIMETRE),
            in("d/in", DAY.divide(INCH)),
            in("d/mm", DAY.divide(MILLIMETRE))),
    /** Kept in minutes per kilogram. */
    TIME_PER_MASS(
            "a time per mass",
            "5 min/lb",
            "11 min/kg",
            MINUTE.divide(KILOGRAM),
            in("min/lb", MINUTE.divide(POUND)),
            in("min/kg", MINUTE.divide(KILOGRAM))),
    /** Kept in minutes per hectare. */
    TIME_PER_AREA(
            "a time per area",
            "0.02 min/ac",
            "0.05 min/ha",
            MINUTE.divide(HECTARE),
            in("min/ac", MINUTE.divide(ACRE)),
            in("min/ha", MINUTE.divide(HECTARE))),
    /** Kept in money per hour. */
    PRICE_PER_TIME("a price per time", "24 /h", "24 /h", HOUR.inverse(), in("/h", HOUR.inverse())),
    /** Kept in money per kilometre. */
    PRICE_PER_DISTANCE(
            "a price per distance",
            "0.60 /mi",
            "0.40 /km",
            METRE.prefix(MetricPrefix.KILO).inverse(),
            in("/mi", MILE.inverse()),
            in("/km", METRE.prefix(MetricPrefix.KILO).inverse())),
    /** Kept in money per kilogram. */
    PRICE_PER_MASS(
            "a price per mass",
            "0.08 /lb",
            "0.18 /kg",
            KILOGRAM.inverse(),
            in("/lb", POUND.inverse()),
            in("/kg", KILOGRAM.inverse()),
            in("/t", KILOGRAM.multiply(1000).inverse())),
    /** Kept in money per litre. */
    PRICE_PER_VOLUME(
            "a price per volume",
            "0.01 /gal",
            "0.003 /L",
            LITRE.inverse(),
            in("/gal", GALLON.inverse()),
            in("/L", LITRE.inverse()),
            in("/m3", CUBIC_METRE.inverse())),
    /** Kept in money per hectare. */
    PRICE_PER_AREA(
            "a price per area",
            "300 /ac",
            "740 /ha",
            HECTARE.inverse(),
            in("/ac", ACRE.inverse()),
            in("/ha", HECTARE.inverse())),
    /** Kept in money per hectare and day. */
    PRICE_PER_AREA_DAY(
            "a price per area and day",
            "4 /ac/d",
            "10 /ha/d",
            HECTARE.multiply(DAY).inverse(),
            in("/ac/d", ACRE.multiply(DAY).inverse()),
            in("/ha/d", HECTARE.multiply(DAY).inverse()));

    private final String noun;
    private final String inAcres;
    private final String inHectares;

    /** By symbol, in the order of messages; worked out once, as tables hold many quantities, and never changed. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Map<String, UnitConverter> toSi;

    @SafeVarargs
    Kind(String noun, String inAcres, String inHectares, Unit<?> kept, Map.Entry<String, Unit<?>>... units) {
        this.noun = noun;
        this.inAcres = inAcres;
        this.inHectares = inHectares;
        Map<String, UnitConverter> converters = new LinkedHashMap<>();
        for (Map.Entry<String, Unit<?>> unit : units) {
            converters.put(unit.getKey(), converter(unit.getValue(), kept));
        }
        this.toSi = Collections.unmodifiableMap(converters);
    }

    /** What it is, with its article, as in "a volume". */
    public String noun() {
        return noun;
    }

    /** How such a quantity is written in acres and what goes with them. */
    public String example() {
        return example(AreaUnit.ACRE);
    }

    /** How such a quantity is written, for whoever may count in acres or in hectares. */
    public String examples() {
        return inAcres.equals(inHectares) ? inAcres : inAcres + " or " + inHectares;
    }

    /** How such a quantity is written where areas are in that unit. */
    public String example(AreaUnit area) {
        return area == AreaUnit.ACRE ? inAcres : inHectares;
    }

    /** The symbols of its units. */
    public List<String> symbols() {
        return List.copyOf(toSi.keySet());
    }

    /** Whether the symbol is one of its units. */
    public boolean has(String symbol) {
        return toSi.containsKey(symbol);
    }

    /**
     * A figure in one of its units, in the unit it is kept in.
     *
     * @throws IllegalArgumentException when the symbol is not one of its units
     */
    public double toSi(double figure, String symbol) {
        UnitConverter converter = toSi.get(symbol);
        if (converter == null) {
            throw new IllegalArgumentException(symbol + " is not a unit of " + noun);
        }
        return converter.convert(figure);
    }

    private static Map.Entry<String, Unit<?>> in(String symbol, Unit<?> unit) {
        return Map.entry(symbol, unit);
    }

    private static UnitConverter converter(Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (IncommensurableException e) {
            throw new IllegalStateException(e);
        }
    }
}

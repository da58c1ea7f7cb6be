package freshfurrow.model.quantity;

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

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import systems.uom.common.USCustomary;

/** What a quantity of a season file measures, the units it may be written in and the SI unit it is kept in. */
public enum Kind {
    /** Kept in hectares. */
    AREA("an area", "40 ac"),
    /** Kept in litres. */
    VOLUME("a volume", "600 gal"),
    /** Kept in kilograms. */
    MASS("a mass", "30 lb"),
    /** Kept in metres. */
    LENGTH("a length", "40 ft"),
    /** Kept in metres per second. */
    SPEED("a speed", "5 mph"),
    /** Kept in seconds. */
    TIME("a time", "15 min"),
    /** Kept in litres per hectare. */
    VOLUME_PER_AREA("a volume per area", "20 gal/ac"),
    /** Kept in kilograms per hectare. */
    MASS_PER_AREA("a mass per area", "2 lb/ac"),
    /** Kept in litres per second. */
    FLOW("a flow", "40 gal/min"),
    /** Kept in millimetres. */
    RAIN("a depth of rain", "0.8 in"),
    /** Kept in days per millimetre. */
    DRYING("a drying time per depth of rain", "2 d/in"),
    /** Kept in minutes per kilogram. */
    TIME_PER_MASS("a time per mass", "5 min/lb"),
    /** Kept in minutes per hectare. */
    TIME_PER_AREA("a time per area", "0.02 min/ac");

    private static final Unit<?> HECTARE = SQUARE_METRE.multiply(10_000);
    private static final Unit<?> ACRE = USCustomary.FOOT.pow(2).multiply(43_560);
    private static final Unit<?> GALLON = USCustomary.GALLON_LIQUID;
    private static final Unit<?> POUND = USCustomary.POUND;
    private static final Unit<?> MILLIMETRE = METRE.prefix(MetricPrefix.MILLI);

    private final String noun;
    private final String example;

    Kind(String noun, String example) {
        this.noun = noun;
        this.example = example;
    }

    /** What it is, with its article, as in "a volume". */
    public String noun() {
        return noun;
    }

    /** How such a quantity is written. */
    public String example() {
        return example;
    }

    /** The symbols of its units. */
    public List<String> symbols() {
        return List.copyOf(units().keySet());
    }

    /** Whether the symbol is one of its units. */
    public boolean has(String symbol) {
        return units().containsKey(symbol);
    }

    /**
     * A figure in one of its units, in the unit it is kept in.
     *
     * @throws IllegalArgumentException when the symbol is not one of its units
     */
    public double toSi(double figure, String symbol) {
        Unit<?> unit = units().get(symbol);
        if (unit == null) {
            throw new IllegalArgumentException(symbol + " is not a unit of " + noun);
        }
        try {
            return unit.getConverterToAny(si()).convert(figure);
        } catch (IncommensurableException e) {
            throw new IllegalStateException(e);
        }
    }

    private Unit<?> si() {
        return switch (this) {
            case AREA -> HECTARE;
            case VOLUME -> LITRE;
            case MASS -> KILOGRAM;
            case LENGTH -> METRE;
            case SPEED -> METRE_PER_SECOND;
            case TIME -> SECOND;
            case VOLUME_PER_AREA -> LITRE.divide(HECTARE);
            case MASS_PER_AREA -> KILOGRAM.divide(HECTARE);
            case FLOW -> LITRE.divide(SECOND);
            case RAIN -> MILLIMETRE;
            case DRYING -> DAY.divide(MILLIMETRE);
            case TIME_PER_MASS -> MINUTE.divide(KILOGRAM);
            case TIME_PER_AREA -> MINUTE.divide(HECTARE);
        };
    }

    private Map<String, Unit<?>> units() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        switch (this) {
            case AREA -> {
                units.put("ac", ACRE);
                units.put("ha", HECTARE);
                units.put("m2", SQUARE_METRE);
            }
            case VOLUME -> {
                units.put("gal", GALLON);
                units.put("L", LITRE);
                units.put("m3", CUBIC_METRE);
            }
            case MASS -> {
                units.put("lb", POUND);
                units.put("kg", KILOGRAM);
                units.put("g", GRAM);
                units.put("t", KILOGRAM.multiply(1000));
            }
            case LENGTH -> {
                units.put("ft", USCustomary.FOOT);
                units.put("in", USCustomary.INCH);
                units.put("mi", USCustomary.MILE);
                units.put("m", METRE);
                units.put("cm", METRE.prefix(MetricPrefix.CENTI));
                units.put("mm", MILLIMETRE);
                units.put("km", METRE.prefix(MetricPrefix.KILO));
            }
            case SPEED -> {
                units.put("mph", USCustomary.MILE_PER_HOUR);
                units.put("km/h", KILOMETRE_PER_HOUR);
                units.put("m/s", METRE_PER_SECOND);
            }
            case TIME -> {
                units.put("min", MINUTE);
                units.put("h", HOUR);
                units.put("s", SECOND);
                units.put("d", DAY);
            }
            case VOLUME_PER_AREA -> {
                units.put("gal/ac", GALLON.divide(ACRE));
                units.put("L/ha", LITRE.divide(HECTARE));
            }
            case MASS_PER_AREA -> {
                units.put("lb/ac", POUND.divide(ACRE));
                units.put("kg/ha", KILOGRAM.divide(HECTARE));
            }
            case FLOW -> {
                units.put("gal/min", GALLON.divide(MINUTE));
                units.put("L/min", LITRE.divide(MINUTE));
                units.put("L/s", LITRE.divide(SECOND));
                units.put("m3/h", CUBIC_METRE.divide(HOUR));
            }
            case RAIN -> {
                units.put("in", USCustomary.INCH);
                units.put("mm", MILLIMETRE);
            }
            case DRYING -> {
                units.put("d/in", DAY.divide(USCustomary.INCH));
                units.put("d/mm", DAY.divide(MILLIMETRE));
            }
            case TIME_PER_MASS -> {
                units.put("min/lb", MINUTE.divide(POUND));
                units.put("min/kg", MINUTE.divide(KILOGRAM));
            }
            case TIME_PER_AREA -> {
                units.put("min/ac", MINUTE.divide(ACRE));
                units.put("min/ha", MINUTE.divide(HECTARE));
            }
        }
        return units;
    }
}

package freshfurrow.model.quantity;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import tech.units.indriya.unit.Units;

/**
 * Units of the trade that are not of the SI, and which is meant where several bear the same name, by NIST Special Publication 811
 * (2008), appendix B, and NIST Handbook 44, appendix C. A library of all such units takes longer to start than a season to read.
 */
final class KnownUnits {
    /** The international foot, 0.3048 m. */
    static final Unit<Length> FOOT = Units.METRE.multiply(3_048).divide(10_000);

    static final Unit<Length> INCH = FOOT.divide(12);

    /** The international mile, 5,280 feet. */
    static final Unit<Length> MILE = FOOT.multiply(5_280);

    static final Unit<Speed> MILE_PER_HOUR = MILE.divide(Units.HOUR).asType(Speed.class);

    static final Unit<Area> HECTARE = Units.SQUARE_METRE.multiply(10_000);

    /** The international acre, 43,560 square international feet; the US survey acre is 4 millionths larger. */
    static final Unit<Area> ACRE = FOOT.pow(2).multiply(43_560).asType(Area.class);

    /** The US liquid gallon, 231 cubic inches. */
    static final Unit<Volume> GALLON = INCH.pow(3).multiply(231).asType(Volume.class);

    /** The US fluid ounce, of which a gallon has 128. */
    static final Unit<Volume> FLUID_OUNCE = GALLON.divide(128);

    /** The avoirdupois pound, 0.45359237 kg. */
    static final Unit<Mass> POUND = Units.KILOGRAM.multiply(45_359_237).divide(100_000_000);

    /** Five ninths of a kelvin from -459.67 degrees. */
    static final Unit<Temperature> FAHRENHEIT =
            Units.KELVIN.multiply(5).divide(9).shift(459.67);

    static final Unit<Length> MILLIMETRE = Units.METRE.prefix(MetricPrefix.MILLI);

    static final Unit<Pressure> KILOPASCAL = Units.PASCAL.multiply(1000);

    /** A pound-force on a square inch: 0.45359237 kg x 9.80665 m/s2 / (0.0254 m)2. */
    static final Unit<Pressure> PSI = Units.PASCAL.multiply(0.45359237 * 9.80665 / (0.0254 * 0.0254));

    private KnownUnits() {}
}

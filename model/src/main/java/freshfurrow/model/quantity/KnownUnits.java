package freshfurrow.model.quantity;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Volume;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/** Units of the trade where several bear the same name: which gallon, pound and acre is meant. */
final class KnownUnits {
    static final Unit<Area> HECTARE = Units.SQUARE_METRE.multiply(10_000);

    /** The international acre, 43,560 square international feet; the US survey acre is 4 millionths larger. */
    static final Unit<Area> ACRE = USCustomary.FOOT.pow(2).multiply(43_560).asType(Area.class);

    /** The US liquid gallon, 231 cubic inches. */
    static final Unit<Volume> GALLON = USCustomary.GALLON_LIQUID;

    /** The US fluid ounce, of which a gallon has 128. */
    static final Unit<Volume> FLUID_OUNCE = GALLON.divide(128);

    /** The avoirdupois pound. */
    static final Unit<Mass> POUND = USCustomary.POUND;

    static final Unit<Length> MILLIMETRE = Units.METRE.prefix(MetricPrefix.MILLI);

    static final Unit<Pressure> KILOPASCAL = Units.PASCAL.multiply(1000);

    /** A pound-force on a square inch: 0.45359237 kg x 9.80665 m/s2 / (0.0254 m)2. */
    static final Unit<Pressure> PSI = Units.PASCAL.multiply(0.45359237 * 9.80665 / (0.0254 * 0.0254));

    private KnownUnits() {}
}

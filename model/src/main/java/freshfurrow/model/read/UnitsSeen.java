package freshfurrow.model.read;

import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.quantity.VolumeUnit;
import java.util.Optional;

/**
 * The units seen first for area, volume, mass and speed, which decide the units of the results: those of recipes before all
 * others. What is not seen goes with acres or hectares.
 */
final class UnitsSeen {
    private Optional<AreaUnit> area = Optional.empty();
    private Optional<VolumeUnit> volume = Optional.empty();
    private Optional<MassUnit> mass = Optional.empty();
    private Optional<DistanceUnit> distance = Optional.empty();

    /** Those of a season that is known, as if they were seen. */
    static UnitsSeen of(DisplayUnits units) {
        UnitsSeen seen = new UnitsSeen();
        seen.area = Optional.of(units.area());
        return seen;
    }

    /** How such a quantity is written in these units; in acres and what goes with them where none were seen. */
    String example(Kind kind) {
        return kind.example(family());
    }

    private AreaUnit family() {
        boolean isMetric = volume.equals(Optional.of(VolumeUnit.LITRE))
                || mass.equals(Optional.of(MassUnit.KILOGRAM))
                || distance.equals(Optional.of(DistanceUnit.KILOMETRE));
        return area.orElse(isMetric ? AreaUnit.HECTARE : AreaUnit.ACRE);
    }

    void saw(Kind kind, String symbol) {
        switch (kind) {
            case AREA -> saw(symbol);
            case VOLUME -> saw(symbol);
            case MASS -> saw(symbol);
            case VOLUME_PER_AREA, MASS_PER_AREA -> {
                saw(symbol.substring(0, symbol.indexOf('/')));
                saw(symbol.substring(symbol.indexOf('/') + 1));
            }
            case SPEED -> {
                if (distance.isEmpty()) {
                    distance = Optional.of(symbol.equals("mph") ? DistanceUnit.MILE : DistanceUnit.KILOMETRE);
                }
            }
            default -> {}
        }
    }

    DisplayUnits choice() {
        DisplayUnits family = area.orElse(AreaUnit.HECTARE) == AreaUnit.ACRE ? DisplayUnits.US : DisplayUnits.METRIC;
        return new DisplayUnits(
                family.area(),
                volume.orElse(family.volume()),
                mass.orElse(family.mass()),
                distance.orElse(family.distance()));
    }

    private void saw(String symbol) {
        switch (symbol) {
            case "ac", "ha" ->
                area = area.or(() -> Optional.of(symbol.equals("ac") ? AreaUnit.ACRE : AreaUnit.HECTARE));
            case "gal", "L" ->
                volume = volume.or(() -> Optional.of(symbol.equals("gal") ? VolumeUnit.GALLON : VolumeUnit.LITRE));
            case "lb", "kg" ->
                mass = mass.or(() -> Optional.of(symbol.equals("lb") ? MassUnit.POUND : MassUnit.KILOGRAM));
            default -> {}
        }
    }
}

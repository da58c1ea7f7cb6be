package freshfurrow.cli.words;

import freshfurrow.cli.text.Figures;
import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.Factors;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.roads.MachineSize;
import freshfurrow.model.roads.MeasuredRoads;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What is known of the roads of a season that has a map of them. */
final class RoadsSummary {
    static final String CAUTION =
            "Roads: the map may be wrong or old. Signs, limits of bridges, width, height, lights, slow-vehicle emblems and local rules come first.";

    private final Figures figures;
    private final boolean inFeet;

    private RoadsSummary(Season season, Figures figures) {
        this.figures = figures;
        inFeet = season.units().area() == AreaUnit.ACRE;
    }

    /** None where distances come from no map. */
    static List<String> of(Season season, Figures figures) {
        return season.distances() instanceof MeasuredRoads roads
                ? new RoadsSummary(season, figures).entries(roads)
                : List.of();
    }

    /** A sentence for who drives by a map. */
    static List<String> cautions(Season season) {
        return season.distances() instanceof MeasuredRoads ? List.of(CAUTION) : List.of();
    }

    private List<String> entries(MeasuredRoads roads) {
        MachineSize size = roads.size();
        List<String> entries = new ArrayList<>();
        entries.add("measured between " + Figures.count(roads.places(), "place", "places") + ", "
                + figures.distance(roads.longestM() / Factors.M_PER_KM) + " at most");
        entries.add("machines as they drive: " + width(size.widthM()) + ", " + weight(size.weightKg()));
        return entries;
    }

    private String width(OptionalDouble metres) {
        if (metres.isEmpty()) {
            return "any width (`width`)";
        }
        double shown = inFeet ? metres.getAsDouble() / Kind.LENGTH.toSi(1, "ft") : metres.getAsDouble();
        return String.format(Locale.ROOT, "%.1f %s wide", shown, inFeet ? "ft" : "m");
    }

    private String weight(OptionalDouble kilograms) {
        return kilograms.isEmpty() ? "any weight (`weight`)" : figures.mass(kilograms.getAsDouble());
    }
}

package freshfurrow.solver.relaxation;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * How far each field is from water: by the shortest way, over other fields or where compost lies if need be, as a table of roads need not know it; in a season under way
 * over where planters stand, too. A rig that draws, brings loads to fields and comes back to draw drives at least there and back to the farthest of them.
 */
public final class WaysToWater {
    private final Season season;
    private final List<String> places;
    private final double[] ways;
    private final double[] metres;
    private final double nearest;

    public WaysToWater(CompiledSeason compiled) {
        season = compiled.season();
        List<String> standing = season.standing().isEmpty()
                ? List.of()
                : season.applicators().stream()
                        .map(planter -> standsAt(season, planter))
                        .toList();
        places = Stream.of(
                        season.fields().stream().map(Field::id),
                        standing.stream(),
                        season.compost().stream().flatMap(lot -> lot.at().stream()))
                .flatMap(ids -> ids)
                .toList();
        ways = places.stream().mapToDouble(this::straight).toArray();
        boolean shortened = true;
        while (shortened) {
            shortened = false;
            for (int over = 0; over < ways.length; over++) {
                for (int field = 0; field < ways.length; field++) {
                    double way = ways[over] + metresBetween(compiled, places, over, field);
                    if (way < ways[field]) {
                        ways[field] = way;
                        shortened = true;
                    }
                }
            }
        }
        metres = Arrays.copyOf(ways, compiled.fieldCount());
        nearest = Arrays.stream(ways, 0, compiled.fieldCount() + standing.size())
                .min()
                .orElse(0);
    }

    private double straight(String place) {
        return season.waterPoints().stream()
                .mapToDouble(point -> season.distances().metres(point.id(), place))
                .min()
                .orElse(0);
    }

    private static String standsAt(Season season, Applicator planter) {
        return season.standing().stream()
                .flatMap(standing -> Stream.ofNullable(standing.planters().get(planter.id())))
                .map(Standing.OfPlanter::at)
                .findFirst()
                .orElse(planter.at());
    }

    private static double metresBetween(CompiledSeason compiled, List<String> places, int one, int other) {
        int fields = compiled.fieldCount();
        return one < fields && other < fields
                ? compiled.metresBetweenFields(one, other)
                : compiled.season().distances().metres(places.get(one), places.get(other));
    }

    /** The same from any place of the season. */
    public double from(String place) {
        double shortest = straight(place);
        for (int over = 0; over < ways.length; over++) {
            shortest = Math.min(shortest, season.distances().metres(place, places.get(over)) + ways[over]);
        }
        return shortest;
    }

    /** How far a field is. */
    public double metres(int field) {
        return metres[field];
    }

    /** To the nearest place at which a planter may take a load. */
    public double nearest() {
        return nearest;
    }

    /** So that a share of the fields, 0 to 1, is nearer or as near, m. */
    public double within(double share) {
        return Ranked.within(metres, share);
    }
}

package freshfurrow.solver.relaxation;

import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;

/**
 * How far each field is from water: by the shortest way, over other fields if need be, as a table of roads need not know it. A rig
 * that draws, brings loads to fields and comes back to draw drives at least there and back to the farthest of them.
 */
final class WaysToWater {
    private final double[] metres;

    WaysToWater(CompiledSeason compiled) {
        Season season = compiled.season();
        metres = season.fields().stream()
                .mapToDouble(field -> season.waterPoints().stream()
                        .mapToDouble(point -> season.distances().metres(point.id(), field.id()))
                        .min()
                        .orElse(0))
                .toArray();
        boolean shortened = true;
        while (shortened) {
            shortened = false;
            for (int over = 0; over < metres.length; over++) {
                for (int field = 0; field < metres.length; field++) {
                    double way = metres[over] + compiled.metresBetweenFields(over, field);
                    if (way < metres[field]) {
                        metres[field] = way;
                        shortened = true;
                    }
                }
            }
        }
    }

    double metres(int field) {
        return metres[field];
    }

    /** So that a share of the fields, 0 to 1, is nearer or as near, m. */
    double within(double share) {
        return Ranked.within(metres, share);
    }
}

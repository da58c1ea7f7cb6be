package freshfurrow.cli.page;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Numbers that stand for ids in the page's data, each a position in a list there. Fields, places and water points share one
 * list, fields first, as they share one name space in the season file.
 */
final class Positions {
    private final Map<String, Integer> spots;
    private final Map<String, Integer> loads;
    private final Map<String, Integer> batches;

    Positions(Season season, Plan plan) {
        spots = positions(spotIds(season));
        loads = positions(plan.loads().stream().map(Plan.Load::id));
        batches = positions(plan.batches().stream().map(Plan.Batch::id));
    }

    private static Stream<String> spotIds(Season season) {
        List<String> ids = new ArrayList<>();
        season.fields().forEach(field -> ids.add(field.id()));
        season.waterPoints().forEach(point -> ids.add(point.id()));
        ids.addAll(season.places().keySet());
        return ids.stream();
    }

    int spot(String id) {
        return known(spots, id);
    }

    int load(String id) {
        return known(loads, id);
    }

    int batch(String id) {
        return known(batches, id);
    }

    private static Map<String, Integer> positions(Stream<String> ids) {
        Map<String, Integer> positions = new HashMap<>();
        ids.forEach(id -> positions.put(id, positions.size()));
        return positions;
    }

    private static int known(Map<String, Integer> positions, String id) {
        Integer position = positions.get(id);
        if (position == null) {
            throw new IllegalArgumentException("the plan speaks of " + id + ", which neither it nor its season has");
        }
        return position;
    }
}

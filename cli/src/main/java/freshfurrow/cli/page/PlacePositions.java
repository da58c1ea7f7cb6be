package freshfurrow.cli.page;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Season;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Numbers that stand for ids in the page's data, each a position in a list there. Fields, water points and other places share one
 * list, that of {@link PlaceIndex}.
 */
final class PlacePositions {
    private final PlaceIndex spots;
    private final Map<String, Integer> loads;
    private final Map<String, Integer> batches;
    private final Map<String, Integer> lots;

    PlacePositions(Season season, Plan plan) {
        spots = PlaceIndex.of(season);
        loads = positions(plan.loads().stream().map(Plan.Load::id));
        batches = positions(plan.batches().stream().map(Plan.Batch::id));
        lots = positions(season.compostWithThatOnBoard().stream().map(CompostLot::id));
    }

    int spot(String id) {
        return spots.positionOf(id);
    }

    int load(String id) {
        return known(loads, id);
    }

    int batch(String id) {
        return known(batches, id);
    }

    int lot(String id) {
        return known(lots, id);
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

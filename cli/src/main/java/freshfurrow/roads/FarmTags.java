package freshfurrow.roads;

import com.graphhopper.reader.ReaderWay;
import com.graphhopper.routing.ev.DecimalEncodedValue;
import com.graphhopper.routing.ev.EdgeIntAccess;
import com.graphhopper.routing.util.parsers.TagParser;
import com.graphhopper.routing.util.parsers.helpers.OSMValueExtractor;
import com.graphhopper.storage.IntsRef;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Which ways of OpenStreetMap are open to farm machines, by its tags as its wiki explains them (Key:highway, Key:access,
 * Key:agricultural, Key:oneway, Key:barrier, Key:maxweight, Key:maxwidth). Limits are rounded down.
 */
final class FarmTags implements TagParser {
    private final RoadValues values;

    FarmTags(RoadValues values) {
        this.values = values;
    }

    @Override
    public void handleWayTags(int edge, EdgeIntAccess access, ReaderWay way, IntsRef relations) {
        boolean open = FarmAccess.isOpen(way::getTag) && !isBarred(way);
        String oneWay = way.getTag("oneway", "");
        boolean around = List.of("roundabout", "circular").contains(way.getTag("junction", ""));
        boolean backOnly = oneWay.equals("-1");
        boolean forthOnly = List.of("yes", "true", "1").contains(oneWay) || (around && !backOnly);
        values.open.setBool(false, edge, access, open && !backOnly);
        values.open.setBool(true, edge, access, open && !forthOnly);
        values.slowness.setDecimal(false, edge, access, Slowness.of(way::getTag));
        limit(
                edge,
                access,
                values.mostWidthM,
                way,
                List.of("maxwidth:physical", "maxwidth"),
                OSMValueExtractor::stringToMeter);
        limit(
                edge,
                access,
                values.mostWeightT,
                way,
                List.of("maxweight", "maxweightrating"),
                OSMValueExtractor::stringToTons);
    }

    /** A node of the way, such as a bollard, which the reader has made a stretch of its own. */
    private static boolean isBarred(ReaderWay way) {
        if (!way.hasTag("gh:barrier_edge")) {
            return false;
        }
        List<Map<String, Object>> nodes = way.getTag("node_tags", List.of());
        return nodes.stream().anyMatch(node -> FarmAccess.isBarrier(key -> text(node, key)));
    }

    private static String text(Map<String, Object> tags, String key) {
        return String.valueOf(tags.getOrDefault(key, ""));
    }

    private static void limit(
            int edge,
            EdgeIntAccess access,
            DecimalEncodedValue value,
            ReaderWay way,
            List<String> keys,
            ToDoubleFunction<String> figure) {
        double least = Double.POSITIVE_INFINITY;
        for (String key : keys) {
            double limit = figure.applyAsDouble(way.getTag(key, ""));
            least = Double.isNaN(limit) ? least : Math.min(least, Math.max(0, limit));
        }
        double steps = Math.floor(least / RoadValues.LIMIT_STEP + 1e-6);
        value.setDecimal(false, edge, access, Double.isInfinite(least) ? least : steps * RoadValues.LIMIT_STEP);
    }
}

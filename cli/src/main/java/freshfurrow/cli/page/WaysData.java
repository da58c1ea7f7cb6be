package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.FromTo;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Season;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Along which roads the machines of a plan drive, where the season has a map of them: from, to, then longitude and latitude of each point
 * in hundred-thousandths of a degree, each less that of the point before.
 */
final class WaysData {
    private static final double PER_DEGREE = 1e5;

    private WaysData() {}

    static void write(ObjectNode data, Season season, Plan plan, PlacePositions positions) {
        Set<FromTo> drives = new LinkedHashSet<>();
        Stream.concat(
                        plan.planters().values().stream().map(Plan.PlanterPlan::activities),
                        plan.rigs().values().stream().map(Plan.RigPlan::activities))
                .flatMap(List::stream)
                .forEach(activity -> {
                    if (activity instanceof Activity.Move move) {
                        drives.add(new FromTo(move.from(), move.to()));
                    }
                });
        Map<FromTo, List<GeoPoint>> ways = season.distances().ways(drives);
        if (ways.isEmpty()) {
            return;
        }
        ArrayNode rows = data.putArray("ways");
        ways.forEach((drive, points) -> {
            ArrayNode row = rows.addArray().add(positions.spot(drive.from())).add(positions.spot(drive.to()));
            long lon = 0;
            long lat = 0;
            for (GeoPoint point : points) {
                long nextLon = Math.round(point.lon() * PER_DEGREE);
                long nextLat = Math.round(point.lat() * PER_DEGREE);
                row.add(nextLon - lon).add(nextLat - lat);
                lon = nextLon;
                lat = nextLat;
            }
        });
    }
}

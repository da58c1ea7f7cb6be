package freshfurrow.cli.page;

import static freshfurrow.cli.page.Numbers.rounded;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.WaitReason;
import java.util.List;
import java.util.Locale;

/**
 * What a machine does, as short lists: what, start, end, and then what that kind of work has. There are thousands of them in
 * a large season, so keys are left out.
 */
final class MachineData {
    private final Positions positions;
    private final Clock clock;

    MachineData(Positions positions, Clock clock) {
        this.positions = positions;
        this.clock = clock;
    }

    ArrayNode activities(List<Activity> activities) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        activities.forEach(activity -> add(all, activity));
        return all;
    }

    private void add(ArrayNode all, Activity activity) {
        if (activity instanceof Activity.Move move) {
            begin(all, "move", move)
                    .add(positions.spot(move.from()))
                    .add(positions.spot(move.to()))
                    .add(rounded(move.km()));
        } else if (activity instanceof Activity.Wait wait) {
            begin(all, "wait", wait).add(positions.spot(wait.at())).add(why(wait.why()));
        } else if (activity instanceof Activity.Fill fill) {
            begin(all, "fill", fill).add(positions.spot(fill.at())).add(positions.load(fill.load()));
        } else if (activity instanceof Activity.Plant plant) {
            begin(all, "plant", plant)
                    .add(positions.spot(plant.field()))
                    .add(positions.load(plant.load()))
                    .add(rounded(plant.areaHa()));
        } else if (activity instanceof Activity.Draw draw) {
            begin(all, "draw", draw).add(positions.spot(draw.at())).add(rounded(draw.litres()));
        } else if (activity instanceof Activity.Extract extract) {
            begin(all, "batch", extract).add(positions.spot(extract.at())).add(positions.batch(extract.batch()));
        } else if (activity instanceof Activity.Clean clean) {
            begin(all, "clean", clean).add(positions.spot(clean.at()));
        } else if (activity instanceof Activity.Transfer transfer) {
            begin(all, "transfer", transfer)
                    .add(positions.spot(transfer.at()))
                    .add(positions.load(transfer.load()))
                    .add(rounded(transfer.litres()));
        } else if (activity instanceof Activity.Dump dump) {
            begin(all, "dump", dump).add(positions.spot(dump.at())).add(rounded(dump.litres()));
        } else {
            throw new IllegalArgumentException("no place on the page for " + activity);
        }
    }

    private ArrayNode begin(ArrayNode all, String kind, Activity activity) {
        return all.addArray().add(kind).add(clock.seconds(activity.start())).add(clock.seconds(activity.end()));
    }

    private static String why(WaitReason why) {
        return why.name().toLowerCase(Locale.ROOT);
    }
}

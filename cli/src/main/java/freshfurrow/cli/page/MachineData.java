package freshfurrow.cli.page;

import static freshfurrow.cli.page.Numbers.rounded;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityParts;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.SeasonTime;
import java.util.List;

/**
 * What a machine does, as short lists: what, start, end, and then what that kind of work has. There are thousands of them in
 * a large season, so keys are left out.
 */
final class MachineData {
    private final PlacePositions positions;
    private final SeasonTime time;

    MachineData(PlacePositions positions, SeasonTime time) {
        this.positions = positions;
        this.time = time;
    }

    ArrayNode activities(List<Activity> activities) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        activities.forEach(activity -> add(all, activity));
        return all;
    }

    private void add(ArrayNode all, Activity activity) {
        ArrayNode row = all.addArray()
                .add(activity.kind().key())
                .add(time.seconds(activity.start()))
                .add(time.seconds(activity.end()));
        activity.tell(new ActivityParts<RuntimeException>() {
            @Override
            public void name(ActivityParts.Name part, String id) {
                row.add(position(part, id));
            }

            @Override
            public void amount(ActivityParts.Amount part, double amount) {
                row.add(rounded(amount));
            }

            @Override
            public void why(WaitReason why) {
                row.add(why.key());
            }
        });
    }

    private int position(ActivityParts.Name part, String id) {
        return switch (part) {
            case FROM, TO, AT, WATER_POINT, FIELD -> positions.spot(id);
            case LOAD -> positions.load(id);
            case BATCH -> positions.batch(id);
            case LOT -> positions.lot(id);
        };
    }
}

package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.plan.ActivityParts.Amount;
import freshfurrow.model.plan.ActivityParts.Name;
import freshfurrow.model.plan.ActivityParts.Part;
import freshfurrow.model.plan.ActivityParts.Why;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.stream.Stream;

/** An activity in a plan file. */
final class ActivityJson {
    private static final String KIND = "kind";
    private static final String START = "start";
    private static final String END = "end";

    private static final Map<String, ActivityKind> KINDS =
            PlanFromJson.byName(ActivityKind.values(), ActivityKind::key);
    private static final Map<String, WaitReason> REASONS = PlanFromJson.byName(WaitReason.values(), WaitReason::key);

    private ActivityJson() {}

    static ObjectNode tree(Activity activity) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put(KIND, activity.kind().key())
                .put(START, PlanToJson.time(activity.start()))
                .put(END, PlanToJson.time(activity.end()));
        activity.tell(new ActivityParts<RuntimeException>() {
            @Override
            public void name(Name part, String id) {
                tree.put(part.key(), id);
            }

            @Override
            public void amount(Amount part, double amount) {
                tree.put(
                        part.key(),
                        switch (part) {
                            case AREA_HA -> PlanToJson.area(amount);
                            case KM, LITRES, KG -> PlanToJson.figure(amount);
                        });
            }

            @Override
            public void why(WaitReason why) {
                tree.put(Why.WHY.key(), why.key());
            }
        });
        return tree;
    }

    static Activity read(JsonPlace place) throws PlanFileException {
        ActivityKind kind = place.oneOf(KIND, KINDS);
        place.with(
                Stream.concat(Stream.of(KIND, START, END), kind.parts().stream().map(Part::key))
                        .toArray(String[]::new));
        return kind.from(new ActivityKind.Source() {
            @Override
            public LocalDateTime start() throws PlanFileException {
                return place.time(START);
            }

            @Override
            public LocalDateTime end() throws PlanFileException {
                return place.time(END);
            }

            @Override
            public String name(Name part) throws PlanFileException {
                return place.text(part.key());
            }

            @Override
            public double amount(Amount part) throws PlanFileException {
                return place.number(part.key());
            }

            @Override
            public WaitReason why() throws PlanFileException {
                return place.oneOf(Why.WHY.key(), REASONS);
            }
        });
    }
}

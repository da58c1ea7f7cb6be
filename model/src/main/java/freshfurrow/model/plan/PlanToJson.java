package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.quantity.DisplayUnits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;

/** A plan as a tree of JSON. */
final class PlanToJson {
    /** Local date and time, always with seconds. */
    static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final int AREA_DECIMALS = 6;
    private static final int DECIMALS = 3;

    private PlanToJson() {}

    static ObjectNode tree(Plan plan) {
        ObjectNode tree = JSON.objectNode().put("format", PlanFile.FORMAT);
        tree.set("season", season(plan.season()));
        tree.putObject("score")
                .put("hard", plan.score().hard())
                .put("medium", plan.score().medium())
                .put("soft", plan.score().soft());
        tree.set("totals", totals(plan.totals()));
        ObjectNode planters = tree.putObject("planters");
        plan.planters().forEach((id, planter) -> planters.set(id, planter(planter)));
        ObjectNode rigs = tree.putObject("rigs");
        plan.rigs().forEach((id, rig) -> rigs.set(id, rig(rig)));
        ArrayNode loads = tree.putArray("loads");
        plan.loads().forEach(load -> loads.add(load(load)));
        ArrayNode batches = tree.putArray("batches");
        plan.batches().forEach(batch -> batches.add(batch(batch)));
        ArrayNode unserved = tree.putArray("unserved");
        plan.unserved().forEach(left -> unserved.addObject()
                .put("field", left.field())
                .put("areaHa", area(left.areaHa()))
                .put("why", left.why()));
        plan.bounds().ifPresent(bounds -> tree.set("bounds", bounds(bounds)));
        if (!plan.limits().isEmpty()) {
            ArrayNode limits = tree.putArray("limits");
            plan.limits().forEach(limit -> limits.add(limit(limit)));
        }
        plan.start().ifPresent(start -> tree.set("start", StartToJson.tree(start)));
        return tree;
    }

    private static ObjectNode season(Plan.SeasonSource season) {
        DisplayUnits units = season.units();
        ObjectNode tree = JSON.objectNode()
                .put("name", season.name())
                .put("file", season.file())
                .put("sha256", season.sha256());
        tree.putObject("units")
                .put("area", units.area().symbol())
                .put("volume", units.volume().symbol())
                .put("mass", units.mass().symbol())
                .put("distance", units.distance().symbol());
        if (!season.names().isEmpty()) {
            ObjectNode names = tree.putObject("names");
            season.names().forEach(names::put);
        }
        if (!season.clockChanges().isEmpty()) {
            ArrayNode changes = tree.putArray("clockChanges");
            season.clockChanges()
                    .forEach(change ->
                            changes.addObject().put("at", time(change.at())).put("then", time(change.then())));
        }
        return tree;
    }

    private static ObjectNode totals(Plan.Totals totals) {
        return JSON.objectNode()
                .put("areaHa", area(totals.areaHa()))
                .put("unservedHa", area(totals.unservedHa()))
                .put("lateHaDays", area(totals.lateHaDays()))
                .put("planterFills", totals.planterFills())
                .put("waterTrips", totals.waterTrips())
                .put("batches", totals.batches())
                .put("compostKg", figure(totals.compostKg()))
                .put("dumpedL", figure(totals.dumpedL()))
                .put("waitMin", figure(totals.waitMin()))
                .put("driveKm", figure(totals.driveKm()))
                .put("smallestMarginMin", figure(totals.smallestMarginMin()))
                .put("finish", time(totals.finish()));
    }

    private static ObjectNode planter(Plan.PlanterPlan planter) {
        ObjectNode tree = JSON.objectNode().put("tankL", figure(planter.tankL()));
        tree.set("fields", ids(planter.fields()));
        tree.set("activities", activities(planter.activities()));
        return tree;
    }

    private static ObjectNode rig(Plan.RigPlan rig) {
        ObjectNode tree = JSON.objectNode();
        rig.nurseTankL().ifPresent(litres -> tree.put("nurseTankL", figure(litres)));
        rig.payloadKg().ifPresent(kg -> tree.put("payloadKg", figure(kg)));
        rig.bucketKg().ifPresent(kg -> tree.put("bucketKg", figure(kg)));
        tree.set("activities", activities(rig.activities()));
        return tree;
    }

    private static ArrayNode activities(List<Activity> activities) {
        ArrayNode list = JSON.arrayNode();
        activities.forEach(activity -> list.add(ActivityJson.tree(activity)));
        return list;
    }

    private static ObjectNode load(Plan.Load load) {
        ObjectNode tree = JSON.objectNode()
                .put("id", load.id())
                .put("planter", load.planter())
                .put("rig", load.rig())
                .put("recipe", load.recipe())
                .put("litres", figure(load.litres()));
        tree.set("batches", ids(load.batches()));
        return tree.put("appliedL", figure(load.appliedL()))
                .put("dumpedL", figure(load.dumpedL()))
                .put("deadline", time(load.deadline()))
                .put("lastDrop", time(load.lastDrop()));
    }

    static ObjectNode batch(Plan.Batch batch) {
        ObjectNode tree = JSON.objectNode()
                .put("id", batch.id())
                .put("rig", batch.rig())
                .put("start", time(batch.start()))
                .put("end", time(batch.end()))
                .put("compostKg", figure(batch.compostKg()))
                .put("waterL", figure(batch.waterL()));
        ObjectNode lots = tree.putObject("lots");
        batch.lots().forEach((id, kg) -> lots.put(id, figure(kg)));
        return tree;
    }

    private static ObjectNode bounds(Plan.Bounds bounds) {
        return JSON.objectNode()
                .put("planterFills", bounds.planterFills())
                .put("waterTrips", bounds.waterTrips())
                .put("unservedHa", area(bounds.unservedHa()))
                .put("lateHaDays", area(bounds.lateHaDays()))
                .put("medium", bounds.medium())
                .put("provedBest", bounds.provedBest());
    }

    private static ObjectNode limit(Plan.Limit limit) {
        return JSON.objectNode()
                .put("resource", limit.resource().key())
                .put("unservedHa", area(limit.unservedHa()))
                .put("lateHaDays", area(limit.lateHaDays()))
                .put("waitMin", figure(limit.waitMin()))
                .put("shareOfLate", figure(limit.shareOfLate()))
                .put("shareOfWait", figure(limit.shareOfWait()));
    }

    static ArrayNode ids(List<String> ids) {
        ArrayNode list = JSON.arrayNode();
        ids.forEach(list::add);
        return list;
    }

    static String time(LocalDateTime time) {
        return TIME.format(time);
    }

    static BigDecimal area(double hectares) {
        return rounded(hectares, AREA_DECIMALS);
    }

    static BigDecimal figure(double figure) {
        return rounded(figure, DECIMALS);
    }

    private static BigDecimal rounded(double figure, int decimals) {
        if (!Double.isFinite(figure)) {
            throw new IllegalArgumentException("a plan has no place for the figure " + figure);
        }
        return BigDecimal.valueOf(figure)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
    }
}

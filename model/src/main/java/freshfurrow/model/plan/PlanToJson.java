package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Work;
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
        tree.set("score", PlanRecords.SCORE.tree(plan.score()));
        tree.set("totals", PlanRecords.TOTALS.tree(plan.totals()));
        ObjectNode planters = tree.putObject("planters");
        plan.planters().forEach((id, planter) -> planters.set(id, planter(planter)));
        ObjectNode rigs = tree.putObject("rigs");
        plan.rigs().forEach((id, rig) -> rigs.set(id, rig(rig)));
        ArrayNode loads = tree.putArray("loads");
        plan.loads().forEach(load -> loads.add(PlanRecords.LOAD.tree(load)));
        ArrayNode batches = tree.putArray("batches");
        plan.batches().forEach(batch -> batches.add(PlanRecords.BATCH.tree(batch)));
        ArrayNode unserved = tree.putArray("unserved");
        plan.unserved().forEach(left -> unserved.add(PlanRecords.UNSERVED.tree(left)));
        plan.bounds().ifPresent(bounds -> tree.set("bounds", PlanRecords.BOUNDS.tree(bounds)));
        if (!plan.limits().isEmpty()) {
            ArrayNode limits = tree.putArray("limits");
            plan.limits().forEach(limit -> limits.add(PlanRecords.LIMIT.tree(limit)));
        }
        plan.chances().ifPresent(chances -> tree.set("chances", PlanRecords.CHANCES.tree(chances)));
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
        if (!units.hasUsualClock()) {
            tree.put("clock", units.clock().symbol());
        }
        if (!season.names().isEmpty()) {
            ObjectNode names = tree.putObject("names");
            season.names().forEach(names::put);
        }
        if (!season.fixed().isEmpty()) {
            tree.set("fixed", ids(season.fixed()));
        }
        if (!season.clockChanges().isEmpty()) {
            ArrayNode changes = tree.putArray("clockChanges");
            season.clockChanges()
                    .forEach(change ->
                            changes.addObject().put("at", time(change.at())).put("then", time(change.then())));
        }
        return tree;
    }

    private static ObjectNode planter(Plan.PlanterPlan planter) {
        ObjectNode tree = JSON.objectNode();
        if (planter.work() != Work.PLANT) {
            tree.put("work", planter.work().key());
        }
        planter.on().ifPresent(rig -> tree.put("on", rig));
        tree.put("tankL", figure(planter.tankL()));
        tree.set("fields", ids(planter.fields()));
        if (!planter.withoutExtract().isEmpty()) {
            tree.set("withoutExtract", ids(planter.withoutExtract()));
        }
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

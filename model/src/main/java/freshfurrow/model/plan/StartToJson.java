package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Standing;
import java.util.List;
import java.util.Map;

/** What was done before a plan as a tree of JSON. */
final class StartToJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private StartToJson() {}

    static ObjectNode tree(PlanStart start) {
        ObjectNode facts = facts(start);
        return facts.put(StartChecksum.KEY, StartChecksum.of(facts));
    }

    /** All of it but the checksum. */
    static ObjectNode facts(PlanStart start) {
        ObjectNode tree = JSON.objectNode().put("now", PlanToJson.time(start.now()));
        start.logSha256().ifPresent(sha256 -> tree.put("logSha256", sha256));
        ArrayNode planted = tree.putArray("planted");
        start.planted().forEach(part -> planted.addObject()
                .put("field", part.field())
                .put("date", part.date().toString())
                .put("areaHa", PlanToJson.area(part.areaHa())));
        ArrayNode lots = tree.putArray("lots");
        start.lots().forEach(lot -> lots.addObject()
                .put("lot", lot.id())
                .put("kg", PlanToJson.figure(lot.massKg()))
                .put("from", lot.from().toString()));
        putRain(tree, start.rain());
        putOutages(tree, start.outages());
        putJudged(tree, start.judged());
        putFromLog(tree, start.fromLog());
        ArrayNode batches = tree.putArray("batches");
        start.batches().forEach(batch -> batches.add(PlanRecords.BATCH.tree(batch)));
        putStanding(tree, start.standing());
        return tree;
    }

    private static void putRain(ObjectNode tree, List<Rain> rain) {
        ArrayNode falls = tree.putArray("rain");
        rain.forEach(fall ->
                falls.addObject().put("at", PlanToJson.time(fall.start())).put("mm", PlanToJson.figure(fall.mm())));
    }

    private static void putOutages(ObjectNode tree, List<Outage> outages) {
        ArrayNode times = tree.putArray("outages");
        outages.forEach(outage -> times.addObject()
                .put("machine", outage.machine())
                .put("from", PlanToJson.time(outage.from()))
                .put("until", PlanToJson.time(outage.until())));
    }

    private static void putFromLog(ObjectNode tree, FromLog fromLog) {
        if (fromLog.equals(FromLog.NOTHING)) {
            return;
        }
        ObjectNode said = tree.putObject("fromLog");
        putRain(said, fromLog.rain());
        putOutages(said, fromLog.outages());
        putFigures(said, "lotsKg", fromLog.lotsKg());
    }

    private static void putFigures(ObjectNode tree, String key, Map<String, Double> figures) {
        ObjectNode its = tree.putObject(key);
        figures.forEach((id, figure) -> its.put(id, PlanToJson.figure(figure)));
    }

    private static void putJudged(ObjectNode tree, Map<String, List<Judgement>> judged) {
        if (judged.isEmpty()) {
            return;
        }
        ArrayNode words = tree.putArray("judged");
        judged.forEach((field, said) -> said.forEach(judgement -> words.addObject()
                .put("field", field)
                .put("said", PlanToJson.time(judgement.said()))
                .put("fitFrom", PlanToJson.time(judgement.fitFrom()))));
    }

    private static void putStanding(ObjectNode tree, Standing standing) {
        ObjectNode planters = tree.putObject("planters");
        standing.planters().forEach((id, planter) -> planters.set(id, planter(planter)));
        ObjectNode rigs = tree.putObject("rigs");
        standing.rigs().forEach((id, rig) -> rigs.set(id, rig(rig)));
        putFigures(tree, "drawnL", standing.drawnL());
        ObjectNode promised = tree.putObject("promised");
        standing.promised().forEach((field, promise) -> promised.putObject(field)
                .put("planter", promise.planter())
                .put("day", promise.day().toString()));
        tree.put("loadsMade", standing.loads()).put("batchesMade", standing.batches());
    }

    private static ObjectNode planter(Standing.OfPlanter planter) {
        ObjectNode tree =
                JSON.objectNode().put("at", planter.at()).put("freeFrom", PlanToJson.time(planter.freeFrom()));
        planter.filledOn().ifPresent(date -> tree.put("filledOn", date.toString()));
        planter.tank().ifPresent(tank -> {
            ObjectNode load = tree.putObject("tank").put("load", tank.load()).put("rig", tank.rig());
            load.set("mix", mix(tank.mix()));
        });
        planter.lines().ifPresent(lines -> tree.putObject("lines")
                .put("recipe", lines.recipe())
                .put("applied", PlanToJson.time(lines.applied())));
        return tree;
    }

    private static ObjectNode rig(Standing.OfRig rig) {
        ObjectNode tree = JSON.objectNode()
                .put("at", rig.at())
                .put("freeFrom", PlanToJson.time(rig.freeFrom()))
                .put("waterL", PlanToJson.figure(rig.waterL()))
                .put("cleanDue", rig.cleanDue());
        rig.mix().ifPresent(mix -> tree.set("mix", mix(mix)));
        if (!rig.compostKg().isEmpty()) {
            putFigures(tree, "compostKg", rig.compostKg());
        }
        rig.setUpAt().ifPresent(time -> tree.put("setUpAt", PlanToJson.time(time)));
        return tree;
    }

    private static ObjectNode mix(Mix mix) {
        ObjectNode tree = JSON.objectNode()
                .put("recipe", mix.recipe())
                .put("areaHa", PlanToJson.area(mix.areaHa()))
                .put("deadline", PlanToJson.time(mix.deadline()));
        tree.set("batches", PlanToJson.ids(mix.batches()));
        return tree;
    }
}

package freshfurrow.cli.page;

import static freshfurrow.cli.page.Numbers.rounded;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.HowSure;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.SeasonTime;

/** The loads and batches. Machines are named by id, as there are few of them. */
final class LoadData {
    private LoadData() {}

    static void write(ObjectNode data, Plan plan, PlacePositions positions, SeasonTime time) {
        ArrayNode loads = data.putArray("loads");
        for (Plan.Load load : plan.loads()) {
            ObjectNode node = loads.addObject()
                    .put("id", load.id())
                    .put("planter", load.planter())
                    .put("rig", load.rig())
                    .put("recipe", load.recipe())
                    .put("litres", rounded(load.litres()))
                    .put("useBy", time.seconds(load.deadline()))
                    .put("lastDrop", time.seconds(load.lastDrop()));
            if (load.intoReserve()) {
                node.put("intoReserve", true);
            }
            String stale = HowSure.ofLoad(plan, load);
            if (!stale.isEmpty()) {
                node.put("stale", stale);
            }
            if (load.dumpedL() > 0) {
                node.put("dumpedL", rounded(load.dumpedL()));
            }
            ArrayNode batches = node.putArray("batches");
            load.batches().forEach(batch -> batches.add(positions.batch(batch)));
        }
        ArrayNode batches = data.putArray("batches");
        for (Plan.Batch batch : plan.batches()) {
            ObjectNode lots = batches.addObject()
                    .put("id", batch.id())
                    .put("rig", batch.rig())
                    .put("start", time.seconds(batch.start()))
                    .put("end", time.seconds(batch.end()))
                    .put("kg", rounded(batch.compostKg()))
                    .put("waterL", rounded(batch.waterL()))
                    .putObject("lots");
            batch.lots().forEach((lot, kg) -> lots.put(lot, rounded(kg)));
        }
    }
}

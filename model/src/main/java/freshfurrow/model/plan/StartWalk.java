package freshfurrow.model.plan;

import freshfurrow.model.plan.PlanVisitor.Named;
import freshfurrow.model.plan.PlanVisitor.Where;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Standing;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Goes through what was done before a plan. Rain, outages and lots may be of any year, so that their times are not shown. */
final class StartWalk {
    private final PlanVisitor visitor;
    private final PlanWalk plan;

    StartWalk(PlanVisitor visitor, PlanWalk plan) {
        this.visitor = visitor;
        this.plan = plan;
    }

    void through(PlanStart start) throws PlanFileException {
        visitor.time(start.now(), () -> "start.now");
        for (int i = 0; i < start.planted().size(); i++) {
            Where where = PlanWalk.at("start.planted", i);
            visitor.name(Named.FIELD, start.planted().get(i).field(), where.then(".field"));
            visitor.time(start.planted().get(i).date().atStartOfDay(), where.then(".date"));
            visitor.figure(start.planted().get(i).areaHa(), where.then(".areaHa"));
        }
        for (int i = 0; i < start.lots().size(); i++) {
            visitor.name(
                    Named.LOT,
                    start.lots().get(i).id(),
                    PlanWalk.at("start.lots", i).then(".lot"));
        }
        outages(start.outages(), "start.outages");
        outages(start.fromLog().outages(), "start.fromLog.outages");
        for (String lot : start.fromLog().lotsKg().keySet()) {
            visitor.name(Named.LOT, lot, () -> "start.fromLog.lotsKg");
        }
        for (Map.Entry<String, List<Judgement>> entry : start.judged().entrySet()) {
            Where where = () -> "start.judged." + entry.getKey();
            visitor.name(Named.FIELD, entry.getKey(), where);
            for (Judgement judgement : entry.getValue()) {
                visitor.time(judgement.said(), where.then(".said"));
                visitor.time(judgement.fitFrom(), where.then(".fitFrom"));
            }
        }
        for (int i = 0; i < start.batches().size(); i++) {
            plan.batch(start.batches().get(i), PlanWalk.at("start.batches", i));
        }
        standing(start.standing());
    }

    private void outages(List<Outage> outages, String list) throws PlanFileException {
        for (int i = 0; i < outages.size(); i++) {
            visitor.name(
                    Named.MACHINE,
                    outages.get(i).machine(),
                    PlanWalk.at(list, i).then(".machine"));
        }
    }

    private void standing(Standing standing) throws PlanFileException {
        for (Map.Entry<String, Standing.OfPlanter> entry : standing.planters().entrySet()) {
            Where where = () -> "start.planters." + entry.getKey();
            visitor.name(Named.PLANTER, entry.getKey(), where);
            visitor.name(Named.PLACE, entry.getValue().at(), where.then(".at"));
            visitor.time(entry.getValue().freeFrom(), where.then(".freeFrom"));
            Optional<Standing.Lines> lines = entry.getValue().lines();
            if (lines.isPresent()) {
                visitor.name(Named.RECIPE, lines.get().recipe(), where.then(".lines.recipe"));
                visitor.time(lines.get().applied(), where.then(".lines.applied"));
            }
            Optional<Standing.Tank> tank = entry.getValue().tank();
            if (tank.isPresent()) {
                visitor.name(Named.LOAD, tank.get().load(), where.then(".tank.load"));
                visitor.name(Named.RIG, tank.get().rig(), where.then(".tank.rig"));
                mix(tank.get().mix(), where.then(".tank.mix"));
            }
        }
        for (Map.Entry<String, Standing.OfRig> entry : standing.rigs().entrySet()) {
            Where where = () -> "start.rigs." + entry.getKey();
            visitor.name(Named.RIG, entry.getKey(), where);
            visitor.name(Named.PLACE, entry.getValue().at(), where.then(".at"));
            visitor.time(entry.getValue().freeFrom(), where.then(".freeFrom"));
            if (entry.getValue().setUpAt().isPresent()) {
                visitor.time(entry.getValue().setUpAt().get(), where.then(".setUpAt"));
            }
            if (entry.getValue().mix().isPresent()) {
                mix(entry.getValue().mix().get(), where.then(".mix"));
            }
            for (String lot : entry.getValue().compostKg().keySet()) {
                visitor.name(Named.LOT, lot, where.then(".compostKg"));
            }
        }
        for (String point : standing.drawnL().keySet()) {
            visitor.name(Named.WATER_POINT, point, () -> "start.drawnL");
        }
        for (Map.Entry<String, Standing.Promise> entry : standing.promised().entrySet()) {
            Where where = () -> "start.promised." + entry.getKey();
            visitor.name(Named.FIELD, entry.getKey(), where);
            visitor.name(Named.PLANTER, entry.getValue().planter(), where.then(".planter"));
            visitor.time(entry.getValue().day().atStartOfDay(), where.then(".day"));
        }
    }

    private void mix(Mix mix, Where where) throws PlanFileException {
        visitor.name(Named.RECIPE, mix.recipe(), where.then(".recipe"));
        visitor.time(mix.deadline(), where.then(".deadline"));
        plan.names(Named.BATCH, mix.batches(), where.then(".batches"));
    }
}

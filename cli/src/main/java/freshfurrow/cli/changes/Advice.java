package freshfurrow.cli.changes;

import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What to do in the next hours: with mix that is made already, and which batches not to start. */
final class Advice {
    private static final int HOURS = 24;

    private final Season left;
    private final Plan plan;
    private final Figures figures;
    private final LocalDateTime now;
    private final List<String> lines = new ArrayList<>();

    private Advice(Season left, Plan plan, Standing standing) {
        this.left = left;
        this.plan = plan;
        this.now = standing.now();
        figures = new Figures(left.units());
    }

    /** Advice for what is left of a season, a line an entry; empty when there is none to give. */
    static List<String> lines(Season left, Plan plan, Plan before) {
        return left.standing()
                .map(standing -> {
                    Advice advice = new Advice(left, plan, standing);
                    standing.planters().forEach((id, its) -> its.tank().ifPresent(tank -> advice.inTank(id, tank)));
                    standing.rigs().forEach((id, its) -> its.mix().ifPresent(mix -> advice.onRig(id, mix)));
                    advice.batchesNotToStart(before);
                    return List.copyOf(advice.lines);
                })
                .orElse(List.of());
    }

    private void inTank(String planter, Standing.Tank tank) {
        Plan.Load load = plan.loads().stream()
                .filter(one -> one.id().equals(tank.load()))
                .findFirst()
                .orElseThrow();
        Set<String> fields = new LinkedHashSet<>();
        plan.planters().get(planter).activities().forEach(activity -> {
            if (activity instanceof Activity.Plant plant && plant.load().equals(tank.load())) {
                fields.add(plant.field());
            }
        });
        String has = planter + " has " + figures.volume(load.litres()) + " of load " + tank.load()
                + " on board (use by " + clock(load.deadline()) + "): ";
        if (fields.isEmpty()) {
            lines.add(has + "drain it where it can do no harm; no field can use it in time");
        } else {
            lines.add(has + "plant " + String.join(", ", fields) + " with it"
                    + ", the last by " + clock(load.lastDrop())
                    + (load.dumpedL() > 1
                            ? "; drain the " + figures.volume(load.dumpedL()) + " left over where it can do no harm"
                            : ""));
        }
    }

    private void onRig(String rig, Mix mix) {
        Optional<Activity> next = plan.rigs().get(rig).activities().stream()
                .filter(activity -> activity instanceof Activity.Transfer || activity instanceof Activity.Dump)
                .findFirst();
        Recipe recipe = left.recipe(mix.recipe());
        String has = rig + " has mix for " + figures.area(mix.areaHa()) + " ("
                + figures.volume(mix.areaHa() * recipe.mixLPerHa()) + " when diluted) on board (use by "
                + clock(mix.deadline()) + "): ";
        if (next.isPresent() && next.get() instanceof Activity.Transfer transfer) {
            Plan.Load load = plan.loads().stream()
                    .filter(one -> one.id().equals(transfer.load()))
                    .findFirst()
                    .orElseThrow();
            lines.add(has + "take it to " + load.planter() + " at " + transfer.at() + " by " + clock(transfer.start()));
        } else {
            lines.add(has + "drain it where it can do no harm; no planter can use it in time");
        }
    }

    /** Batches that the plan before begins in the next hours, before its rig begins any now. */
    private void batchesNotToStart(Plan before) {
        before.rigs().keySet().forEach(rig -> {
            Optional<LocalDateTime> first = batchesOf(plan, rig).findFirst();
            int cancelled = (int) batchesOf(before, rig)
                    .filter(start -> start.isBefore(now.plusHours(HOURS)))
                    .filter(start -> first.isEmpty() || start.isBefore(first.get()))
                    .count();
            if (cancelled > 0) {
                lines.add(rig + ": make no more batches"
                        + first.map(start -> " until " + clock(start)).orElse("")
                        + (cancelled == 1
                                ? " (1 planned batch is cancelled)"
                                : " (" + cancelled + " planned batches are cancelled)"));
            }
        });
    }

    private Stream<LocalDateTime> batchesOf(Plan of, String rig) {
        return of.batches().stream()
                .filter(batch -> batch.rig().equals(rig) && !batch.start().isBefore(now))
                .map(Plan.Batch::start)
                .sorted();
    }

    private String clock(LocalDateTime time) {
        return Figures.clock(time, now.toLocalDate());
    }
}

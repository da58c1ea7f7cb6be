package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Recipe;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;

/** Where compost comes from, and that mix is as strong as its recipe says. */
final class Compost {
    /** Batches are told in whole grams, so that a lot that is used up may seem to have one left. */
    private static final double LEFT_IN_LOT_KG = 0.001 + Evidence.ROUNDING;

    private final Evidence evidence;

    Compost(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        lotSums();
        if (!evidence.season.saysWhereCompostLies()) {
            lots();
            lotsInTurn();
        }
        strength();
    }

    private List<Plan.Batch> made() {
        return evidence.batches.values().stream()
                .filter(batch -> !evidence.carried.isBatch(batch.id()))
                .toList();
    }

    private void lotSums() {
        for (Plan.Batch batch : made()) {
            double sum = batch.lots().values().stream().mapToDouble(kg -> kg).sum();
            if (!Evidence.same(sum, batch.compostKg(), (batch.lots().size() + 1) * Evidence.ROUNDING)) {
                evidence.report(
                        Rule.LOT_SUM,
                        "batch " + batch.id(),
                        "it takes " + Evidence.show(batch.compostKg()) + " kg, from its lots " + Evidence.show(sum)
                                + " kg");
            }
        }
    }

    /** Where rigs need not fetch it, batches take compost out of the lots themselves. */
    private void lots() {
        Map<String, Double> taken = new HashMap<>();
        for (Plan.Batch batch : made()) {
            for (Map.Entry<String, Double> share : batch.lots().entrySet()) {
                taken.merge(share.getKey(), share.getValue(), Double::sum);
                var lot = evidence.lots.get(share.getKey());
                if (lot != null && batch.start().toLocalDate().isBefore(lot.from())) {
                    evidence.report(
                            Rule.LOT_DATE,
                            "batch " + batch.id(),
                            "it is made on " + batch.start().toLocalDate() + ", lot " + lot.id() + " is on hand from "
                                    + lot.from());
                }
            }
        }
        evidence.lots.forEach((id, lot) -> {
            double sum = taken.getOrDefault(id, 0.0);
            if (!(sum <= lot.massKg() + (evidence.batches.size() + 1) * Evidence.ROUNDING)) {
                evidence.report(
                        Rule.LOT_STOCK,
                        "lot " + id,
                        "it has " + Evidence.show(lot.massKg()) + " kg, taken are " + Evidence.show(sum) + " kg");
            }
        });
    }

    /** Batches that begin at one time may take of their lots in either order. */
    private void lotsInTurn() {
        List<Plan.Batch> inOrder =
                made().stream().sorted(Comparator.comparing(Plan.Batch::start)).toList();
        List<CompostLot> lots = evidence.lots.values().stream()
                .sorted(Comparator.comparing(CompostLot::from))
                .toList();
        Map<String, Double> taken = new HashMap<>();
        int counted = 0;
        for (Plan.Batch batch : inOrder) {
            for (; counted < inOrder.size() && !inOrder.get(counted).start().isAfter(batch.start()); counted++) {
                inOrder.get(counted).lots().forEach((lot, kg) -> taken.merge(lot, kg, Double::sum));
            }
            for (CompostLot lot : lots) {
                if (lots.stream().dropWhile(one -> !one.equals(lot)).skip(1).anyMatch(later -> batch.lots()
                        .containsKey(later.id()))) {
                    double left = lot.massKg() - taken.getOrDefault(lot.id(), 0.0);
                    if (left > LEFT_IN_LOT_KG) {
                        evidence.report(
                                Rule.LOT_ORDER,
                                "batch " + batch.id(),
                                "it takes from a later lot, while in lot " + lot.id() + " " + Evidence.show(left)
                                        + " kg are left");
                    }
                }
            }
        }
    }

    /** Loads that share a batch are made of one mix; each such mix is judged as a whole. */
    private void strength() {
        Map<String, List<Plan.Load>> loadsOf = new HashMap<>();
        List<Plan.Load> made = evidence.loads.values().stream()
                .filter(load -> evidence.carried.tank(load.id()).isEmpty())
                .toList();
        for (Plan.Load load : made) {
            load.batches().forEach(batch -> loadsOf.computeIfAbsent(batch, any -> new ArrayList<>())
                    .add(load));
        }
        Map<String, Double> dumped = evidence.dumpedOfBatch();
        Set<String> judged = new HashSet<>();
        for (Plan.Load first : made) {
            Set<Plan.Load> loads = new HashSet<>();
            Set<String> batches = new HashSet<>();
            Queue<Plan.Load> open = new ArrayDeque<>(List.of(first));
            while (!open.isEmpty()) {
                Plan.Load load = open.remove();
                if (loads.add(load) && judged.add(load.id())) {
                    for (String batch : load.batches()) {
                        if (batches.add(batch)) {
                            open.addAll(loadsOf.getOrDefault(batch, List.of()));
                        }
                    }
                }
            }
            if (!batches.isEmpty()) {
                judge(first, loads, batches, dumped);
            }
        }
    }

    /** Of batches made before the plan begins it has only what is left on board of their mix. */
    private double carriedKg(Plan.Load load, Set<String> batches) {
        return evidence.carried
                .mix(load.rig())
                .filter(mix -> mix.batches().isEmpty() || batches.containsAll(mix.batches()))
                .flatMap(mix -> evidence.recipeOf(load).map(recipe -> mix.areaHa() * recipe.compostKgPerHa()))
                .orElse(0.0);
    }

    private void judge(Plan.Load first, Set<Plan.Load> loads, Set<String> batches, Map<String, Double> dumped) {
        double asked = 0;
        for (Plan.Load load : loads) {
            Optional<Recipe> recipe = evidence.recipeOf(load);
            if (recipe.isEmpty()) {
                return;
            }
            asked += Evidence.kilograms(load.litres(), recipe.get());
        }
        double taken = 0;
        for (String id : batches) {
            Plan.Batch batch = evidence.batches.get(id);
            if (batch == null) {
                return;
            }
            taken += evidence.carried.isBatch(id) ? 0 : batch.compostKg();
            asked += evidence.recipeOf(first)
                    .map(recipe -> Evidence.kilograms(dumped.getOrDefault(id, 0.0), recipe))
                    .orElse(0.0);
        }
        taken += carriedKg(first, batches);
        double rounding = (loads.size() + batches.size() + 1) * 2 * Evidence.ROUNDING;
        // the last load of a mix may be a little more than what is left of it
        if (taken > asked + rounding || taken < asked * (1 - Evidence.LEEWAY) - rounding) {
            evidence.report(
                    Rule.COMPOST_RATE,
                    "load " + first.id(),
                    "its mix needs " + Evidence.show(asked) + " kg of compost, its batches take " + Evidence.show(taken)
                            + " kg");
        }
    }
}

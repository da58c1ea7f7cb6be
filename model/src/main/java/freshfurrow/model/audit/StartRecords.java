package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Whether what a plan says was done before it begins goes together, and could be. */
final class StartRecords {
    /** Of each batch: figures are told in grams. */
    private static final double GRAM_KG = 0.001;

    private final Evidence evidence;
    private final Map<String, Plan.Batch> made;

    StartRecords(Evidence evidence) {
        this.evidence = evidence;
        made = evidence.plan.start().map(PlanStart::batches).orElse(List.of()).stream()
                .collect(Collectors.toMap(Plan.Batch::id, Function.identity(), (one, other) -> one));
    }

    void check() {
        evidence.plan.start().ifPresent(start -> {
            done(start);
            machines(start);
            news(start);
            batches(start);
            start.standing().planters().forEach((id, planter) -> planter.tank().ifPresent(tank -> {
                mix("tank of " + id, tank.mix());
                tank(id, tank);
            }));
            start.standing().rigs().forEach((id, rig) -> rig.mix().ifPresent(mix -> mix("mix on " + id, mix)));
        });
    }

    private void done(PlanStart start) {
        LocalDate today = start.now().toLocalDate();
        Set<List<Object>> parts = new HashSet<>();
        for (PlanStart.Planted part : start.planted()) {
            if (part.date().isBefore(evidence.season.first()) || part.date().isAfter(today)) {
                report(
                        Rule.DONE_BEFORE,
                        "field " + part.field(),
                        "a part of it was planted on " + part.date() + ", the plan starts on " + today);
            }
            if (!parts.add(List.of(part.field(), part.date()))) {
                report(
                        Rule.DONE_BEFORE,
                        "field " + part.field(),
                        "what was planted on " + part.date() + " stands twice");
            }
        }
        start.standing().promised().forEach((field, promise) -> {
            LocalDate last =
                    start.now().plusDays(evidence.season.goals().steadyDays()).toLocalDate();
            if (promise.day().isBefore(today) || promise.day().isAfter(last)) {
                report(
                        Rule.DONE_BEFORE,
                        "field " + field,
                        "it is promised for " + promise.day() + ", promises go from " + today + " to " + last);
            }
            if (!evidence.planters.containsKey(promise.planter())) {
                report(Rule.KNOWN_NAMES, "promise of " + field, "there is no planter '" + promise.planter() + "'");
            }
        });
    }

    private void machines(PlanStart start) {
        Standing standing = start.standing();
        if (!(standing.planters().isEmpty() && standing.rigs().isEmpty())) {
            named("planter", evidence.planters.keySet(), standing.planters().keySet());
            named("rig", evidence.rigs.keySet(), standing.rigs().keySet());
        }
        standing.planters().forEach((id, planter) -> {
            free(id, planter.freeFrom());
            planter.filledOn().ifPresent(date -> {
                if (date.isBefore(evidence.season.first())
                        || date.isAfter(start.now().toLocalDate())) {
                    report(Rule.DONE_BEFORE, id, "it was filled last on " + date);
                }
            });
            planter.lines().ifPresent(lines -> {
                if (lines.applied().isBefore(evidence.season.start())
                        || lines.applied().isAfter(planter.freeFrom())) {
                    report(Rule.DONE_BEFORE, id, "mix went through its lines last at " + lines.applied());
                }
                if (!evidence.recipes.containsKey(lines.recipe())) {
                    report(Rule.KNOWN_NAMES, id, "there is no recipe '" + lines.recipe() + "'");
                }
            });
            if (planter.tank().isPresent() && planter.filledOn().isEmpty()) {
                report(Rule.DONE_BEFORE, id, "there is a load in its tank, but it was never filled");
            }
        });
        standing.rigs().forEach((id, rig) -> {
            free(id, rig.freeFrom());
            rig.setUpAt().ifPresent(time -> {
                if (time.isBefore(evidence.season.start()) || time.isAfter(rig.freeFrom())) {
                    report(Rule.DONE_BEFORE, id, "it was set up at " + time + ", it is free from " + rig.freeFrom());
                }
            });
        });
        standing.drawnL().keySet().stream()
                .filter(point -> !evidence.waterPoints.containsKey(point))
                .forEach(point -> report(Rule.KNOWN_NAMES, "start", "there is no water point '" + point + "'"));
    }

    private void named(String kind, Set<String> machines, Set<String> standing) {
        machines.stream()
                .filter(id -> !standing.contains(id))
                .forEach(id -> report(Rule.START, id, "the plan does not say where it is when it starts"));
        standing.stream()
                .filter(id -> !machines.contains(id))
                .forEach(id -> report(Rule.KNOWN_NAMES, "start", "there is no " + kind + " '" + id + "'"));
    }

    private void free(String machine, LocalDateTime from) {
        LocalDateTime now = evidence.carried.now().orElse(from);
        if (from.isBefore(now) || evidence.calendar.seconds(from) > evidence.calendar.end()) {
            report(
                    Rule.DONE_BEFORE,
                    machine,
                    "it is free from " + from + " on, the plan goes from " + now + " to the season's end");
        }
    }

    private void news(PlanStart start) {
        start.outages().stream()
                .map(outage -> outage.machine())
                .filter(id -> !evidence.planters.containsKey(id) && !evidence.rigs.containsKey(id))
                .forEach(id -> report(Rule.KNOWN_NAMES, "outages", "there is no planter or rig '" + id + "'"));
        if (new HashSet<>(start.outages()).size() < start.outages().size()
                || new HashSet<>(start.rain()).size() < start.rain().size()) {
            report(Rule.UNIQUE_NAMES, "start", "a rain or an outage is there more than once");
        }
        start.judged().forEach((field, judged) -> judged.stream()
                .filter(judgement -> judgement.said().isAfter(start.now()))
                .forEach(judgement -> report(
                        Rule.DONE_BEFORE,
                        "field " + field,
                        "its ground was judged at " + judgement.said() + ", the plan starts at " + start.now())));
        start.rain().stream()
                .filter(rain -> rain.date().isAfter(evidence.season.last()))
                .forEach(rain -> report(Rule.DONE_BEFORE, "rain", "it falls on " + rain.date() + ", after the season"));
    }

    private void batches(PlanStart start) {
        List<Plan.Batch> told =
                evidence.plan.batches().stream().limit(start.batches().size()).toList();
        if (!told.equals(start.batches())) {
            report(Rule.CARRIED_BATCHES, "batches", "those made before differ from what the plan says at its start");
        }
        for (Plan.Batch batch : start.batches()) {
            String where = "batch " + batch.id();
            LocalDateTime free = evidence.carried
                    .rig(batch.rig())
                    .map(Standing.OfRig::freeFrom)
                    .orElse(start.now());
            if (batch.end().isBefore(batch.start())
                    || batch.start().isBefore(evidence.season.start())
                    || batch.end().isAfter(free)) {
                report(
                        Rule.CARRIED_BATCHES,
                        where,
                        "it was made from " + batch.start() + " to " + batch.end() + ", its rig is free from " + free
                                + " on");
            }
            double sum = batch.lots().values().stream().mapToDouble(kg -> kg).sum();
            if (batch.lots().isEmpty()
                    || batch.lots().values().stream().anyMatch(kg -> !(kg > 0))
                    || !Evidence.same(sum, batch.compostKg(), (batch.lots().size() + 1) * Evidence.ROUNDING)) {
                report(
                        Rule.CARRIED_BATCHES,
                        where,
                        "it takes " + Evidence.show(batch.compostKg()) + " kg, from its lots " + Evidence.show(sum)
                                + " kg");
            }
        }
    }

    private void mix(String where, Mix mix) {
        if (mix.batches().isEmpty()) {
            return;
        }
        if (!made.keySet().containsAll(mix.batches())
                || new HashSet<>(mix.batches()).size() < mix.batches().size()) {
            report(Rule.CARRIED_MIX, where, "its batches are not all named, or one is there more than once");
            return;
        }
        var recipe = evidence.recipes.get(mix.recipe());
        if (recipe == null) {
            return;
        }
        List<Plan.Batch> batches = mix.batches().stream().map(made::get).toList();
        if (batches.stream()
                .map(batch -> evidence.calendar.keepsUntil(batch.end(), recipe.holdS()))
                .min(LocalDateTime::compareTo)
                .filter(mix.deadline()::equals)
                .isEmpty()) {
            report(
                    Rule.CARRIED_MIX,
                    where,
                    "it keeps until " + mix.deadline() + ", which is not the end of its oldest batch and "
                            + recipe.holdS() + " s");
        }
        double kilograms = batches.stream().mapToDouble(Plan.Batch::compostKg).sum();
        double asked = mix.areaHa() * recipe.compostKgPerHa();
        double slack = (batches.size() + 1) * (GRAM_KG + Evidence.ROUNDING);
        // a load that took all the compost there was may have lacked a little
        double least = asked * (1 - Evidence.LEEWAY);
        if (!(least <= kilograms + slack + Evidence.AREA_ROUNDING_HA * recipe.compostKgPerHa())) {
            report(
                    Rule.CARRIED_MIX,
                    where,
                    "it asks for " + Evidence.show(asked) + " kg of compost, its batches took "
                            + Evidence.show(kilograms) + " kg");
        }
    }

    private void tank(String planter, Standing.Tank tank) {
        Plan.Load load = evidence.loads.get(tank.load());
        if (load == null
                || !load.planter().equals(planter)
                || !load.rig().equals(tank.rig())
                || !load.batches().equals(tank.mix().batches())
                || !load.deadline().equals(tank.mix().deadline())) {
            report(Rule.CARRIED_MIX, "tank of " + planter, "the plan tells load " + tank.load() + " otherwise");
        }
    }

    private void report(Rule rule, String where, String what) {
        evidence.report(rule, where, what);
    }
}

package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Standing;
import java.util.List;

/** Which fields a planter plants, when, how fast and from which load. */
final class PlantingRules {
    private final Evidence evidence;

    PlantingRules(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.plan.planters().forEach((id, its) -> {
            listOrder(id, its);
            listedFieldsAllowed(id, its);
            onBoard(
                    id,
                    its.activities(),
                    evidence.carried
                            .planter(id)
                            .flatMap(Standing.OfPlanter::tank)
                            .map(Standing.Tank::load)
                            .orElse(""));
        });
        for (Evidence.Done<Activity.Planting> done : evidence.all(Activity.Planting.class)) {
            Field field = evidence.fields.get(done.activity().field());
            if (field != null) {
                allowed(done, field);
                workable(done, field);
                sprayHours(done);
            }
            capacity(done);
        }
        evidence.all(Activity.Plant.class).forEach(this::recipe);
    }

    private void listOrder(String planter, Plan.PlanterPlan its) {
        int reached = 0;
        for (Activity activity : its.activities()) {
            if (activity instanceof Activity.Planting plant) {
                int position = its.fields().indexOf(plant.field());
                if (position < reached) {
                    evidence.report(
                            Rule.PLANTING_ORDER,
                            planter + " at " + plant.start(),
                            position < 0
                                    ? plant.field() + " is not in its planting order"
                                    : plant.field() + " comes before "
                                            + its.fields().get(reached) + " in its planting order");
                }
                reached = Math.max(reached, position);
            }
        }
    }

    private void listedFieldsAllowed(String planter, Plan.PlanterPlan its) {
        for (String id : its.fields()) {
            Field field = evidence.fields.get(id);
            if (field != null && !mayWorkOn(planter, field)) {
                evidence.report(Rule.ALLOWED_PLANTER, "planting order of " + planter, "it may not plant " + id);
            }
        }
    }

    private void allowed(Evidence.Done<Activity.Planting> done, Field field) {
        if (!mayWorkOn(done.machine(), field)) {
            evidence.report(Rule.ALLOWED_PLANTER, done.where(), "it may not plant " + field.id());
        }
    }

    private boolean mayWorkOn(String machine, Field field) {
        var planter = evidence.planters.get(machine);
        return planter != null && field.allows(planter);
    }

    private void onBoard(String planter, List<Activity> activities, String toBeginWith) {
        var tank = new InTank(planter, toBeginWith);
        activities.stream().filter(activity -> activity.kind().byPlanters()).forEach(activity -> activity.accept(tank));
    }

    /** Follows which load a planter has in its tank. */
    private final class InTank implements ActivityVisitor.OfPlanter<InTank> {
        private final String planter;
        private String load;

        InTank(String planter, String load) {
            this.planter = planter;
            this.load = load;
        }

        @Override
        public InTank visit(Activity.Move move) {
            return this;
        }

        @Override
        public InTank visit(Activity.Wait wait) {
            return this;
        }

        @Override
        public InTank visit(Activity.Fill fill) {
            load = fill.load();
            return this;
        }

        @Override
        public InTank visit(Activity.Plant plant) {
            if (!plant.load().equals(load)) {
                evidence.report(
                        Rule.LOAD_ON_BOARD,
                        planter + " at " + plant.start(),
                        "it plants from load " + plant.load()
                                + (load.isEmpty() ? " before any fill" : ", but the last one it took is " + load));
            }
            return this;
        }

        @Override
        public InTank visit(Activity.PlantWithout planting) {
            load = "";
            return this;
        }

        @Override
        public InTank visit(Activity.Flush flush) {
            return this;
        }
    }

    private void workable(Evidence.Done<Activity.Planting> done, Field field) {
        long start = evidence.start(done.activity());
        long end = evidence.end(done.activity());
        if (start < evidence.calendar.midnight(field.window().first())) {
            evidence.report(
                    Rule.WINDOW_OPENING,
                    done.where(),
                    "the window of " + field.id() + " opens on "
                            + field.window().first());
        }
        field.fixed()
                .on()
                .filter(on -> start < evidence.calendar.midnight(on))
                .ifPresent(on ->
                        evidence.report(Rule.FIXED_DAY, done.where(), field.id() + " is fixed to start on " + on));
        for (WorkCalendar.Period wet : evidence.calendar.wet(field)) {
            if (wet.overlap(start, end) > 0) {
                evidence.report(
                        Rule.RAIN_CLOSURE,
                        done.where(),
                        field.id() + " is closed from "
                                + evidence.season.time().at(wet.start()) + " to "
                                + evidence.season.time().at(wet.end()));
            }
        }
    }

    private void sprayHours(Evidence.Done<Activity.Planting> done) {
        var machine = evidence.planters.get(done.machine());
        if (machine instanceof Sprayer sprayer
                && evidence.calendar.open(sprayer.sprayHours()).stream()
                        .noneMatch(open ->
                                open.contains(evidence.start(done.activity()), evidence.end(done.activity())))) {
            evidence.report(Rule.SPRAY_HOURS, done.where(), "it sprays outside its spray hours");
        }
    }

    private void recipe(Evidence.Done<Activity.Plant> done) {
        Plan.Load load = evidence.loads.get(done.activity().load());
        Field field = evidence.fields.get(done.activity().field());
        if (load != null && field != null && !load.recipe().equals(field.recipe())) {
            evidence.report(
                    Rule.RECIPE,
                    done.where(),
                    field.id() + " asks for " + field.recipe() + ", load " + load.id() + " is " + load.recipe());
        }
    }

    private void capacity(Evidence.Done<Activity.Planting> done) {
        var planter = evidence.planters.get(done.machine());
        if (planter == null) {
            return;
        }
        double mostHa = planter.fieldCapacityM2PerS() * evidence.lasts(done.activity()) / M2_PER_HA;
        if (!(done.activity().areaHa() <= mostHa + Evidence.AREA_ROUNDING_HA)) {
            evidence.report(
                    Rule.FIELD_CAPACITY,
                    done.where(),
                    "it plants " + Evidence.show(done.activity().areaHa()) + " ha in the time for "
                            + Evidence.show(mostHa) + " ha");
        }
    }
}

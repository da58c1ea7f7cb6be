package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Rig;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Compost that rigs load where it lies, carry and use up, and what their vehicles carry then. */
final class FetchedCompost {
    /** Rigs load whole grams, so that a lot that is used up may have one left. */
    private static final double LEFT_IN_LOT_KG = 0.001 + Evidence.ROUNDING;

    private static final double WATER_KG_PER_L = 1;

    private final Evidence evidence;
    private final Map<String, Double> loadedKg = new HashMap<>();

    FetchedCompost(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        for (Evidence.Done<Activity.LoadCompost> done : evidence.all(Activity.LoadCompost.class)) {
            loading(done);
            loadedKg.merge(done.activity().lot(), done.activity().kg(), Double::sum);
        }
        if (evidence.season.saysWhereCompostLies()) {
            evidence.plan.rigs().forEach((id, its) -> {
                Rig rig = evidence.rigs.get(id);
                if (rig != null) {
                    new OnBoard(rig).follow(its.activities());
                }
            });
            stocks();
        }
    }

    private void loading(Evidence.Done<Activity.LoadCompost> done) {
        Activity.LoadCompost loading = done.activity();
        CompostLot lot = evidence.lots.get(loading.lot());
        Rig rig = evidence.rigs.get(done.machine());
        if (lot != null) {
            if (lot.at().filter(loading.at()::equals).isEmpty()) {
                evidence.report(
                        Rule.LOADING_PLACE,
                        done.where(),
                        "it loads compost of " + lot.id() + " at " + loading.at() + ", which lies "
                                + lot.at().map(place -> "at " + place).orElse("nobody says where"));
            }
            if (loading.start().toLocalDate().isBefore(lot.from())) {
                evidence.report(
                        Rule.LOT_DATE,
                        done.where(),
                        "it loads compost on " + loading.start().toLocalDate() + ", lot " + lot.id()
                                + " is on hand from " + lot.from());
            }
        }
        if (rig != null) {
            double least = loading.kg() * rig.compostLoadingMinPerKg() * MINUTE_S;
            long taken = evidence.lasts(loading);
            if (!(taken >= least - Evidence.SECOND_ROUNDING)) {
                evidence.report(
                        Rule.LOADING_TIME,
                        done.where(),
                        "to load " + Evidence.show(loading.kg()) + " kg takes " + rig.id() + " at least "
                                + Evidence.show(least) + " s, not " + taken);
            }
        }
    }

    private void stocks() {
        List<CompostLot> lots = evidence.lots.values().stream()
                .sorted(Comparator.comparing(CompostLot::from))
                .toList();
        CompostLot notUsedUp = null;
        for (CompostLot lot : lots) {
            double loaded = loadedKg.getOrDefault(lot.id(), 0.0);
            if (!(loaded <= lot.massKg() + Evidence.ROUNDING)) {
                evidence.report(
                        Rule.LOT_STOCK,
                        "lot " + lot.id(),
                        "it has " + Evidence.show(lot.massKg()) + " kg, loaded are " + Evidence.show(loaded) + " kg");
            }
            if (loaded > 0 && notUsedUp != null) {
                evidence.report(
                        Rule.LOT_ORDER,
                        "lot " + lot.id(),
                        "it is loaded from, while in lot " + notUsedUp.id() + " compost is left");
            }
            if (notUsedUp == null && lot.massKg() - loaded > LEFT_IN_LOT_KG) {
                notUsedUp = lot;
            }
        }
    }

    /** What is on board of one rig. */
    private final class OnBoard {
        private final Rig rig;
        private final Map<String, Double> kgByLot = new HashMap<>();
        private double litres;
        private int events = 1;

        OnBoard(Rig rig) {
            this.rig = rig;
            evidence.carried.rig(rig.id()).ifPresent(standing -> {
                kgByLot.putAll(standing.compostKg());
                litres = standing.waterL() + standing.mix().map(this::litres).orElse(0.0);
            });
        }

        private double litres(Mix mix) {
            return Optional.ofNullable(evidence.recipes.get(mix.recipe()))
                    .map(recipe -> mix.areaHa() * recipe.mixLPerHa())
                    .orElse(0.0);
        }

        void follow(List<Activity> activities) {
            holds(rig.id() + " when the plan starts");
            for (Activity activity : activities) {
                String where = new Evidence.Done<>(rig.id(), activity).where();
                litres = Math.max(0, litres + activity.onRigL());
                if (activity instanceof Activity.LoadCompost loading) {
                    events++;
                    kgByLot.merge(loading.lot(), loading.kg(), Double::sum);
                    holds(where);
                } else if (activity instanceof Activity.Draw) {
                    weighs(where);
                } else if (activity instanceof Activity.Extract extract) {
                    Optional.ofNullable(evidence.batches.get(extract.batch())).ifPresent(this::use);
                }
            }
        }

        private void use(Plan.Batch batch) {
            events++;
            batch.lots().forEach((lot, kg) -> {
                double left = kgByLot.getOrDefault(lot, 0.0) - kg;
                if (!(left >= -events * Evidence.ROUNDING)) {
                    evidence.report(
                            Rule.COMPOST_ON_BOARD,
                            "batch " + batch.id(),
                            "it takes " + Evidence.show(kg) + " kg of lot " + lot + ", of which " + rig.id() + " has "
                                    + Evidence.show(left + kg) + " kg on board");
                }
                kgByLot.put(lot, Math.max(0, left));
            });
        }

        private double kilograms() {
            return kgByLot.values().stream().mapToDouble(kg -> kg).sum();
        }

        private void holds(String where) {
            if (!(kilograms() <= rig.compostLoadKg() + events * Evidence.ROUNDING)) {
                evidence.report(
                        Rule.COMPOST_LOAD,
                        where,
                        "it has " + Evidence.show(kilograms()) + " kg of compost on board, it holds "
                                + Evidence.show(rig.compostLoadKg()) + " kg");
            }
            weighs(where);
        }

        private void weighs(String where) {
            if (rig.payloadKg().isEmpty() || rig.emptyWeightKg().isEmpty()) {
                return;
            }
            double load = rig.emptyWeightKg().getAsDouble() + kilograms() + litres * WATER_KG_PER_L;
            if (!(load <= rig.payloadKg().getAsDouble() + 2 * events * Evidence.ROUNDING)) {
                evidence.report(
                        Rule.PAYLOAD,
                        where,
                        "with water and compost its vehicle carries " + Evidence.show(load) + " kg, its payload is "
                                + Evidence.show(rig.payloadKg().getAsDouble()) + " kg");
            }
        }
    }
}

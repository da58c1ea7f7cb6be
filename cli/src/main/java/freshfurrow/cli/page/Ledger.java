package freshfurrow.cli.page;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.BoundText;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.HowSure;
import freshfurrow.cli.text.MoneyText;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The season in one line of figures: name, value, and what to hold it against. */
final class Ledger {
    private final Season season;
    private final Plan plan;
    private final Figures figures;
    private final BoundText bounds;
    private final WorkWords words;
    private final ArrayNode entries;

    private Ledger(Season season, Plan plan, ArrayNode entries) {
        this.season = season;
        this.plan = plan;
        this.figures = new Figures(season.units());
        this.bounds = new BoundText(plan, figures);
        this.words = WorkWords.of(plan);
        this.entries = entries;
    }

    static void write(ObjectNode data, Season season, Plan plan) {
        Ledger ledger = new Ledger(season, plan, data.putArray("ledger"));
        ledger.area();
        ledger.late();
        ledger.finishPerCrop();
        ledger.refills();
        ledger.effort();
        ledger.freshness();
        ledger.stale();
        ledger.compost();
        ledger.waiting();
        ledger.bill();
        ledger.besides(data);
    }

    private void area() {
        Plan.Totals totals = plan.totals();
        double all = totals.areaHa() + totals.unservedHa();
        entry(
                words.done(),
                figures.area(totals.areaHa()),
                "of " + figures.area(all) + " in "
                        + Figures.count(season.fields().size(), "field", "fields"));
    }

    private void finishPerCrop() {
        Map<String, LocalDateTime> finish = finishByCrop();
        Map<String, Field> lastToClose = new LinkedHashMap<>();
        for (Field field : season.fields()) {
            lastToClose.merge(
                    field.crop(),
                    field,
                    (a, b) -> a.window().last().isBefore(b.window().last()) ? b : a);
        }
        lastToClose.forEach((crop, field) -> {
            LocalDateTime end = finish.get(crop);
            entry(
                    crop + " finished",
                    end == null ? "not started" : Figures.day(end.toLocalDate()),
                    (end == null ? "" : "at " + figures.clock(end) + "; ")
                            + "its last window closes on "
                            + Figures.day(field.window().last())
                            + HowSure.ofCrop(plan, crop));
        });
    }

    private Map<String, LocalDateTime> finishByCrop() {
        Map<String, String> cropOf = new HashMap<>();
        season.fields().forEach(field -> cropOf.put(field.id(), field.crop()));
        Map<String, LocalDateTime> finish = new HashMap<>();
        for (Plan.PlanterPlan planter : plan.planters().values()) {
            for (Activity activity : planter.activities()) {
                if (activity instanceof Activity.Planting planting) {
                    finish.merge(
                            String.valueOf(cropOf.get(planting.field())),
                            planting.end(),
                            (a, b) -> a.isBefore(b) ? b : a);
                }
            }
        }
        return finish;
    }

    private void late() {
        Plan.Totals totals = plan.totals();
        if (totals.untreatedHa() > 0) {
            entry("without extract", figures.area(totals.untreatedHa()), "of all planted");
        }
        entry(
                words.undone(),
                figures.area(totals.unservedHa()),
                bounds.unserved().orElse(Figures.count(plan.unserved().size(), "field", "fields")));
        entry("late", figures.areaDays(totals.lateHaDays()), bounds.late().orElse("area times days after its window"));
    }

    private void refills() {
        Plan.Totals totals = plan.totals();
        entry(
                words.machine() + " fills",
                Integer.toString(totals.planterFills()),
                bounds.fills().orElse("of all " + words.machines()),
                plan.bounds()
                        .map(least -> share(totals.planterFills(), least.planterFills()))
                        .orElse(OptionalDouble.empty()));
        entry(
                "water trips",
                Integer.toString(totals.waterTrips()),
                bounds.waterTrips().orElse("of all rigs"),
                plan.bounds()
                        .map(least -> share(totals.waterTrips(), least.waterTrips()))
                        .orElse(OptionalDouble.empty()));
        if (totals.compostTrips() > 0) {
            entry("compost trips", Integer.toString(totals.compostTrips()), "of all rigs");
        }
        if (totals.idleMin() > 0) {
            entry(
                    "idle",
                    Figures.span(Duration.ofMinutes(Math.round(totals.idleMin()))),
                    "stood for closed fields while another one was open");
        }
        if (totals.overtimeMin() > 0) {
            entry(
                    "overtime",
                    Figures.span(Duration.ofMinutes(Math.round(totals.overtimeMin()))),
                    "of all " + words.machines());
        }
    }

    private void effort() {
        long minutes = -plan.score().soft();
        bounds.effort()
                .ifPresent(proven -> entry(
                        "effort",
                        Figures.count(minutes) + " min",
                        proven,
                        plan.bounds()
                                .map(least -> share(minutes, least.effortMin()))
                                .orElse(OptionalDouble.empty())));
    }

    private static OptionalDouble share(long value, long bound) {
        return value > 0 ? OptionalDouble.of((double) bound / value) : OptionalDouble.empty();
    }

    private void freshness() {
        plan.loads().stream().min(Comparator.comparing(plan::margin)).ifPresent(load -> {
            List<Duration> margins =
                    plan.loads().stream().map(plan::margin).sorted().toList();
            entry(
                    "tightest margin",
                    Figures.span(plan.margin(load)),
                    load.id() + " on " + Figures.day(load.lastDrop().toLocalDate()) + "; a typical load has "
                            + Figures.span(margins.get(margins.size() / 2)));
        });
    }

    private void stale() {
        HowSure.expectedStale(plan)
                .ifPresent(loads -> entry(
                        "stale loads",
                        loads,
                        "of " + plan.loads().size() + " in a season whose times vary as its file says"));
    }

    private void compost() {
        double stock = season.compostWithThatOnBoard().stream()
                .mapToDouble(CompostLot::massKg)
                .sum();
        double used = plan.totals().compostKg();
        entry(
                "compost left",
                figures.mass(Math.max(0, stock - used)),
                "of " + figures.mass(stock) + "; " + figures.mass(used) + " used");
    }

    private void waiting() {
        entry(
                words.machines() + " wait",
                Figures.span(Duration.ofSeconds(Math.round(plan.totals().waitMin() * MINUTE_S))),
                "for a rig, water or compost, in total");
    }

    private void bill() {
        plan.totals().bill().ifPresent(bill -> {
            MoneyText money = new MoneyText(season.units(), bill.currency());
            entry("bill", money.sum(bill.sum()), bounds.bill().orElse("by the prices of the season"));
            bill.lines()
                    .forEach(line -> entry(
                            "bill: " + MoneyText.name(line.item()),
                            money.sum(line.cost()),
                            money.amount(line.item(), line.amount()) + " x " + money.price(line.item(), line.price())));
        });
    }

    private void besides(ObjectNode data) {
        Plan.Totals totals = plan.totals();
        data.put(
                "besides",
                Figures.count(totals.batches(), "batch", "batches") + ", " + figures.distance(totals.driveKm())
                        + " of driving, " + figures.volume(totals.dumpedL()) + " of mix dumped."
                        + bounds.proved().map(what -> " " + what + ".").orElse(""));
    }

    private void entry(String name, String value, String note) {
        entry(name, value, note, OptionalDouble.empty());
    }

    /** @param boundShare how much of the value no plan can do without, 0 to 1 */
    private void entry(String name, String value, String note, OptionalDouble boundShare) {
        ObjectNode entry =
                entries.addObject().put("name", name).put("value", value).put("note", note);
        boundShare.ifPresent(share -> entry.put("boundShare", Numbers.rounded(share)));
    }
}

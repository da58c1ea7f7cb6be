package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.HOUR_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Bill;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Machine;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether the plan's bill is what its season's prices make of its activities, batches and areas. */
final class Prices {
    /** Half a hundredth of the currency, and a little for sums. */
    private static final double MONEY_ROUNDING = 0.005_1;

    /** Half the last decimal of an amount. */
    private static final double AMOUNT_ROUNDING = 0.000_000_6;

    private final Evidence evidence;
    private final PlanTally tally;
    private final double compostKg;

    /** @param compostKg in the batches that the plan makes */
    Prices(Evidence evidence, PlanTally tally, double compostKg) {
        this.evidence = evidence;
        this.tally = tally;
        this.compostKg = compostKg;
    }

    private record Charge(double amount, double price, double tolerance) {
        double cost() {
            return amount * price;
        }
    }

    void check() {
        Optional<Bill> told = evidence.plan.totals().bill();
        Optional<Costs> prices = evidence.season.goals().byMoney();
        if (told.isPresent() != prices.isPresent()) {
            report(
                    "bill",
                    told.isPresent()
                            ? "there is one, and the season is not judged by money"
                            : "it is missing, and the season is judged by money");
            return;
        }
        if (told.isPresent()) {
            check(told.get(), prices.orElseThrow());
        }
    }

    private void check(Bill told, Costs prices) {
        if (!told.currency().equals(prices.currency())) {
            report("bill", "its currency is not that of the season");
        }
        Map<CostItem, Charge> due = charges(prices);
        due.values().removeIf(charge -> charge.price() == 0);
        List<CostItem> items = told.lines().stream().map(Bill.Line::item).toList();
        if (!items.equals(List.copyOf(due.keySet()))) {
            report("bill", "it lists " + items + ", and " + due.keySet() + " have a price");
            return;
        }
        told.lines().forEach(line -> check(line, due.get(line.item())));
    }

    private void check(Bill.Line line, Charge due) {
        String where = "bill." + line.item().key();
        if (!Evidence.same(line.amount(), due.amount(), due.tolerance())) {
            report(
                    where,
                    "amount is " + Evidence.show(line.amount()) + ", the plan has " + Evidence.show(due.amount()));
        }
        if (!Evidence.same(line.price(), due.price(), AMOUNT_ROUNDING)) {
            report(
                    where,
                    "price is " + Evidence.show(line.price()) + ", the season's is " + Evidence.show(due.price()));
        }
        double tolerance = MONEY_ROUNDING + due.tolerance() * due.price();
        if (!Evidence.same(line.cost(), due.cost(), tolerance)) {
            report(where, "cost is " + Evidence.show(line.cost()) + ", it comes to " + Evidence.show(due.cost()));
        }
    }

    private void report(String where, String what) {
        evidence.report(Rule.BILL, where, what);
    }

    /** What everything comes to, in the currency. */
    double sum(Costs prices) {
        return charges(prices).values().stream().mapToDouble(Charge::cost).sum();
    }

    /** By how much the rounding of a plan's figures may change that. */
    double tolerance(Costs prices) {
        return charges(prices).values().stream()
                .mapToDouble(charge -> charge.tolerance() * charge.price())
                .sum();
    }

    private Map<CostItem, Charge> charges(Costs prices) {
        Plan plan = evidence.plan;
        double roundings = (evidence.activities.size() + plan.loads().size() + 1) * Evidence.ROUNDING;
        double areaRounding = Evidence.AREA_ROUNDING_HA;
        double days = evidence.season.days();
        Map<CostItem, Charge> charges = new EnumMap<>(CostItem.class);
        charges.put(
                CostItem.WORK,
                new Charge(workSeconds() / HOUR_S, prices.labourPerH() + prices.fuelPerH(), AMOUNT_ROUNDING));
        charges.put(CostItem.ROAD, new Charge(tally.driveKm, prices.fuelPerKm(), roundings));
        charges.put(CostItem.COMPOST, new Charge(compostKg, prices.compostPerKg(), roundings));
        charges.put(CostItem.LATE, new Charge(tally.lateHaDays(), prices.latePerHaDay(), areaRounding * days));
        charges.put(CostItem.UNPLANTED, new Charge(tally.unservedHa, prices.unservedPerHa(), areaRounding));
        charges.put(CostItem.UNTREATED, new Charge(tally.untreatedHa(), prices.untreatedPerHa(), areaRounding));
        charges.put(CostItem.WATER, new Charge(waterL(), prices.waterPerL(), roundings));
        charges.put(
                CostItem.OVERTIME,
                new Charge(
                        new Overtime(evidence).minutes() * MINUTE_S / HOUR_S, prices.overtimePerH(), AMOUNT_ROUNDING));
        return charges;
    }

    private double waterL() {
        return evidence.all(Activity.Draw.class).stream()
                .mapToDouble(done -> done.activity().litres())
                .sum();
    }

    private record Day(Machine crew, long day) {}

    private record Span(long first, long last) {
        Span and(Span other) {
            return new Span(Math.min(first, other.first), Math.max(last, other.last));
        }
    }

    /** Of each machine and day from its first deed to its last, as far as that lies in its hours; what is mounted on a rig and the rig are one. */
    private double workSeconds() {
        Map<Day, Span> days = new HashMap<>();
        for (Evidence.Done<Activity> done : evidence.activities) {
            Machine crew = crew(done.machine());
            if (crew != null && isWork(done.activity())) {
                long start = evidence.start(done.activity());
                long lastDay = evidence.season.days() - 1L;
                days.merge(
                        new Day(crew, Math.min(start / DAY_S, lastDay)),
                        new Span(start, evidence.end(done.activity())),
                        Span::and);
            }
        }
        double seconds = 0;
        for (Map.Entry<Day, Span> day : days.entrySet()) {
            Machine crew = day.getKey().crew();
            for (WorkCalendar.Period hours : evidence.calendar.work(crew.id(), crew.hours())) {
                seconds += hours.overlap(day.getValue().first(), day.getValue().last());
            }
        }
        return seconds;
    }

    private @Nullable Machine crew(String id) {
        Applicator planter = evidence.planters.get(id);
        return planter == null
                ? evidence.rigs.get(id)
                : planter.on().<Machine>map(evidence.rigs::get).orElse(planter);
    }

    /** Waits are paid as far as they are counted: for a rig, water or compost. */
    private boolean isWork(Activity activity) {
        return !(activity instanceof Activity.Wait wait)
                || wait.why() == WaitReason.RIG
                || wait.why() == WaitReason.WATER
                || wait.why() == WaitReason.COMPOST;
    }
}

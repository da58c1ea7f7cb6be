package freshfurrow.cli.text;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Bill;
import freshfurrow.model.plan.Plan;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The totals of a plan, as people read them.
 *
 * @param lines what a season comes to, in the order in which it is told
 * @param proved what is proven of the plan, in a sentence without its stop
 */
public record PlanTotals(List<Line> lines, Optional<String> proved) {
    private static final String BILL_LINE = "  ";

    public PlanTotals {
        lines = List.copyOf(lines);
    }

    /**
     * One of them, as {@code Dumped} and {@code 12 gal of mix}.
     *
     * @param remark what is proven of it, as it stands behind it; empty where nothing is
     */
    public record Line(String name, String amount, String remark) {
        public String figure() {
            return amount + remark;
        }

        /** Whether it is one of those that the bill adds up; they are set in. */
        public boolean isOfBill() {
            return name.startsWith(BILL_LINE);
        }
    }

    public static PlanTotals of(Plan plan) {
        return new Writer(plan).all();
    }

    private static final class Writer {
        private final Plan plan;
        private final Figures figures;
        private final List<Line> lines = new ArrayList<>();

        Writer(Plan plan) {
            this.plan = plan;
            figures = new Figures(plan.season().units());
        }

        PlanTotals all() {
            Plan.Totals totals = plan.totals();
            WorkWords words = WorkWords.of(plan);
            BoundText bounds = new BoundText(plan, figures);
            total(
                    WorkWords.capital(words.done()),
                    figures.area(totals.areaHa())
                            + (totals.areaHa() > 0
                                    ? ", finished on "
                                            + Figures.day(totals.finish().toLocalDate())
                                            + " at "
                                            + figures.clock(totals.finish())
                                    : ""));
            if (totals.untreatedHa() > 0) {
                total("Without extract", figures.area(totals.untreatedHa()) + " of that");
            }
            total(WorkWords.capital(words.undone()), figures.area(totals.unservedHa()), bounds.unserved());
            total("Late", figures.areaDays(totals.lateHaDays()), bounds.late());
            total(
                    "Fills",
                    Figures.count(totals.planterFills(), words.machine() + " fill", words.machine() + " fills"),
                    bounds.fills());
            total("Water trips", Integer.toString(totals.waterTrips()), bounds.waterTrips());
            if (totals.compostTrips() > 0) {
                total("Compost trips", Integer.toString(totals.compostTrips()));
            }
            total("Batches", totals.batches() + ", with " + figures.mass(totals.compostKg()) + " of compost");
            total("Dumped", figures.volume(totals.dumpedL()) + " of mix");
            total(
                    "Waiting",
                    words.machines() + " wait " + Figures.span(minutes(totals.waitMin()))
                            + " for a rig, water or compost");
            if (totals.idleMin() > 0) {
                total(
                        "Idle",
                        words.machines() + " stand " + Figures.span(minutes(totals.idleMin()))
                                + " for closed fields while another one of theirs is open");
            }
            if (totals.overtimeMin() > 0) {
                total(
                        "Overtime",
                        Figures.span(minutes(totals.overtimeMin())) + " " + words.done()
                                + " past the hours of the day");
            }
            total(
                    "Driving",
                    figures.distance(totals.driveKm()) + ", " + words.machines().replace(" and ", ", ")
                            + " and rigs together");
            bounds.effort()
                    .ifPresent(proven ->
                            total("Effort", Figures.count(-plan.score().soft()) + " min", Optional.of(proven)));
            if (!plan.loads().isEmpty()) {
                total(
                        "Freshness",
                        "the tightest load is in the ground " + Figures.span(minutes(totals.smallestMarginMin()))
                                + " before its use-by time; a typical load " + Figures.span(medianMargin())
                                + " before");
            }
            HowSure.crops(plan).ifPresent(crops -> total("How sure", crops));
            HowSure.stale(plan).ifPresent(loads -> total("Stale", loads));
            totals.bill().ifPresent(bill -> bill(bill, bounds));
            return new PlanTotals(lines, bounds.proved());
        }

        private void bill(Bill bill, BoundText bounds) {
            MoneyText money = new MoneyText(plan.season().units(), bill.currency());
            total("Bill", money.sum(bill.sum()), bounds.bill());
            bill.lines()
                    .forEach(line -> total(
                            BILL_LINE + MoneyText.name(line.item()),
                            money.sum(line.cost()) + ": " + money.amount(line.item(), line.amount()) + " x "
                                    + money.price(line.item(), line.price())));
        }

        private void total(String name, String amount) {
            total(name, amount, Optional.empty());
        }

        private void total(String name, String amount, Optional<String> proven) {
            lines.add(
                    new Line(name, amount, proven.map(text -> " (" + text + ")").orElse("")));
        }

        /** Of an even number of loads the larger one in the middle: half of them reach it. */
        private Duration medianMargin() {
            List<Duration> margins =
                    plan.loads().stream().map(plan::margin).sorted().toList();
            return margins.get(margins.size() / 2);
        }
    }

    private static Duration minutes(double minutes) {
        return Duration.ofSeconds((long) Math.floor(minutes * MINUTE_S + 1e-6));
    }
}

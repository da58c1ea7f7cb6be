package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.LongFunction;

/** How near a plan's totals are to their proven minimum: a remark on each, or nothing when there is no bound. */
public final class BoundText {
    /** In which the score counts money. */
    private static final double MILLIONTHS = 1e6;

    private final Plan plan;
    private final Figures figures;
    private final WorkWords words;
    private final String among;

    public BoundText(Plan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
        words = WorkWords.of(plan);
        among = plan.totals().unservedHa() > 0 ? " for a plan that " + words.does() + " as much" : "";
    }

    public Optional<String> fills() {
        return plan.bounds()
                .map(bounds -> count(plan.totals().planterFills(), bounds.planterFills(), amongAsPunctual()));
    }

    public Optional<String> waterTrips() {
        return plan.bounds().map(bounds -> count(plan.totals().waterTrips(), bounds.waterTrips(), among));
    }

    /** Of effort, where anything is proven of it. */
    public Optional<String> effort() {
        return plan.bounds()
                .filter(bounds -> bounds.effortMin() > 0)
                .map(bounds -> count(-plan.score().soft(), bounds.effortMin(), amongAsPunctual(), Figures::count));
    }

    private String amongAsPunctual() {
        if (plan.totals().lateHaDays() == 0) {
            return among;
        }
        return among.isEmpty() ? " for a plan that is no later" : among + " and is no later";
    }

    public Optional<String> unserved() {
        return plan.bounds()
                .flatMap(bounds -> least(
                        "",
                        plan.totals().unservedHa(),
                        bounds.unservedHa(),
                        figures::area,
                        " more could be " + words.done()));
    }

    public Optional<String> late() {
        return plan.bounds()
                .flatMap(bounds -> least(
                        among, plan.totals().lateHaDays(), bounds.lateHaDays(), figures::areaDays, " could be saved"));
    }

    /** What is proved of the plan as a whole, a sentence without its stop. */
    public Optional<String> proved() {
        return plan.bounds().flatMap(bounds -> {
            if (bounds.provedBest()) {
                return Optional.of("Proven best: every possible plan was tried and none "
                        + (plan.totals().bill().isPresent() ? "costs less" : "scores better"));
            }
            if (plan.totals().bill().isPresent()) {
                return Optional.empty();
            }
            if (bounds.medium() < 0 && bounds.medium() == plan.score().medium()) {
                return Optional.of("Proven: no plan for this season can have less late or " + words.undone()
                        + " area (as weighted by its goals)");
            }
            return Optional.empty();
        });
    }

    /** Of what the plan costs. */
    public Optional<String> bill() {
        return plan.bounds().flatMap(bounds -> plan.totals().bill().map(bill -> {
            double least = -bounds.medium() / MILLIONTHS;
            MoneyText money = new MoneyText(plan.season().units(), bill.currency());
            return bounds.provedBest() ? "the proven minimum" : "proven minimum " + money.sum(least);
        }));
    }

    private static String count(int count, int fewest, String those) {
        return count(count, fewest, those, Long::toString);
    }

    private static String count(long count, long fewest, String those, LongFunction<String> shown) {
        return count <= fewest
                ? "the proven minimum" + those
                : shown.apply(fewest) + " is the proven minimum" + those + ", so at most " + shown.apply(count - fewest)
                        + " could be saved";
    }

    private static Optional<String> least(
            String among, double value, double least, DoubleFunction<String> shown, String rest) {
        if (value == 0) {
            return Optional.empty();
        }
        return Optional.of(
                shown.apply(value).equals(shown.apply(least))
                        ? "the proven minimum" + among
                        : "proven minimum" + among + " " + shown.apply(least) + "; at most "
                                + shown.apply(value - least) + rest);
    }
}

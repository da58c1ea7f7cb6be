package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** How near a plan's totals are to what no plan can do better: a remark on each, or nothing when there is no bound. */
public final class BoundText {
    private final Plan plan;
    private final Figures figures;
    private final String noPlan;

    public BoundText(Plan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
        noPlan = plan.totals().unservedHa() > 0 ? "no plan that plants as much" : "no plan";
    }

    /** Without bounds, the totals' least number of fills is that of plans that leave nothing out. */
    public Optional<String> fills() {
        if (plan.bounds().isEmpty() && plan.totals().unservedHa() > 0) {
            return Optional.empty();
        }
        int fewest = plan.bounds()
                .map(Plan.Bounds::planterFills)
                .orElse(plan.totals().refillLowerBound());
        return Optional.of(count(plan.totals().planterFills(), fewest));
    }

    public Optional<String> waterTrips() {
        return plan.bounds().map(bounds -> count(plan.totals().waterTrips(), bounds.waterTrips()));
    }

    public Optional<String> unserved() {
        return plan.bounds()
                .flatMap(bounds ->
                        least("no plan leaves less", plan.totals().unservedHa(), bounds.unservedHa(), figures::area));
    }

    public Optional<String> late() {
        return plan.bounds()
                .flatMap(bounds -> least(
                        noPlan + " has less", plan.totals().lateHaDays(), bounds.lateHaDays(), figures::areaDays));
    }

    /** What is proved of the plan as a whole. */
    public Optional<String> proved() {
        return plan.bounds().flatMap(bounds -> {
            if (bounds.provedBest()) {
                return Optional.of("proved best: every plan of this season was tried, and none has a better score");
            }
            if (bounds.medium() < 0 && bounds.medium() == plan.score().medium()) {
                return Optional.of("no plan of this season has less late and unplanted area, as its goals weigh them");
            }
            return Optional.empty();
        });
    }

    private String count(int count, int fewest) {
        return count <= fewest
                ? noPlan + " needs fewer"
                : noPlan + " needs fewer than " + fewest + ": gap " + (count - fewest);
    }

    private static Optional<String> least(String none, double value, double least, DoubleFunction<String> shown) {
        if (value == 0) {
            return Optional.empty();
        }
        return Optional.of(
                shown.apply(value).equals(shown.apply(least))
                        ? none
                        : none + " than " + shown.apply(least) + ": gap " + shown.apply(value - least));
    }
}

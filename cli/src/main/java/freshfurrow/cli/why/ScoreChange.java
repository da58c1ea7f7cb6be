package freshfurrow.cli.why;

import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.MoneyText;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.goals.Goal;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.goals.Level;
import freshfurrow.model.plan.Plan;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What another place for a field changes: the parts of the score, the fields that it makes late or brings into time, and the score. */
final class ScoreChange {
    /** In which the score counts money. */
    private static final double MILLIONTHS = 1e6;

    private final FieldExplanation why;
    private final Figures figures;
    private final Optional<MoneyText> money;
    private final List<String> lines = new ArrayList<>();

    private ScoreChange(FieldExplanation why, Figures figures) {
        this.why = why;
        this.figures = figures;
        money = why.season()
                .goals()
                .byMoney()
                .map(prices -> new MoneyText(why.season().units(), prices.currency()));
    }

    static List<String> lines(FieldExplanation why, Figures figures, FieldExplanation.Alternative alternative) {
        ScoreChange change = new ScoreChange(why, figures);
        change.write(alternative.position().outcome(), alternative.plan());
        return change.lines;
    }

    private void write(Outcome outcome, Plan plan) {
        for (Goal goal : GoalSet.of(why.season()).goals()) {
            Outcome planned = why.positions().planned();
            double change = goal.amount().applyAsDouble(outcome) - goal.amount().applyAsDouble(planned);
            double cost = goal.cost(outcome) - goal.cost(planned);
            if (change != 0 && !isFree(goal)) {
                part(goal.name(), amount(goal.unit(), change) + worth(goal, cost));
            }
        }
        List<String> fields = new FieldChanges(why, figures).lines(plan);
        if (!fields.isEmpty()) {
            part("fields", String.join(", ", fields));
        }
        part("score", score(outcome.score()) + ": " + comparison(outcome));
    }

    /** What has no price is on no bill. */
    private boolean isFree(Goal goal) {
        return money.isPresent() && goal.level() == Level.MEDIUM && goal.weight() == 0;
    }

    private void part(String name, String what) {
        lines.add(String.format(Locale.ROOT, "  %-15s%s", name, what));
    }

    private String comparison(Outcome outcome) {
        int order = Outcome.BEST_FIRST.compare(outcome, why.positions().planned());
        return order == 0 ? "as good" : order < 0 ? "better" : "worse";
    }

    private String amount(String unit, double change) {
        String sign = change < 0 ? "-" : "+";
        double size = Math.abs(change);
        return sign
                + switch (unit) {
                    case "ha" -> figures.area(size);
                    case "ha-days" -> figures.areaDays(size);
                    case "kg" -> figures.mass(size);
                    case "km" -> figures.distance(size);
                    case "L" -> figures.volume(size);
                    case "h" -> String.format(Locale.ROOT, "%,.1f h", size);
                    case "min" -> minutes(size);
                    default -> String.format(Locale.ROOT, "%.0f", size);
                };
    }

    /** What the change costs on the level of its goal. */
    private String worth(Goal goal, double cost) {
        String sign = cost < 0 ? "-" : "+";
        return switch (goal.level()) {
            case HARD -> "";
            case MEDIUM ->
                money.map(text -> ", " + sign + text.sum(Math.abs(cost) / MILLIONTHS))
                        .orElseGet(() -> ", weighted " + sign + figures.areaDays(Math.abs(cost) / 100));
            case SOFT -> ", effort " + sign + minutes(Math.abs(cost));
        };
    }

    /** The levels of a score. */
    static String score(FieldExplanation why, Figures figures, Plan.Score score) {
        return new ScoreChange(why, figures).score(score);
    }

    private String score(Plan.Score score) {
        String medium = money.map(text -> "bill " + text.sum(-score.medium() / MILLIONTHS))
                .orElseGet(() -> weighted(-score.medium() / 100.0) + " " + counted());
        return (score.hard() < 0 ? -score.hard() + " rules broken, " : "")
                + medium + "; effort score "
                + String.format(Locale.ROOT, "%,d min", -score.soft());
    }

    /** What the second level of a score counts. */
    private String counted() {
        WorkWords all = WorkWords.of(why.season());
        return why.season().goals().untreatedDays().isPresent()
                ? "late, " + all.undoneOrWithoutExtract()
                : "late or " + all.undone();
    }

    private String weighted(double areaDays) {
        return figures.areaDays(areaDays).replaceFirst(" ", " weighted ");
    }

    private static String minutes(double minutes) {
        return String.format(Locale.ROOT, "%,.1f min", minutes);
    }
}

package freshfurrow.cli.text;

import freshfurrow.model.plan.Chances;
import freshfurrow.model.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How sure a plan is, in words. */
public final class HowSure {
    private static final int MOST_NAMED = 5;

    /** Of a chance that is told to a crew. */
    private static final double LEAST_TOLD = 0.01;

    private HowSure() {}

    /** All of it where the plan's totals are not told; begins with an empty line, and is nothing where nothing varies. */
    public static List<String> byItself(Plan plan) {
        List<String> lines = new ArrayList<>();
        crops(plan).ifPresent(crops -> lines.add("How sure: " + crops));
        stale(plan).ifPresent(loads -> lines.add("Stale: " + loads));
        if (!lines.isEmpty()) {
            lines.add(0, "");
        }
        lines.addAll(lines(plan));
        return lines;
    }

    /** Of each crop, as {@code of 100 simulated seasons, all corn is in its window in 85, all beans in 97}; empty where nothing varies. */
    static Optional<String> crops(Plan plan) {
        List<String> crops = new ArrayList<>();
        plan.chances().ifPresent(chances -> chances.inWindow()
                .forEach((crop, chance) -> crops.add(
                        "all " + crop + (crops.isEmpty() ? " is in its window in " : " in ") + hundredths(chance))));
        return crops.isEmpty()
                ? Optional.empty()
                : Optional.of("of 100 simulated seasons, " + String.join(", ", crops));
    }

    /** Of a crop, as {@code ; all in its window in 85 of 100 simulated seasons}; nothing where nothing varies. */
    public static String ofCrop(Plan plan, String crop) {
        return plan.chances()
                .map(chances -> chances.inWindow().get(crop))
                .map(chance -> "; all in its window in " + hundredths(chance) + " of 100 simulated seasons")
                .orElse("");
    }

    /** How many loads go stale in a season, as {@code about 3 of 142 loads in a season}; empty where nothing varies. */
    static Optional<String> stale(Plan plan) {
        return expectedStale(plan)
                .map(expected ->
                        expected + " of " + Figures.count(plan.loads().size(), "load", "loads") + " in a season");
    }

    /** On average over seasons, as {@code about 3}; empty where nothing varies. */
    public static Optional<String> expectedStale(Plan plan) {
        return plan.chances().map(chances -> {
            double expected = chances.stale().values().stream()
                    .mapToDouble(chance -> chance)
                    .sum();
            return expected < 1 ? "less than 1" : "about " + Math.round(expected);
        });
    }

    /** The loads that most likely go stale, with a heading; nothing where none is likely to. */
    static List<String> lines(Plan plan) {
        List<String> lines = new ArrayList<>();
        Figures figures = new Figures(plan.season().units());
        plan.chances().ifPresent(chances -> plan.loads().stream()
                .filter(load -> chances.stale(load.id()) >= LEAST_TOLD)
                .sorted(Comparator.comparingDouble((Plan.Load load) -> -chances.stale(load.id())))
                .limit(MOST_NAMED)
                .forEach(load -> lines.add("  " + load.id() + " into " + load.planter() + ", last drop on "
                        + Figures.day(load.lastDrop().toLocalDate()) + " at " + figures.clock(load.lastDrop()) + ": "
                        + inSeasons(chances, load))));
        if (!lines.isEmpty()) {
            lines.add(0, "Most likely to go stale");
            lines.add(0, "");
        }
        return lines;
    }

    private static String inSeasons(Chances chances, Plan.Load load) {
        return "in " + hundredths(chances.stale(load.id())) + " of 100 seasons";
    }

    /** What a crew is told of a load, as {@code , goes stale in 12 of 100 seasons}; nothing where that is not likely. */
    public static String ofLoad(Plan plan, Plan.Load load) {
        return plan.chances()
                .filter(chances -> chances.stale(load.id()) >= LEAST_TOLD)
                .map(chances -> ", goes stale " + inSeasons(chances, load))
                .orElse("");
    }

    /** Never all or nothing where that was not seen. */
    private static long hundredths(double chance) {
        long rounded = Math.round(100 * chance);
        if (chance > 0 && chance < 1) {
            return Math.min(99, Math.max(1, rounded));
        }
        return rounded;
    }
}

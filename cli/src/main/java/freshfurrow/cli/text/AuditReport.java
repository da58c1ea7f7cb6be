package freshfurrow.cli.text;

import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What an audit found, a line each; or what it looked at when it found nothing. */
public final class AuditReport {
    private static final int WIDTH = 100;

    private AuditReport() {}

    /** The report, a line an entry. */
    public static List<String> lines(Season season, Plan plan, List<Finding> findings) {
        return findings.isEmpty()
                ? Stream.concat(
                                Stream.of(String.format(
                                        Locale.ROOT,
                                        "No problems found. %d rules checked on %d of %s, %s, %s, %s and %s:",
                                        Rule.values().length,
                                        plan.planters().values().stream()
                                                .mapToInt(planter ->
                                                        planter.fields().size())
                                                .sum(),
                                        Figures.count(season.fields().size(), "field", "fields"),
                                        Figures.count(plan.loads().size(), "load", "loads"),
                                        Figures.count(plan.batches().size(), "batch", "batches"),
                                        machines(plan),
                                        Figures.count(plan.rigs().size(), "rig", "rigs"))),
                                rules().stream())
                        .toList()
                : findings.stream().map(AuditReport::line).toList();
    }

    /** As {@code 2 planters}, or {@code 1 planter, 1 sprayer}. */
    private static String machines(Plan plan) {
        return plan.planters().values().stream()
                .map(Plan.PlanterPlan::work)
                .collect(Collectors.groupingBy(work -> work, TreeMap::new, Collectors.summingInt(one -> 1)))
                .entrySet()
                .stream()
                .map(entry -> Figures.count(
                        entry.getValue(),
                        WorkWords.of(entry.getKey()).machine(),
                        WorkWords.of(entry.getKey()).machines()))
                .collect(Collectors.joining(", "));
    }

    /** All rules, in lines that fit a terminal. */
    private static List<String> rules() {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (Rule rule : Rule.values()) {
            String name = name(rule);
            if (!line.isEmpty() && line.length() + name.length() + 3 > WIDTH) {
                lines.add(line + ",");
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : ", ").append(name);
        }
        lines.add(line + ".");
        return lines;
    }

    /**
     * The report on a plan that was not made from the season it is held against. What it breaks would fill pages and say nothing but
     * that, so it is only counted.
     *
     * @param why what the plan is, a sentence without its stop
     */
    public static List<String> ofAnotherSeason(String why, Season season, Plan plan, List<Finding> findings) {
        if (!findings.isEmpty()) {
            long rules = findings.stream().map(Finding::rule).distinct().count();
            return List.of(ofAnotherSeason(why) + " Checked against this season it breaks "
                    + (rules == 1 ? "1 rule" : rules + " rules") + " in "
                    + (findings.size() == 1 ? "1 place." : findings.size() + " places."));
        }
        return Stream.concat(
                        Stream.of(ofAnotherSeason(why) + " It keeps the rules of this season all the same."),
                        lines(season, plan, findings).stream())
                .toList();
    }

    /** That a plan was not made from the season it is held against, and what to do. */
    public static String ofAnotherSeason(String why) {
        return why + "; name the season and the variants that it was made from, or make a new plan.";
    }

    /** A finding as one line. */
    public static String line(Finding finding) {
        return name(finding.rule()) + ": " + finding.where() + ": " + finding.what();
    }

    private static String name(Rule rule) {
        return rule.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

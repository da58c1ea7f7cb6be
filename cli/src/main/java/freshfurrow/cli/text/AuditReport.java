package freshfurrow.cli.text;

import freshfurrow.model.audit.Finding;
import freshfurrow.model.audit.Rule;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What an audit found, a line each; or what it looked at when it found nothing. */
public final class AuditReport {
    private AuditReport() {}

    /** The report, a line an entry. */
    public static List<String> lines(Season season, Plan plan, List<Finding> findings) {
        return findings.isEmpty()
                ? List.of(
                        String.format(
                                Locale.ROOT,
                                "Nothing found. Checked: %d of %d fields, %d loads, %d batches, %d planters and %d rigs, by %d rules:",
                                plan.planters().values().stream()
                                        .mapToInt(planter -> planter.fields().size())
                                        .sum(),
                                season.fields().size(),
                                plan.loads().size(),
                                plan.batches().size(),
                                plan.planters().size(),
                                plan.rigs().size(),
                                Rule.values().length),
                        Arrays.stream(Rule.values()).map(AuditReport::name).collect(Collectors.joining(", ")) + ".")
                : findings.stream().map(AuditReport::line).toList();
    }

    /** A finding as one line. */
    public static String line(Finding finding) {
        return name(finding.rule()) + ": " + finding.where() + ": " + finding.what();
    }

    private static String name(Rule rule) {
        return rule.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

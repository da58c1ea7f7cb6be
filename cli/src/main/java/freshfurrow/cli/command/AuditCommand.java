package freshfurrow.cli.command;

import freshfurrow.app.input.PlanChoice;
import freshfurrow.app.input.PlanOrigin;
import freshfurrow.cli.text.AuditReport;
import freshfurrow.model.audit.Audit;
import freshfurrow.model.audit.Finding;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "audit",
        header = "Check a plan against its season, from first principles.",
        description =
                "%nShares no timing code with the planning. Each finding is a line: rule, place, what is wrong. Findings make exit code 1. A plan of a varied season is audited with the same --variant options.%n",
        footer = {
            "  freshfurrow audit scenarios/first-season scenarios/first-season/plan",
            "  freshfurrow audit season.yaml plan.json"
        })
final class AuditCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Parameters(paramLabel = "PLAN", index = "1", description = "a plan file, or a folder that holds plan.json")
    private Path plan = Path.of("");

    @Override
    public Integer call() {
        Reading.Valid read = season.read();
        Plan planned = PlanChoice.readToAudit(plan);
        Path file = PlanChoice.file(plan);
        Optional<String> other = PlanOrigin.otherThan(read, planned).map(why -> file + " " + why);
        try {
            Season madeFor = SeasonOfPlan.whatItWasMadeFor(file, planned, read.season());
            List<Finding> findings = Audit.check(madeFor, planned);
            Output.print(
                    spec,
                    other.map(why -> AuditReport.ofAnotherSeason(why, madeFor, planned, findings))
                            .orElseGet(() -> AuditReport.lines(madeFor, planned, findings)));
            return findings.isEmpty() ? Freshfurrow.OK : Freshfurrow.PROBLEM;
        } catch (Refusal refusal) {
            throw other.map(why -> new Refusal(AuditReport.ofAnotherSeason(why)))
                    .orElse(refusal);
        }
    }
}

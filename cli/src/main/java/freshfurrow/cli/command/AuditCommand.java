package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.plan.AuditedPlan;
import freshfurrow.cli.text.AuditReport;
import freshfurrow.cli.words.OriginText;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "audit",
        header = "Check a plan against the rules of its season.",
        description =
                "%nThe audit works out every time and amount again with code of its own. Each finding is one line: rule, place, what is wrong. Exit code 1 means there are findings. If the plan was made with variants, give the same --variant options.%n",
        footer = {
            "  freshfurrow audit scenarios/first-season scenarios/first-season/plan",
            "  freshfurrow audit season.yaml plan.json"
        })
final class AuditCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Parameters(paramLabel = "PLAN", index = "1", description = "a plan file, or a folder with plan.json")
    private Path plan = Path.of("");

    @Override
    public Integer call() {
        AuditedPlan audited = AuditedPlan.of(season.given(), new GivenPlan(plan));
        Output.print(spec, lines(audited));
        return audited.findings().isEmpty() ? Freshfurrow.OK : Freshfurrow.PROBLEM;
    }

    private static List<String> lines(AuditedPlan audited) {
        if (audited.ofThisSeason()) {
            return AuditReport.lines(audited.season(), audited.plan(), audited.findings());
        }
        String other = OriginText.clause(
                audited.file(), audited.season().name(), audited.plan().season());
        return AuditReport.ofAnotherSeason(other, audited.season(), audited.plan(), audited.findings());
    }
}

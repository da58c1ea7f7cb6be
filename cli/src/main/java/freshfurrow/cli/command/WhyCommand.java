package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.plan.WhyField;
import freshfurrow.cli.why.WhyReport;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "why",
        header = "Explain why a field is planted when it is, and what would change it.",
        description =
                "%nSays what keeps the field from being planted sooner and what comes before it, tries the field at every other position in the planting order, and, if it is late, unplanted or planted without extract, finds what extra compost, hours, water or rigs would get it planted in time or with extract.%n",
        footer = {
            "  freshfurrow why scenarios/first-season/plan W95",
            "  freshfurrow why plan.json N40 --season season.yaml"
        })
final class WhyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder with plan.json")
    private Path plan = Path.of("");

    @Parameters(paramLabel = "FIELD", index = "1", description = "id of a field of its season")
    private String field = "";

    @Mixin
    private SeasonOfPlanOptions season = new SeasonOfPlanOptions();

    @Override
    public Integer call() {
        Output.print(spec, WhyReport.lines(WhyField.of(new GivenPlan(plan), season.given(), field)));
        return Freshfurrow.OK;
    }
}

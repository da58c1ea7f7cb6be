package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.plan.DayOfPlan;
import freshfurrow.cli.text.DaySheet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "day",
        header = "Print the day sheet for one day of a plan.",
        description =
                "%nLists each drive, draw, batch and transfer of every rig, and each drive, fill and field of every planter, with times, amounts and use-by times. Needs only the plan file.%n",
        footer = {
            "  freshfurrow day scenarios/first-season/plan 2027-04-22",
            "  freshfurrow day plan.json 2027-05-03 > monday.txt"
        })
final class DayCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder with plan.json")
    private Path plan = Path.of("");

    @Parameters(
            paramLabel = "DATE",
            index = "1",
            description = "year-month-day, like 2027-04-20",
            converter = DateConverter.class)
    private LocalDate date = LocalDate.EPOCH;

    @Override
    public Integer call() {
        DayOfPlan day = DayOfPlan.of(new GivenPlan(plan), date);
        Output.print(spec, DaySheet.lines(day.plan(), day.day()));
        return Freshfurrow.OK;
    }
}

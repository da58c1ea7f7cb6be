package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.plan.DayOfPlan;
import freshfurrow.cli.text.DaySheet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
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
            "  freshfurrow day scenarios/first-season/plan",
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
            arity = "0..1",
            description = "year-month-day, like 2027-04-20 (default: today, or the next day with work)",
            converter = DateConverter.class)
    private Optional<LocalDate> date = Optional.empty();

    @Override
    public Integer call() {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        GivenPlan given = new GivenPlan(plan);
        DayOfPlan day = date.map(asked -> DayOfPlan.of(given, asked)).orElseGet(() -> DayOfPlan.next(given, today));
        if (date.isEmpty()) {
            Output.print(spec, DaySheet.chosen(day.plan(), day.day(), today));
        }
        Output.print(spec, DaySheet.lines(day.plan(), day.day()));
        return Freshfurrow.OK;
    }
}

package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.plan.SheetsOfPlan;
import freshfurrow.cli.text.Figures;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "sheets",
        header = "Write crew sheets to print: one page per machine per day.",
        description =
                "%nWrites one HTML file that any browser prints on A4 or US Letter. Rigs get each batch with compost, buckets, water and use-by time, each draw and each transfer; planters get each fill and field. There are boxes to tick and blanks for actual times and amounts. Needs only the plan file.%n",
        footer = {
            "  freshfurrow sheets scenarios/first-season/plan",
            "  freshfurrow sheets plan.json --day 2027-04-22 --out thursday.html"
        })
final class SheetsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder with plan.json")
    private Path plan = Path.of("");

    @Option(
            names = "--day",
            paramLabel = "DATE",
            converter = DateConverter.class,
            description = "only that day, like 2027-04-20 (default: all days)")
    private Optional<LocalDate> day = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "the file to write (default: sheets.html, or sheets-DATE.html, beside the plan)")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--force", description = "replace an existing file")
    private boolean force;

    @Override
    public Integer call() {
        String line = SheetsOfPlan.write(new GivenPlan(plan), day, out, force)
                .map(sheets -> Figures.count(sheets.count(), "sheet", "sheets") + " written to " + sheets.file()
                        + "; open it in a browser and print it.")
                .orElse("The plan has no work on any day, so there are no sheets to write.");
        Output.print(spec, List.of(line));
        return Freshfurrow.OK;
    }
}

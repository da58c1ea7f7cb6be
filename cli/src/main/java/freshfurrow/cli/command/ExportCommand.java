package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.plan.PlanExport;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "export",
        header = "Write a plan as a calendar, tables and a map for other programs.",
        description =
                "%nplan.ics has an entry for each machine and day, fields.csv, loads.csv and batches.csv are tables in the season's units, plan.geojson is a map of fields, water points and places. If you replace a calendar, import it again: entries that changed are updated, and those that are gone are cancelled.%n",
        footer = {
            "  freshfurrow export scenarios/first-season/plan",
            "  freshfurrow export plan.json --season ../season.yaml --only calendar --force"
        })
final class ExportCommand implements Callable<Integer> {
    /** What there is to export. */
    enum Kind {
        calendar(PlanExport.Part.CALENDAR),
        tables(PlanExport.Part.TABLES),
        map(PlanExport.Part.MAP);

        private final PlanExport.Part part;

        Kind(PlanExport.Part part) {
            this.part = part;
        }
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder with plan.json")
    private Path plan = Path.of("");

    @Option(
            names = "--only",
            paramLabel = "WHAT",
            split = ",",
            description = "which of ${COMPLETION-CANDIDATES}, separated by commas (default: all)")
    private Set<Kind> only = EnumSet.allOf(Kind.class);

    @Mixin
    private SeasonOfPlanOptions season = new SeasonOfPlanOptions();

    @Option(names = "--out", paramLabel = "DIR", description = "folder for the files (default: that of the plan)")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--force", description = "replace existing files")
    private boolean force;

    @Override
    public Integer call() {
        Set<PlanExport.Part> parts = EnumSet.noneOf(PlanExport.Part.class);
        only.forEach(kind -> parts.add(kind.part));
        List<Path> files = PlanExport.write(new GivenPlan(plan), season.given(), parts, out, force);
        Output.print(spec, files.stream().map(file -> "Written to " + file).toList());
        return Freshfurrow.OK;
    }
}

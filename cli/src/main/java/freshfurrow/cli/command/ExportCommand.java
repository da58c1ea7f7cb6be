package freshfurrow.cli.command;

import freshfurrow.app.input.PlanChoice;
import freshfurrow.app.output.OutFiles;
import freshfurrow.cli.export.CalendarBefore;
import freshfurrow.cli.export.CalendarFile;
import freshfurrow.cli.export.MapFile;
import freshfurrow.cli.export.TableFiles;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
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
        header = "Write a plan as calendar, tables and map for other programs.",
        description =
                "%nplan.ics has an entry for each machine and day, fields.csv, loads.csv and batches.csv are tables in the season's units, plan.geojson is a map of fields, water points and places. A calendar that is replaced is carried on: import it again, and entries that changed are updated, those that are no more are cancelled.%n",
        footer = {
            "  freshfurrow export scenarios/first-season/plan",
            "  freshfurrow export plan.json --season ../season.yaml --only calendar --force"
        })
final class ExportCommand implements Callable<Integer> {
    /** What there is to export. */
    enum Kind {
        calendar,
        tables,
        map
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder that holds plan.json")
    private Path plan = Path.of("");

    @Option(
            names = "--only",
            paramLabel = "WHAT",
            split = ",",
            description = "of ${COMPLETION-CANDIDATES}; several parted by commas (default: all)")
    private Set<Kind> only = EnumSet.allOf(Kind.class);

    @Mixin
    private SeasonOfPlan season = new SeasonOfPlan();

    @Option(names = "--out", paramLabel = "DIR", description = "folder for the files (default: that of the plan)")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--force", description = "replace files that are already there")
    private boolean force;

    @Override
    public Integer call() {
        Plan planned = PlanChoice.read(plan);
        Path planFile = PlanChoice.file(plan);
        Season read = season.read(planFile, planned);
        IfThere ifThere = IfThere.replaceIf(force);
        List<NewFile> files = new ArrayList<>();
        if (only.contains(Kind.calendar)) {
            Path file = in(planFile, "plan.ics");
            files.add(NewFile.of(file, CalendarFile.text(read, planned, before(file)), ifThere));
        }
        if (only.contains(Kind.tables)) {
            TableFiles tables = new TableFiles(read, planned);
            files.add(NewFile.of(in(planFile, "fields.csv"), tables.fields(), ifThere));
            files.add(NewFile.of(in(planFile, "loads.csv"), tables.loads(), ifThere));
            files.add(NewFile.of(in(planFile, "batches.csv"), tables.batches(), ifThere));
        }
        if (only.contains(Kind.map)) {
            files.add(NewFile.of(in(planFile, "plan.geojson"), MapFile.text(read, planned), ifThere));
        }
        OutFiles.WRITTEN.writeAll(files);
        Output.print(
                spec, files.stream().map(file -> "Written to " + file.path()).toList());
        return Freshfurrow.OK;
    }

    private Path in(Path planFile, String name) {
        return out.map(folder -> folder.resolve(name)).orElseGet(() -> planFile.resolveSibling(name));
    }

    private Optional<CalendarBefore> before(Path file) {
        OutFiles.WRITTEN.refuseObstructed(List.of(file), IfThere.replaceIf(force));
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try {
            Optional<CalendarBefore> before = CalendarBefore.read(Files.readString(file));
            if (before.isPresent()) {
                return before;
            }
        } catch (MalformedInputException e) {
            throw noCalendarOfOurs(file);
        } catch (IOException e) {
            throw new Refusal(file + ": cannot be read (" + Failures.reason(e) + "); see to its permissions");
        }
        throw noCalendarOfOurs(file);
    }

    private static Refusal noCalendarOfOurs(Path file) {
        return new Refusal(file + ": is no calendar of a plan, so it is not replaced;"
                + " move it away, or write elsewhere with --out");
    }
}

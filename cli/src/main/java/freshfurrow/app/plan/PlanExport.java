package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.output.OutFiles;
import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.export.CalendarBefore;
import freshfurrow.cli.export.CalendarFile;
import freshfurrow.cli.export.MapFile;
import freshfurrow.cli.export.TableFiles;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A plan as files for other programs. */
public final class PlanExport {
    /** What there is to export. */
    public enum Part {
        CALENDAR,
        TABLES,
        MAP
    }

    private final OpenedPlan opened;
    private final Optional<Path> folder;
    private final IfThere ifThere;

    private PlanExport(OpenedPlan opened, Optional<Path> folder, IfThere ifThere) {
        this.opened = opened;
        this.folder = folder;
        this.ifThere = ifThere;
    }

    /**
     * Writes it. A calendar that is replaced is carried on.
     *
     * @param folder where the files go; without it, the folder of the plan
     * @param force whether files that are there may be replaced
     * @return the files that were written
     * @throws Refused when plan or season cannot be used, or one of the files cannot be written; then none is
     */
    public static List<Path> write(
            GivenPlan given, SeasonOfPlan season, Set<Part> parts, Optional<Path> folder, boolean force) {
        PlanExport export = new PlanExport(OpenedPlan.of(given, season), folder, IfThere.replaceIf(force));
        List<NewFile> files = export.files(parts);
        OutFiles.MADE.writeAll(files);
        return files.stream().map(NewFile::path).toList();
    }

    private List<NewFile> files(Set<Part> parts) {
        List<NewFile> files = new ArrayList<>();
        if (parts.contains(Part.CALENDAR)) {
            Path file = in("plan.ics");
            files.add(NewFile.of(file, CalendarFile.text(opened.season(), opened.plan(), before(file)), ifThere));
        }
        if (parts.contains(Part.TABLES)) {
            TableFiles tables = new TableFiles(opened.season(), opened.plan());
            files.add(NewFile.of(in("fields.csv"), tables.fields(), ifThere));
            files.add(NewFile.of(in("loads.csv"), tables.loads(), ifThere));
            files.add(NewFile.of(in("batches.csv"), tables.batches(), ifThere));
        }
        if (parts.contains(Part.MAP)) {
            files.add(NewFile.of(in("plan.geojson"), MapFile.text(opened.season(), opened.plan()), ifThere));
        }
        return files;
    }

    private Path in(String name) {
        return folder.map(there -> there.resolve(name))
                .orElseGet(() -> opened.file().resolveSibling(name));
    }

    private Optional<CalendarBefore> before(Path file) {
        OutFiles.MADE.refuseObstructed(List.of(file), ifThere);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try {
            Optional<CalendarBefore> before = CalendarBefore.read(Files.readString(file));
            if (before.isPresent()) {
                return before;
            }
        } catch (MalformedInputException e) {
            throw new Refused(new OutputRefusal.NoCalendar(file));
        } catch (IOException e) {
            throw new Refused(new OutputRefusal.UnreadableCalendar(file, FileFailure.reason(e)));
        }
        throw new Refused(new OutputRefusal.NoCalendar(file));
    }
}

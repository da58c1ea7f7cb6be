package freshfurrow.model.read;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.read.tree.CsvTable;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.TextFile;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a season's log. */
public final class LogReader {
    private static final String USUAL_NAME = "log.csv";

    private LogReader() {}

    /** Where the log of a season is, unless its people say otherwise: {@code log.csv} in the folder of the season file. */
    public static Path beside(Path season) {
        return Files.isDirectory(season) ? season.resolve(USUAL_NAME) : season.resolveSibling(USUAL_NAME);
    }

    /**
     * Reads a log; one that is not there yet is empty.
     *
     * @return the log, or all that is wrong with it
     */
    public static LogReading read(Path file, LogContext context) {
        String name = String.valueOf(file.getFileName());
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return new LogReading.Valid(SeasonLog.EMPTY, sha256(TextFile.of(name, "")));
        }
        try {
            return read(TextFile.read(file, name, SeasonFolder.SEASON_MIB), context);
        } catch (FileProblem e) {
            Problems problems = new Problems(List.of(name));
            problems.add(e);
            return new LogReading.Invalid(problems.sorted());
        }
    }

    /**
     * Reads the text of a log.
     *
     * @return the log, or all that is wrong with it
     */
    public static LogReading read(TextFile file, LogContext context) {
        Problems problems = new Problems(List.of(file.name()));
        List<LoggedLine> lines = new ArrayList<>();
        try {
            CsvTable table = CsvTable.read(file);
            checkColumns(table, problems);
            LogRow reader = new LogRow(context.season(), problems);
            for (Node.Mapping row : table.rows()) {
                reader.read(titled(row)).ifPresent(lines::add);
            }
            new LogNumbers().check(lines);
            if (problems.none()) {
                new LogChecks(context, standing(lines)).check();
            }
        } catch (FileProblem e) {
            problems.add(e);
        }
        List<Entry> entries = lines.stream().map(LoggedLine::entry).toList();
        return problems.none()
                ? new LogReading.Valid(new SeasonLog(entries), sha256(file))
                : new LogReading.Invalid(problems.sorted());
    }

    /** The lines of the entries that hold, by number. */
    private static List<LoggedLine> standing(List<LoggedLine> lines) {
        Map<Integer, LoggedLine> byNumber = new HashMap<>();
        lines.forEach(line -> byNumber.put(line.entry().number(), line));
        return new SeasonLog(lines.stream().map(LoggedLine::entry).toList())
                .standing().stream()
                        .sorted(Comparator.comparingInt(Entry::number))
                        .map(entry -> byNumber.get(entry.number()))
                        .toList();
    }

    /** The row with the titles that columns have today. */
    private static Node.Mapping titled(Node.Mapping row) {
        Node old = row.entries().get(Column.OLD_VOIDS);
        if (old == null) {
            return row;
        }
        Map<String, Node> entries = new LinkedHashMap<>(row.entries());
        entries.remove(Column.OLD_VOIDS);
        entries.putIfAbsent(Column.VOIDS.title(), old);
        return new Node.Mapping(row.place(), entries, row.removed());
    }

    private static String sha256(TextFile file) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            file.addTo(digest);
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void checkColumns(CsvTable table, Problems problems) throws FileProblem {
        for (Column needed : List.of(Column.ENTRY, Column.AT, Column.FACT)) {
            if (!table.columns().contains(needed.title())) {
                throw new FileProblem(
                        table.place(),
                        "has no column " + needed.title(),
                        "start it with a header row like " + String.join(",", Column.titles()));
            }
        }
        if (table.columns().containsAll(List.of(Column.VOIDS.title(), Column.OLD_VOIDS))) {
            problems.add(
                    table.place(),
                    "has both columns " + Column.VOIDS.title() + " and " + Column.OLD_VOIDS + ", which mean the same",
                    "leave out the column " + Column.OLD_VOIDS);
        }
        for (String title : table.columns()) {
            Optional<Column> known = Column.of(title);
            if (known.isEmpty()) {
                problems.add(
                        table.place(),
                        "the column '" + title + "' is not known",
                        FieldReader.unknown(title, Column.titles()));
            } else if (!table.unit(title).isEmpty()) {
                problems.add(
                        table.place(),
                        "the column " + title + " has the unit " + table.unit(title),
                        "write the unit after each amount, because the amounts in a log are of different kinds");
            }
        }
    }
}

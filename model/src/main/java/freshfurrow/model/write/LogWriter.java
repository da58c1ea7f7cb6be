package freshfurrow.model.write;

import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.ObstructedFile;
import freshfurrow.model.files.WriteTurn;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.Problem;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Adds lines to a season's log. All that is there stays as it is, byte for byte. The log with its new line is written beside the old
 * one and put in its place, so that whoever looks, and whatever happens, the line is there in whole or not at all.
 */
public final class LogWriter {
    private static final int MOST_MIB = 8;

    /** Begins a new log, as without it some spreadsheets misread letters beyond ASCII. */
    private static final String BYTE_ORDER_MARK = "\ufeff";

    private static final String NEW_LINE = "the new line";

    private final Path file;
    private final String name;
    private final LogContext context;

    /** @param file the log, or where it is to be; no link */
    public LogWriter(Path file, LogContext context) {
        this.file = file.toAbsolutePath();
        this.name = String.valueOf(file.getFileName());
        this.context = context;
    }

    /**
     * Adds a line with the next number.
     *
     * @param cells what the line says, as it is written in a log; the number is left out
     * @return the entry, once it is safe on the disk; or all that is wrong, and the log is as it was
     * @throws IOException when the log cannot be written; then it is as it was
     */
    public LogWriting add(Map<Column, String> cells) throws IOException {
        ObstructedFile.refuse(file, IfThere.REPLACE);
        Path folder = WriteTurn.folder(file);
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(folder.toString());
        }
        return WriteTurn.in(List.of(folder), WriteTurn.PATIENCE, turn -> {
            try {
                return addAlone(turn, cells);
            } catch (FileProblem e) {
                return new LogWriting.Refused(List.of(problem(e)));
            }
        });
    }

    private LogWriting addAlone(WriteTurn turn, Map<Column, String> cells) throws IOException, FileProblem {
        TextFile before = Files.exists(file, LinkOption.NOFOLLOW_LINKS)
                ? TextFile.read(file, name, MOST_MIB)
                : TextFile.of(name, "");
        LogText text = new LogText(before);
        String addition = text.addition(cells);
        LogReading reading = LogReader.read(TextFile.of(name, before.text() + addition), context);
        if (reading instanceof LogReading.Invalid invalid) {
            int newLine = text.newLine();
            return new LogWriting.Refused(invalid.problems().stream()
                    .map(problem -> named(problem, newLine))
                    .toList());
        }
        turn.write(List.of(NewFile.of(file, joined(before.bytes(), addition), IfThere.REPLACE)));
        SeasonLog log = ((LogReading.Valid) reading).log();
        return new LogWriting.Added(log.entries().get(log.entries().size() - 1), log);
    }

    private static byte[] joined(byte[] before, String addition) {
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        joined.writeBytes(before.length == 0 ? BYTE_ORDER_MARK.getBytes(StandardCharsets.UTF_8) : before);
        joined.writeBytes(addition.getBytes(StandardCharsets.UTF_8));
        return joined.toByteArray();
    }

    private static Problem named(Problem problem, int newLine) {
        return problem.line().orElse(0) == newLine
                ? new Problem(NEW_LINE, OptionalInt.empty(), problem.path(), problem.reason(), problem.remedy())
                : problem;
    }

    private static Problem problem(FileProblem e) {
        OptionalInt line = e.place().line() > 0 ? OptionalInt.of(e.place().line()) : OptionalInt.empty();
        return new Problem(e.place().file(), line, e.place().path(), e.reason(), e.remedy());
    }
}

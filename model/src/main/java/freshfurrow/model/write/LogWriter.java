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
 * Adds lines to a season's log. All that is there stays as it is, byte for byte. The log with its new lines is written beside the old
 * one and put in its place, so that whoever looks, and whatever happens, all of them are there in whole or none is.
 */
public final class LogWriter {
    private static final int MOST_MIB = 8;

    /** Begins a new log, as without it some spreadsheets misread letters beyond ASCII. */
    private static final String BYTE_ORDER_MARK = "\ufeff";

    private static final String ONLY_NEW_LINE = "the new line";

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
     * Adds lines with the next numbers.
     *
     * @param lines what each says, as it is written in a log, at least one; numbers are left out
     * @return the entries, once they are safe on the disk; or all that is wrong, and the log is as it was
     * @throws IOException when the log cannot be written; then it is as it was
     */
    public LogWriting add(List<Map<Column, String>> lines) throws IOException {
        return add(lines, false);
    }

    /**
     * Adds those of the lines that are not there yet, each cell the same: whoever does not know whether a line arrived sends it again.
     *
     * @see #add
     */
    public LogWriting addOnce(List<Map<Column, String>> lines) throws IOException {
        return add(lines, true);
    }

    private LogWriting add(List<Map<Column, String>> lines, boolean once) throws IOException {
        ObstructedFile.refuse(file, IfThere.REPLACE);
        Path folder = WriteTurn.folder(file);
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(folder.toString());
        }
        return WriteTurn.in(List.of(folder), WriteTurn.PATIENCE, turn -> {
            try {
                return addAlone(turn, lines, once);
            } catch (FileProblem e) {
                return new LogWriting.Refused(List.of(Problem.of(e)));
            }
        });
    }

    private LogWriting addAlone(WriteTurn turn, List<Map<Column, String>> all, boolean once)
            throws IOException, FileProblem {
        TextFile before = Files.exists(file, LinkOption.NOFOLLOW_LINKS)
                ? TextFile.read(file, name, MOST_MIB)
                : TextFile.of(name, "");
        LogText text = new LogText(before);
        List<Map<Column, String>> lines = once ? text.lacking(all) : all;
        String addition = lines.isEmpty() ? "" : text.addition(lines);
        LogReading reading = LogReader.read(TextFile.of(name, before.text() + addition), context);
        if (reading instanceof LogReading.Invalid invalid) {
            int first = text.firstNewLine();
            return new LogWriting.Refused(invalid.problems().stream()
                    .map(problem -> named(problem, first, lines.size()))
                    .toList());
        }
        if (!lines.isEmpty()) {
            turn.write(List.of(NewFile.of(file, joined(before.bytes(), addition), IfThere.REPLACE)));
        }
        SeasonLog log = ((LogReading.Valid) reading).log();
        int size = log.entries().size();
        return new LogWriting.Added(log.entries().subList(size - lines.size(), size), log);
    }

    private static byte[] joined(byte[] before, String addition) {
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        joined.writeBytes(before.length == 0 ? BYTE_ORDER_MARK.getBytes(StandardCharsets.UTF_8) : before);
        joined.writeBytes(addition.getBytes(StandardCharsets.UTF_8));
        return joined.toByteArray();
    }

    private static Problem named(Problem problem, int firstNew, int count) {
        int number = problem.line().orElse(0) - firstNew + 1;
        if (number < 1) {
            return problem;
        }
        String name = count == 1 ? ONLY_NEW_LINE : "new line " + number + " of " + count;
        return new Problem(name, OptionalInt.empty(), problem.path(), problem.reason(), problem.remedy());
    }
}

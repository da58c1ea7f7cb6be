package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.season.Season;
import java.util.List;

/** A log written for a test, of the season of {@link WrittenSeason#RIGHT}. */
record WrittenLog(LogContext context, String text) {
    private static final String TIMED_HEADER = "entry,at,fact,place,machine,load,lot,amount,until,took,voids,note\n";

    static final String HEADER = "entry,at,fact,place,machine,load,lot,amount,until,voids,note\n";

    static WrittenLog of(Season season, String... lines) {
        return new WrittenLog(LogContext.of(season), HEADER + String.join("\n", lines));
    }

    /** A log whose lines may say how long things took, after until. */
    static WrittenLog timed(Season season, String... lines) {
        return new WrittenLog(LogContext.of(season), TIMED_HEADER + String.join("\n", lines));
    }

    LogReading read() {
        return LogReader.read(TextFile.of("log.csv", text), context);
    }

    SeasonLog log() {
        assertThat(problems()).isEmpty();
        return ((LogReading.Valid) read()).log();
    }

    List<Entry> standing() {
        return log().standing();
    }

    /** The fact of a log of one line. */
    Fact fact() {
        assertThat(log().entries()).hasSize(1);
        return log().entries().get(0).fact();
    }

    /** The lines that a reader of messages gets; none when the log is right. */
    List<String> problems() {
        return read() instanceof LogReading.Invalid invalid
                ? invalid.problems().stream().map(Problem::toString).toList()
                : List.of();
    }
}

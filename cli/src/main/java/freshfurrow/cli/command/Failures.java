package freshfurrow.cli.command;

import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.words.RefusalWords;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;

/** Failures in words. */
final class Failures {
    /** Set to anything, shows where in the program an error of its own happened. */
    private static final String TRACE_VARIABLE = "FRESHFURROW_TRACE";

    private Failures() {}

    /** What to tell the user of a command that failed. */
    static List<String> lines(Throwable failure) {
        if (failure instanceof Refused refused) {
            return RefusalWords.lines(refused.refusal());
        }
        if (failure instanceof WrongArgument wrong) {
            return wrong.lines();
        }
        if (failure instanceof OutOfMemoryError || failure instanceof StackOverflowError) {
            return List.of("Out of memory; give Java more with JAVA_TOOL_OPTIONS=-Xmx4g.");
        }
        return own(failure);
    }

    private static List<String> own(Throwable failure) {
        String summary = "An error in the program itself, not in your files: "
                + String.valueOf(failure).replaceAll("\\p{Cntrl}+", " ");
        String remedy = "Please report it with your season file; " + TRACE_VARIABLE + "=1 shows where it happened.";
        if (System.getenv(TRACE_VARIABLE) == null) {
            return List.of(summary, remedy);
        }
        StringWriter trace = new StringWriter();
        failure.printStackTrace(new PrintWriter(trace));
        return Stream.concat(Stream.of(summary, remedy), trace.toString().lines())
                .toList();
    }
}

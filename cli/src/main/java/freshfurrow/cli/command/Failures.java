package freshfurrow.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Failures in words. */
public final class Failures {
    /** Set to anything, shows where in the program an error of its own happened. */
    private static final String TRACE_VARIABLE = "FRESHFURROW_TRACE";

    private Failures() {}

    /** What to tell the user of a command that failed. */
    public static List<String> lines(Throwable failure) {
        if (failure instanceof Refusal refusal) {
            return refusal.lines();
        }
        if (failure instanceof OutOfMemoryError || failure instanceof StackOverflowError) {
            return List.of("This needs more memory than there is; give Java more with JAVA_TOOL_OPTIONS=-Xmx4g.");
        }
        return own(failure);
    }

    /** Why a file could not be read or written. */
    public static String reason(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (failure instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (failure instanceof FileAlreadyExistsException || failure instanceof NotDirectoryException) {
            return "there is a file where a folder is needed";
        }
        Optional<String> said = failure instanceof FileSystemException system
                ? Optional.ofNullable(system.getReason())
                : Optional.ofNullable(failure.getMessage());
        return said.map(reason -> reason.replaceAll("\\p{Cntrl}+", " "))
                .orElse(failure.getClass().getSimpleName());
    }

    private static List<String> own(Throwable failure) {
        String summary = "An error of the program itself, not of your files: "
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

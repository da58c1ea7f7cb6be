package freshfurrow.cli.e2e;

import freshfurrow.cli.command.Freshfurrow;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.function.Consumer;

/**
 * Runs commands in the process of the tests, which spares the start of a Java for each. What a process is needed for (signals, kills,
 * closed streams, languages, the launcher itself) is for {@link Launcher}; {@link EveryCommandIT} holds that both come to the same.
 */
final class InProcess {
    private InProcess() {}

    /**
     * Runs a command line.
     *
     * @param arguments with absolute paths, as tests are not run in the project's folder
     */
    static Launcher.Result run(String... arguments) {
        return run(all -> {}, arguments);
    }

    /** Tells all that was printed whenever that is more. */
    static Launcher.Result run(Consumer<String> printed, String... arguments) {
        StringWriter out = new StringWriter() {
            @Override
            public void write(String text, int from, int length) {
                super.write(text, from, length);
                printed.accept(toString());
            }
        };
        StringWriter err = new StringWriter();
        PrintWriter errWriter = new PrintWriter(err);
        int exitCode = Freshfurrow.run(new PrintWriter(out), errWriter, arguments);
        errWriter.flush();
        return new Launcher.Result(exitCode, out.toString(), err.toString());
    }
}

package freshfurrow.cli.command;

import java.io.PrintStream;

/** One line on the terminal that is written over again and again; nothing where there is no terminal. */
final class TerminalLine {
    private static final String TERMINAL_VARIABLE = "FRESHFURROW_TERMINAL";

    private final PrintStream err;
    private final boolean shown;
    private int length;

    TerminalLine(PrintStream err, boolean shown) {
        this.err = err;
        this.shown = shown;
    }

    /** On standard error, if that is a terminal, as the launcher says in the environment; Java cannot tell. */
    static TerminalLine onTerminal() {
        return new TerminalLine(System.err, Boolean.parseBoolean(System.getenv(TERMINAL_VARIABLE)));
    }

    synchronized void write(String line) {
        if (shown) {
            err.print('\r' + line + " ".repeat(Math.max(0, length - line.length())));
            err.flush();
            length = line.length();
        }
    }

    /** Leaves the line empty. */
    synchronized void clear() {
        if (length > 0) {
            write("");
            err.print('\r');
            err.flush();
        }
    }
}

package freshfurrow.cli.command;

import freshfurrow.cli.text.ProgressText;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.solver.Progress;
import java.io.PrintStream;

/** One line on the terminal that is written over again and again; nothing where there is no terminal. */
final class ProgressLine {
    private static final String TERMINAL_VARIABLE = "FRESHFURROW_TERMINAL";

    private final PrintStream err;
    private final boolean shown;
    private final ProgressText text;
    private int length;

    private ProgressLine(PrintStream err, boolean shown, DisplayUnits units) {
        this.err = err;
        this.shown = shown;
        this.text = new ProgressText(units);
    }

    static ProgressLine onTerminal(DisplayUnits units) {
        return new ProgressLine(System.err, isTerminal(), units);
    }

    /** Whether standard error is a terminal, as the launcher says in the environment; Java cannot tell. */
    static boolean isTerminal() {
        return Boolean.parseBoolean(System.getenv(TERMINAL_VARIABLE));
    }

    synchronized void at(Progress progress) {
        write(text.line(progress.timeLeft(), progress.fills(), progress.lateHaDays(), progress.unservedHa()));
    }

    /** Leaves the line empty. */
    synchronized void clear() {
        if (length > 0) {
            write("");
            err.print('\r');
            err.flush();
        }
    }

    private void write(String line) {
        if (shown) {
            err.print('\r' + line + " ".repeat(Math.max(0, length - line.length())));
            err.flush();
            length = line.length();
        }
    }
}

package freshfurrow.cli.command;

import freshfurrow.solver.lived.SpringProgress;
import java.io.PrintStream;
import java.util.Locale;

/** A bar on the terminal that tells how many springs are lived; nothing where there is no terminal. */
final class SpringsLine implements SpringProgress {
    private static final int CELLS = 30;
    private static final long EVERY_NS = 100_000_000L;

    private final PrintStream err;
    private final boolean shown;
    private long lastNs = System.nanoTime() - EVERY_NS;
    private int length;

    private SpringsLine(PrintStream err, boolean shown) {
        this.err = err;
        this.shown = shown;
    }

    static SpringsLine onTerminal() {
        return new SpringsLine(System.err, ProgressLine.isTerminal());
    }

    @Override
    public synchronized void lived(int lived, int all) {
        long now = System.nanoTime();
        if (shown && now - lastNs >= EVERY_NS) {
            lastNs = now;
            write(line(lived, all));
        }
    }

    static String line(int lived, int all) {
        int done = (int) ((long) CELLS * lived / Math.max(1, all));
        return "[" + "#".repeat(done) + "-".repeat(CELLS - done) + "] "
                + String.format(Locale.ROOT, "%,d of %,d springs", lived, all);
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
        err.print('\r' + line + " ".repeat(Math.max(0, length - line.length())));
        err.flush();
        length = line.length();
    }
}

package freshfurrow.cli.command;

import freshfurrow.solver.lived.SpringProgress;
import java.util.Locale;

/** A bar on the terminal that tells how many springs are lived. */
final class SpringsLine implements SpringProgress {
    private static final int CELLS = 30;
    private static final long EVERY_NS = 100_000_000L;

    private final TerminalLine line = TerminalLine.onTerminal();
    private long lastNs = System.nanoTime() - EVERY_NS;

    @Override
    public synchronized void lived(int lived, int all) {
        long now = System.nanoTime();
        if (now - lastNs >= EVERY_NS) {
            lastNs = now;
            line.write(line(lived, all));
        }
    }

    static String line(int lived, int all) {
        int done = (int) ((long) CELLS * lived / Math.max(1, all));
        return "[" + "#".repeat(done) + "-".repeat(CELLS - done) + "] "
                + String.format(Locale.ROOT, "%,d of %,d springs", lived, all);
    }

    /** Leaves the line empty. */
    void clear() {
        line.clear();
    }
}

package freshfurrow.cli.command;

import freshfurrow.cli.text.ProgressText;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.solver.Progress;

/** How far a search is, in one line on the terminal. */
final class ProgressLine {
    private final TerminalLine line = TerminalLine.onTerminal();
    private final ProgressText text;

    ProgressLine(DisplayUnits units) {
        text = new ProgressText(units);
    }

    void at(Progress progress) {
        line.write(text.line(progress.timeLeft(), progress.fills(), progress.lateHaDays(), progress.unservedHa()));
    }

    /** Leaves the line empty. */
    void clear() {
        line.clear();
    }
}

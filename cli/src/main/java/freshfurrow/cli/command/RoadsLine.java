package freshfurrow.cli.command;

import freshfurrow.model.roads.RoadNews;
import java.nio.file.Path;

/** Says on the terminal what takes long the first time that a season with a map of roads is read. */
public final class RoadsLine implements RoadNews {
    private final TerminalLine line;

    /** As a service. */
    public RoadsLine() {
        this(TerminalLine.onTerminal());
    }

    RoadsLine(TerminalLine line) {
        this.line = line;
    }

    @Override
    public void reads(Path map, boolean isKept) {
        line.write("Reading the map of roads " + map.getFileName()
                + (isKept ? "; it is kept for the next time" : "; it cannot be kept for the next time"));
    }

    @Override
    public void measures(int places) {
        line.write("Measuring the roads between " + places + " places; they are kept for the next time");
    }

    @Override
    public void done() {
        line.clear();
    }
}

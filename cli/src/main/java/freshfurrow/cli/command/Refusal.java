package freshfurrow.cli.command;

import java.util.List;

/** What a command cannot do for its user, in lines to show as they are. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final List<String> lines;

    public Refusal(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    public Refusal(String line) {
        this(List.of(line));
    }

    public List<String> lines() {
        return lines;
    }
}

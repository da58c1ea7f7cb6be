package freshfurrow.cli.command;

import java.util.List;

/** What is wrong with an argument beyond its form, in lines to show as they are. */
final class WrongArgument extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final List<String> lines;

    WrongArgument(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    WrongArgument(String line) {
        this(List.of(line));
    }

    List<String> lines() {
        return lines;
    }
}

package freshfurrow.cli.command;

import freshfurrow.model.log.Column;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How long work took. */
final class TookOption {
    @Option(
            names = "--took",
            paramLabel = "TIME",
            description = "how long that alone took, like 18min, by which learn compares it with the season file")
    private Optional<String> took = Optional.empty();

    void put(Map<Column, String> cells) {
        took.ifPresent(time -> cells.put(Column.TOOK, time));
    }
}

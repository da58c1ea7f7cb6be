package freshfurrow.cli.command;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** When a fact of a log happened. */
final class MomentOption {
    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "when it was done, like 2027-05-03T15:10 (default: now, on a day of the season)")
    private Optional<String> at = Optional.empty();

    /** The cells of a line about such a fact, to be filled. */
    Map<Column, String> cells(FactKind kind) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        cells.put(Column.FACT, kind.word());
        at.ifPresent(time -> cells.put(Column.AT, time));
        return cells;
    }
}

package freshfurrow.cli.command;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What any fact of a log may have. */
final class LineOptions {
    @Mixin
    private MomentOption moment = new MomentOption();

    @Option(names = "--note", paramLabel = "TEXT", description = "a remark to keep with it")
    private Optional<String> note = Optional.empty();

    /** The cells of a line about such a fact, to be filled. */
    Map<Column, String> cells(FactKind kind) {
        Map<Column, String> cells = moment.cells(kind);
        note.ifPresent(text -> cells.put(Column.NOTE, text));
        return cells;
    }
}

package freshfurrow.model.log;

import static freshfurrow.model.log.Column.AMOUNT;
import static freshfurrow.model.log.Column.LOAD;
import static freshfurrow.model.log.Column.LOT;
import static freshfurrow.model.log.Column.MACHINE;
import static freshfurrow.model.log.Column.NOTE;
import static freshfurrow.model.log.Column.PLACE;
import static freshfurrow.model.log.Column.TOOK;
import static freshfurrow.model.log.Column.UNTIL;
import static freshfurrow.model.log.Column.VOIDS;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The words that a log has for facts, and the columns that go with each besides entry, time, fact and note. */
public enum FactKind {
    PLANTED("planted", PLACE, AMOUNT, MACHINE, LOAD, TOOK),
    BATCH("batch", MACHINE, LOT, AMOUNT, LOAD, PLACE, TOOK),
    TRANSFER("transfer", MACHINE, AMOUNT, LOAD, TOOK),
    DRIVE("drive", MACHINE, PLACE, TOOK),
    DRAWN("drawn", PLACE, MACHINE, AMOUNT),
    DELIVERED("delivered", LOT, AMOUNT),
    SPOILED("spoiled", LOT, AMOUNT),
    RAIN("rain", AMOUNT),
    DOWN("down", MACHINE, UNTIL),
    BEHIND("behind", MACHINE, AMOUNT),
    FIT("fit", PLACE),
    UNFIT("unfit", PLACE, UNTIL),
    NOTE_ONLY("note", NOTE),
    VOID("void", VOIDS);

    /** What {@link #VOID} was called in logs of before. */
    public static final String OLD_VOID = "takeback";

    private final String word;
    /** Never changed. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Column> columns;

    FactKind(String word, Column... columns) {
        this.word = word;
        this.columns = List.of(columns);
    }

    /** As written in a log. */
    public String word() {
        return word;
    }

    /** Whether a cell of that column says something of such a fact. */
    public boolean takes(Column column) {
        return column.isCommon() || columns.contains(column);
    }

    /** The kind that a log writes so, or wrote so before; empty when there is none. */
    public static Optional<FactKind> of(String word) {
        String today = word.equals(OLD_VOID) ? VOID.word : word;
        return Arrays.stream(values()).filter(kind -> kind.word.equals(today)).findFirst();
    }

    /** All words, in order. */
    public static List<String> words() {
        return Arrays.stream(values()).map(FactKind::word).toList();
    }
}

package freshfurrow.model.log;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The columns of a log, in the order in which a new one has them. */
public enum Column {
    ENTRY("entry", true),
    AT("at", true),
    FACT("fact", true),
    PLACE("place", false),
    MACHINE("machine", false),
    LOAD("load", false),
    LOT("lot", false),
    AMOUNT("amount", false),
    UNTIL("until", false),
    TOOK("took", false),
    VOIDS("voids", false),
    NOTE("note", true);

    /** What {@link #VOIDS} was called in logs of before. */
    public static final String OLD_VOIDS = "takesBack";

    private final String title;
    private final boolean common;

    Column(String title, boolean common) {
        this.title = title;
        this.common = common;
    }

    /** As in the header row. */
    public String title() {
        return title;
    }

    /** Whether every kind of fact may have it. */
    public boolean isCommon() {
        return common;
    }

    /** The column of that title, or of one that it had before; empty when there is none. */
    public static Optional<Column> of(String title) {
        String today = title.equals(OLD_VOIDS) ? VOIDS.title : title;
        return Arrays.stream(values())
                .filter(column -> column.title.equals(today))
                .findFirst();
    }

    /** All titles, in order. */
    public static List<String> titles() {
        return Arrays.stream(values()).map(Column::title).toList();
    }
}

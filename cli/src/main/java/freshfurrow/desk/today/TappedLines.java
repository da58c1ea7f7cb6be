package freshfurrow.desk.today;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.desk.server.Unanswered;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.TypedQuantity;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lines for the log as a page sends them, with amounts as they were typed. */
final class TappedLines {
    private static final int MOST_LINES = 200;
    private static final int LONGEST_CELL = 1_000;

    private final Season season;

    TappedLines(Season season) {
        this.season = season;
    }

    List<Map<Column, String>> of(JsonNode lines) {
        if (!lines.isArray() || lines.isEmpty() || lines.size() > MOST_LINES) {
            throw Unanswered.senseless("1 to " + MOST_LINES + " lines are logged at once.");
        }
        List<Map<Column, String>> all = new ArrayList<>();
        lines.forEach(line -> all.add(cells(line)));
        return all;
    }

    private Map<Column, String> cells(JsonNode line) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        line.properties().forEach(cell -> {
            Column column = Column.of(cell.getKey())
                    .filter(known -> known != Column.ENTRY)
                    .orElseThrow(() -> Unanswered.senseless("A log has no column '" + cell.getKey() + "' to fill."));
            if (!cell.getValue().isTextual() || cell.getValue().textValue().length() > LONGEST_CELL) {
                throw Unanswered.senseless("'" + cell.getKey() + "' is not a text of a sensible length.");
            }
            if (!cell.getValue().textValue().isBlank()) {
                cells.put(column, cell.getValue().textValue().strip());
            }
        });
        if (!cells.containsKey(Column.AT)) {
            throw Unanswered.senseless("A line for the log needs its time.");
        }
        cells.computeIfPresent(Column.AMOUNT, (column, typed) -> written(cells, typed));
        cells.computeIfPresent(
                Column.TOOK, (column, typed) -> TypedQuantity.asWritten(typed, Kind.TIME, usual(Kind.TIME))
                        .orElse(typed));
        return cells;
    }

    private String written(Map<Column, String> cells, String typed) {
        return Optional.ofNullable(cells.get(Column.FACT))
                .flatMap(FactKind::of)
                .flatMap(this::kind)
                .flatMap(kind -> TypedQuantity.asWritten(typed, kind, usual(kind)))
                .orElse(typed);
    }

    private Optional<Kind> kind(FactKind fact) {
        return switch (fact) {
            case PLANTED -> Optional.of(Kind.AREA);
            case BATCH, DELIVERED, SPOILED -> Optional.of(Kind.MASS);
            case DRAWN, TRANSFER -> Optional.of(Kind.VOLUME);
            case RAIN -> Optional.of(Kind.RAIN);
            case BEHIND -> Optional.of(Kind.TIME);
            case DRIVE, DOWN, FIT, UNFIT, NOTE_ONLY, VOID -> Optional.empty();
        };
    }

    private String usual(Kind kind) {
        return switch (kind) {
            case AREA -> season.units().area().symbol();
            case MASS -> season.units().mass().symbol();
            case VOLUME -> season.units().volume().symbol();
            case RAIN -> season.units().volume().symbol().equals("gal") ? "in" : "mm";
            default -> "min";
        };
    }
}

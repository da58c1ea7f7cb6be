package freshfurrow.cli.command;

import freshfurrow.app.begin.FieldRow;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** In which unit areas are that have none: acres where fields lie in North America, hectares elsewhere. */
final class AreaUnits {
    private static final Pattern DEGREES = Pattern.compile("[+-]?\\d{1,3}([.,]\\d+)?");
    private static final double SOUTH = 15;
    private static final double EAST = -50;

    private AreaUnits() {}

    /** Empty where nobody knows where the fields are. */
    static Optional<UnitSystem> guessed(GivenFields fields, List<String> said) {
        Optional<FieldRow> placed = fields.rows().stream()
                .filter(row -> DEGREES.matcher(row.lat().strip()).matches()
                        && DEGREES.matcher(row.lon().strip()).matches())
                .findFirst();
        return placed.map(row -> {
            boolean us = degrees(row.lat()) > SOUTH && degrees(row.lon()) < EAST;
            said.add("areas without a unit are taken as "
                    + (us
                            ? "acres, as the fields lie in North America"
                            : "hectares, as the fields lie outside North America")
                    + "; --units says otherwise");
            return us ? UnitSystem.US : UnitSystem.METRIC;
        });
    }

    private static double degrees(String text) {
        return Double.parseDouble(text.strip().replace(',', '.'));
    }
}

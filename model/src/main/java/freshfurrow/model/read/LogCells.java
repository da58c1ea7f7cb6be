package freshfurrow.model.read;

import static freshfurrow.model.log.Column.AMOUNT;
import static freshfurrow.model.log.Column.LOAD;
import static freshfurrow.model.log.Column.NOTE;
import static freshfurrow.model.log.Column.PLACE;

import freshfurrow.model.log.Column;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.text.Formula;
import freshfurrow.model.text.Unseen;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The cells of one row of a log, each read as what its column holds; what is wrong with one is a problem and an empty result. */
final class LogCells {
    private static final int LONGEST_NOTE = 500;

    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,5}");
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern BETWEEN_IDS = Pattern.compile("[\\s,;]+");

    private final Keys keys;
    private final Problems problems;

    LogCells(Keys keys) {
        this.keys = keys;
        this.problems = keys.problems();
    }

    boolean has(Column column) {
        return keys.has(column.title());
    }

    void problem(Column column, String reason, String remedy) {
        keys.problem(column.title(), reason, remedy);
    }

    Optional<String> text(Column column) {
        return keys.text(column.title());
    }

    Optional<String> needed(Column column, String remedy) {
        return keys.needed(column.title(), remedy).flatMap(node -> Keys.text(node, problems));
    }

    /** The number of an entry. */
    Optional<Integer> number(Column column, String remedy) {
        return needed(column, remedy).flatMap(text -> {
            if (NUMBER.matcher(text).matches()) {
                return Optional.of(Integer.parseInt(text));
            }
            problem(column, "'" + text + "' is not an entry number", "write a whole number from 1 to 999999");
            return Optional.empty();
        });
    }

    Optional<LocalDateTime> moment(Column column) {
        return needed(column, "write date and time, like 2027-05-03T15:10")
                .flatMap(text -> Times.moment(text, keys.at(column.title()), problems));
    }

    /** A moment; a date alone is the midnight that begins it. */
    Optional<LocalDateTime> dayOrMoment(Column column) {
        return text(column).filter(text -> DATE.matcher(text).matches()).isPresent()
                ? text(column)
                        .flatMap(text -> Times.date(text, keys.at(column.title()), problems))
                        .map(LocalDate::atStartOfDay)
                : moment(column);
    }

    Optional<String> id(Column column, String noun, Collection<String> known) {
        Optional<String> id = needed(column, "write the id of a " + noun + " of the season");
        if (id.isPresent() && !known.contains(id.get())) {
            problem(column, "there is no " + noun + " " + id.get(), FieldReader.unknown(id.get(), known));
            return Optional.empty();
        }
        return id;
    }

    Optional<String> optionalId(Column column, String noun, Collection<String> known) {
        return has(column) ? id(column, noun, known) : Optional.empty();
    }

    /** Where a drive began and ended: two places in one cell. */
    Optional<List<String>> way(Collection<String> known) {
        String remedy = "write where it began and where it ended, like yard N80";
        Optional<List<String>> ends = needed(PLACE, remedy)
                .map(text -> BETWEEN_IDS.splitAsStream(text.strip()).toList());
        if (ends.isEmpty()) {
            return Optional.empty();
        }
        List<String> ids = ends.get();
        if (ids.size() != 2 || ids.get(0).equals(ids.get(1))) {
            problem(PLACE, "'" + String.join(" ", ids) + "' is not a way from one place to another", remedy);
            return Optional.empty();
        }
        List<String> unknown = ids.stream().filter(id -> !known.contains(id)).toList();
        unknown.forEach(id -> problem(PLACE, "there is no place " + id, FieldReader.unknown(id, known)));
        return unknown.isEmpty() ? ends : Optional.empty();
    }

    Optional<Duration> time(Column column, Range range) {
        return keys.optionalQuantity(column.title(), Kind.TIME, range)
                .map(seconds -> Duration.ofSeconds(Math.round(seconds)));
    }

    /** Ids in one cell, parted by spaces, commas or semicolons. */
    List<String> loads() {
        List<String> ids = new ArrayList<>();
        text(LOAD).ifPresent(text -> BETWEEN_IDS
                .splitAsStream(text)
                .filter(id -> !id.isEmpty())
                .forEach(id -> {
                    Keys.checkId(id, keys.at(LOAD.title()), problems);
                    ids.add(id);
                }));
        return ids;
    }

    Optional<Double> amount(Kind kind, Range range) {
        if (!has(AMOUNT)) {
            problem(
                    AMOUNT,
                    Problem.MISSING,
                    "write " + kind.noun() + " like " + keys.units().example(kind));
        }
        return keys.optionalQuantity(AMOUNT.title(), kind, range);
    }

    String note() {
        String note = text(NOTE).orElse("");
        if (note.length() > LONGEST_NOTE) {
            problem(NOTE, "is longer than " + LONGEST_NOTE + " letters", "shorten it");
        }
        if (Unseen.isIn(note)) {
            problem(NOTE, "contains a line break or an invisible character", "write one line of plain text");
        }
        Optional<String> formula = Formula.sign(note);
        if (formula.isPresent()) {
            problem(
                    NOTE,
                    "begins with " + formula.get() + ", which spreadsheets take for a formula",
                    "start it with a letter or a digit");
        }
        return note;
    }
}

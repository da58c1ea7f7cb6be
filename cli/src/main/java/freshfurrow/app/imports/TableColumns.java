package freshfurrow.app.imports;

import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Heading;
import freshfurrow.app.begin.PastedTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** What each column of somebody's table is about: guessed by its heading, or said. */
public final class TableColumns {
    private final PastedTable table;
    private final List<Optional<Heading>> about;

    /** As guessed. */
    public TableColumns(PastedTable table) {
        this.table = table;
        this.about = new ArrayList<>(table.guesses());
    }

    /** Positions of the columns with that heading, whatever its letters and blanks. */
    public List<Integer> headed(String heading) {
        return IntStream.range(0, about.size())
                .filter(column -> plain(heading(column)).equals(plain(heading)))
                .boxed()
                .toList();
    }

    /** Says what a column is about; another that was about the same is left out then. */
    public void say(int column, Optional<Heading> heading) {
        if (heading.isPresent()) {
            about.replaceAll(other -> other.equals(heading) ? Optional.empty() : other);
        }
        about.set(column, heading);
    }

    /** Positions of the columns that have something in them and a heading that says nothing. */
    public List<Integer> unclear() {
        return IntStream.range(0, about.size())
                .filter(column -> about.get(column).isEmpty())
                .filter(column ->
                        table.rows().stream().anyMatch(row -> !row.get(column).isBlank()))
                .boxed()
                .toList();
    }

    /** What no column is about. */
    public List<Heading> missing() {
        return List.of(Heading.values()).stream()
                .filter(heading -> heading != Heading.DRAINAGE && !about.contains(Optional.of(heading)))
                .filter(heading -> heading != Heading.ID || !about.contains(Optional.of(Heading.NAME)))
                .filter(heading -> heading != Heading.NAME || !about.contains(Optional.of(Heading.ID)))
                .toList();
    }

    public int count() {
        return about.size();
    }

    /** The heading of a column, or its position from 1 where it has none. */
    public String heading(int column) {
        String heading = table.headings().get(column);
        return heading.isBlank() ? String.valueOf(column + 1) : heading;
    }

    public Optional<Heading> about(int column) {
        return about.get(column);
    }

    /** What stands in the first row of a column. */
    public String first(int column) {
        return table.rows().isEmpty() ? "" : table.rows().get(0).get(column);
    }

    /** The fields, as they are understood now. */
    public GivenFields fields() {
        return GivenFields.table(table.fields(about));
    }

    private static String plain(String heading) {
        return heading.toLowerCase(Locale.ROOT).strip();
    }
}

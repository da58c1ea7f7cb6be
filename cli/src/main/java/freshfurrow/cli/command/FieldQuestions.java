package freshfurrow.cli.command;

import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.FieldRow;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Heading;
import freshfurrow.app.begin.NewSeason;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.begin.TypedPosition;
import freshfurrow.app.begin.UnusableMap;
import freshfurrow.app.imports.FieldImport;
import freshfurrow.app.imports.FieldPaths;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.read.Problem;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Fields, one after the other, until no more is named. */
final class FieldQuestions {
    private static final Pattern MAP = Pattern.compile("(?i).+\\.(shp|kml|kmz|zip|geojson|json)");

    private final Prompts prompts;
    private final Function<GivenFields, Answers> with;
    private final Surroundings here;
    private final List<FieldRow> rows = new ArrayList<>();

    /** @param with all that is answered so far, with those fields */
    FieldQuestions(Prompts prompts, Function<GivenFields, Answers> with, Surroundings here) {
        this.prompts = prompts;
        this.with = with;
        this.here = here;
    }

    GivenFields fields() {
        prompts.say("");
        prompts.say("The fields. A table of them is soon pasted at the desk instead: freshfurrow desk DIR");
        prompts.say(
                "A map of them, as a shapefile, KML, KMZ or GeoJSON file, is read in where its name is typed, like farm.shp");
        while (true) {
            String name = prompts.answer("What do you call a field? (Enter if there is no other)", "");
            if (name.isEmpty()) {
                return GivenFields.table(rows);
            }
            if (rows.isEmpty() && MAP.matcher(name).matches()) {
                Optional<GivenFields> drawn = drawn(name);
                if (drawn.isPresent()) {
                    return drawn.get();
                }
            } else {
                rows.add(field(name));
            }
        }
    }

    /** The fields of a map; empty when it was told why there are none. */
    private Optional<GivenFields> drawn(String name) {
        try {
            FieldImport.Held held = FieldImport.read(FieldPaths.read(Path.of(name)));
            if (held instanceof FieldImport.Drawn drawn) {
                drawn.said().forEach(line -> prompts.say("  " + line));
                prompts.say("  " + Figures.count(drawn.fields().rows().size(), "field", "fields")
                        + " taken from it. Areas and places come from the drawing.");
                return Optional.of(drawn.fields());
            }
            prompts.say("  That is a table. Read it in with 'freshfurrow import' after this, or paste it at the desk.");
        } catch (UnusableMap e) {
            prompts.say("  " + name + ": " + e.reason());
        } catch (InvalidPathException e) {
            prompts.say("  " + name + " is not the name of a file.");
        }
        return Optional.empty();
    }

    private FieldRow field(String name) {
        Map<Heading, String> cells = new EnumMap<>(Heading.class);
        cells.put(Heading.NAME, name);
        cell(cells, Heading.AREA, "How large is it?", "");
        place(cells);
        String before = rows.isEmpty() ? "" : rows.get(rows.size() - 1).crop();
        cell(cells, Heading.CROP, "What will grow on it? (like corn)", before);
        return row(cells);
    }

    /** Both at once, as maps give them to copy, or one after the other. */
    private void place(Map<Heading, String> cells) {
        while (true) {
            String typed =
                    prompts.answer("Where do machines enter it? (latitude and longitude, like 41.02, -97.01)", "");
            Optional<TypedPosition.Position> both = TypedPosition.read(typed);
            cells.put(Heading.LAT, both.map(TypedPosition.Position::lat).orElse(typed));
            cells.put(Heading.LON, both.map(TypedPosition.Position::lon).orElse(""));
            if (isTaken(cells, Heading.LAT) && isTaken(cells, Heading.LON)) {
                if (both.isEmpty() && !typed.isEmpty()) {
                    cell(cells, Heading.LON, "And longitude?", "");
                }
                return;
            }
        }
    }

    private void cell(Map<Heading, String> cells, Heading heading, String question, String usual) {
        do {
            cells.put(heading, prompts.answerOr(question, usual));
        } while (!isTaken(cells, heading));
    }

    /** Whether an answer can be used; says why not. */
    private boolean isTaken(Map<Heading, String> cells, Heading heading) {
        List<FieldRow> all = new ArrayList<>(rows);
        all.add(row(cells));
        List<Problem> problems = cells.getOrDefault(heading, "").isEmpty()
                ? List.of()
                : NewSeason.of(with.apply(GivenFields.table(all)), here).problemsOf(rows.size(), heading);
        problems.forEach(problem -> prompts.say("  " + problem.reason() + "; " + problem.remedy()));
        return problems.isEmpty();
    }

    private static FieldRow row(Map<Heading, String> cells) {
        return new FieldRow(
                "",
                cells.getOrDefault(Heading.NAME, ""),
                cells.getOrDefault(Heading.AREA, ""),
                cells.getOrDefault(Heading.LAT, ""),
                cells.getOrDefault(Heading.LON, ""),
                cells.getOrDefault(Heading.CROP, ""),
                "");
    }
}

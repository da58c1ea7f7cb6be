package freshfurrow.app.begin;

import freshfurrow.model.edit.WrittenText;
import freshfurrow.model.text.Unseen;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes the season file: a value a line, and beside each that nobody gave why it stands there. */
final class SeasonWriter {
    private static final String IN = "  ";
    private static final List<String> MACHINES = List.of("planters", "rigs");

    private final Answers answers;
    private final Defaults defaults;
    private final Map<Section, Map<String, Entry>> entries;
    private final FieldsFile fields;
    private final StringBuilder text = new StringBuilder();

    /** @param entries all that there are, by the ids that they have in the file */
    SeasonWriter(Answers answers, Defaults defaults, Map<Section, Map<String, Entry>> entries, FieldsFile fields) {
        this.answers = answers;
        this.defaults = defaults;
        this.entries = entries;
        this.fields = fields;
    }

    String text() {
        head();
        season();
        places();
        for (Section section : List.of(Section.RECIPES, Section.CROPS)) {
            section(section);
        }
        fields();
        for (Section section : List.of(Section.PLANTERS, Section.RIGS, Section.WATER, Section.COMPOST)) {
            section(section);
        }
        line("");
        line(
                "# More that may stand here: rain, weather, drying, fixed, sprayers, goals, costs, spread. docs/season-file.md has every key.");
        return text.toString();
    }

    private void head() {
        line(
                answers.invented()
                        ? "# An invented farm, to be changed into yours: places and fields are invented, all else are defaults."
                        : "# A season for freshfurrow. Change it with any editor, or at the desk: freshfurrow desk");
        line("# \"default\" marks what nobody gave: put your own in its place. A usual range is no limit.");
        line("# Maps show latitude and longitude where you click. `freshfurrow check` lists what is wrong or missing.");
        line("");
    }

    private void season() {
        Entry entry = answers.of(Section.SEASON).get(0);
        line("season:");
        for (Question question : Section.SEASON.questions()) {
            if (question.form() != Form.HOURS && question.form() != Form.CLOSED) {
                value(IN, Section.SEASON, entry, question);
            }
        }
        for (Question question : Section.SEASON.questions()) {
            if (question.form() == Form.HOURS || question.form() == Form.CLOSED) {
                value("", Section.SEASON, entry, question);
            }
        }
    }

    private void places() {
        line("");
        line("# " + Section.PLACES.about());
        line("places:");
        entries.get(Section.PLACES).forEach((id, entry) -> position(Section.PLACES, id, entry));
    }

    private void position(Section section, String id, Entry entry) {
        Optional<String> at = at(entry, section);
        if (at.isEmpty()) {
            line(IN + id + ": {}" + comment("still missing: where it is, like {lat: 41.02, lon: -97.01}"));
            return;
        }
        line(IN + id + ": {" + at.get() + "}" + (answers.invented() ? comment("invented") : ""));
    }

    /** Latitude and longitude as they stand in braces; empty when they were not given. */
    private static Optional<String> at(Entry entry, Section section) {
        Question question = section.questions().get(0);
        return entry.answer(question).map(typed -> TypedPosition.read(typed)
                .map(position -> "lat: " + position.lat() + ", lon: " + position.lon())
                .orElseGet(() -> "lat: " + flow(typed)));
    }

    private void section(Section section) {
        line("");
        line("# " + section.about());
        line(section.key() + ":");
        entries.get(section).forEach((id, entry) -> {
            line(IN + id + ":" + named(section, id, entry));
            for (Question question : section.questions()) {
                if (question.form() == Form.POSITION) {
                    water(entry);
                } else {
                    value(IN + IN, section, entry, question);
                }
            }
            if (MACHINES.contains(section.key())) {
                line(IN + IN + "at: "
                        + entries.get(Section.PLACES).keySet().iterator().next());
            }
        });
    }

    /** The name that an id was made of, where they differ, or that nobody gave one. */
    private static String named(Section section, String id, Entry entry) {
        if (section.naming().isEmpty()) {
            return "";
        }
        String name = Names.name(entry.id());
        return name.isEmpty() ? comment("default") : name.equals(id) ? "" : comment(name);
    }

    private void water(Entry entry) {
        Optional<String> own = at(entry, Section.WATER);
        Optional<String> at = own.or(() -> at(answers.of(Section.PLACES).get(0), Section.PLACES));
        if (at.isEmpty()) {
            line(IN + IN + "# still missing: where it is, like lat: 41.02 and lon: -97.01");
            return;
        }
        String note =
                own.isPresent() ? (answers.invented() ? comment("invented") : "") : comment("default: at the yard");
        for (String part : at.get().split(", ", -1)) {
            line(IN + IN + part + note);
        }
    }

    private void fields() {
        List<String> missing = Missing.ofFields(fields.rows(), answers);
        line("");
        line("# A row a field"
                + (fields.name().endsWith(".csv") ? ", for any spreadsheet." : ", drawn as on the map."));
        line("fields: " + fields.name()
                + (missing.isEmpty() ? "" : comment("still missing: " + String.join("; ", missing))));
    }

    private void value(String indent, Section section, Entry entry, Question question) {
        Filled filled = filled(section, entry, question);
        boolean isList = question.form() == Form.HOURS || question.form() == Form.CLOSED;
        if (!filled.isThere() && !isList) {
            String like = question.usual(answers.units()).range().replaceFirst(".* ([0-9])", "$1");
            line(indent + "# " + question.key() + ": " + like + "  (not given)");
            return;
        }
        String written = isList ? list(filled.text(), question.form() == Form.HOURS) : block(filled.text());
        line(indent + question.key() + ": " + written + (filled.note().isEmpty() ? "" : comment(filled.note())));
    }

    private Filled filled(Section section, Entry entry, Question question) {
        return entry.answer(question)
                .map(typed -> new Filled(
                        TypedAnswer.asWritten(question, typed, answers.units()).orElse(typed),
                        TypedAnswer.lackedEnd(question, typed)
                                .map(end -> "still missing: its " + end)
                                .orElse("")))
                .orElseGet(() -> defaults.of(section, question));
    }

    private static String list(String texts, boolean quoted) {
        return Arrays.stream(texts.split(", ", -1))
                .filter(text -> !text.isEmpty())
                .map(text -> quoted && text.matches("[0-9:/]+") ? '"' + text + '"' : flow(text))
                .collect(Collectors.joining(", ", "[", "]"));
    }

    private static String block(String value) {
        return WrittenText.inBlock(value)
                .or(() -> WrittenText.inBlock(Unseen.marked(value)))
                .orElse("\"?\"");
    }

    private static String flow(String value) {
        return WrittenText.inFlow(value)
                .or(() -> WrittenText.inFlow(Unseen.marked(value)))
                .orElse("\"?\"");
    }

    private static String comment(String words) {
        return "  # " + words;
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}

package freshfurrow.cli.command;

import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Heading;
import freshfurrow.app.imports.TableColumns;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import picocli.CommandLine.Model.CommandSpec;

/** What the columns of a table are about: by guess, by option, and where somebody can answer, by question. */
record ColumnQuestions(Optional<Prompts> prompts, CommandSpec spec) {
    private static final String OURS = "id, name, area, lat, lon, crop, drainage";
    private static final String NOTHING = "nothing";

    /** The fields; empty when it was told why there are none. */
    Optional<GivenFields> fields(TableColumns columns, Map<String, String> options, List<String> said) {
        for (Map.Entry<String, String> option : options.entrySet()) {
            List<Integer> headed = columns.headed(option.getKey());
            String ours = option.getValue();
            if (headed.size() != 1) {
                String why = headed.isEmpty() ? "there is no column " : "there are several columns ";
                Output.warn(spec, "--column: " + why + option.getKey() + "; the headings are " + headings(columns));
                return Optional.empty();
            }
            if (!isKnown(ours)) {
                Output.warn(spec, "--column: " + option.getValue() + " is none of " + OURS + ", " + NOTHING);
                return Optional.empty();
            }
            columns.say(headed.get(0), heading(ours));
        }
        List<Integer> asked = columns.unclear().stream()
                .filter(column -> options.keySet().stream()
                        .noneMatch(key -> columns.headed(key).contains(column)))
                .toList();
        prompts.ifPresent(people -> asked.stream()
                .filter(column -> !columns.missing().isEmpty())
                .forEach(column -> ask(people, columns, column)));
        List<Heading> missing = columns.missing();
        if (missing.contains(Heading.ID) || missing.contains(Heading.AREA)) {
            String what = missing.contains(Heading.ID) ? "name" : "area";
            Output.warn(
                    spec,
                    "no column seems to be about the " + what + " of fields; say which with --column THEIRS=" + what
                            + "; the headings are " + headings(columns));
            return Optional.empty();
        }
        said.addAll(understood(columns));
        return Optional.of(columns.fields());
    }

    private static void ask(Prompts people, TableColumns columns, int column) {
        while (true) {
            String answer = people.answer(
                    "What is " + columns.heading(column) + ", like '" + columns.first(column) + "'? (" + OURS
                            + "; Enter if nothing of these)",
                    "");
            if (answer.isEmpty() || isKnown(answer)) {
                columns.say(column, heading(answer));
                return;
            }
            people.say("  Write one of " + OURS + ".");
        }
    }

    private static boolean isKnown(String ours) {
        return heading(ours).isPresent() || ours.strip().equalsIgnoreCase(NOTHING);
    }

    private static Optional<Heading> heading(String ours) {
        return Heading.of(ours.strip().toLowerCase(Locale.ROOT));
    }

    private static List<String> understood(TableColumns columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder left = new StringBuilder();
        for (int column = 0; column < columns.count(); column++) {
            String heading = columns.heading(column);
            Optional<Heading> about = columns.about(column);
            if (about.isPresent()) {
                lines.add(heading + " is " + about.get().key());
            } else {
                left.append(left.isEmpty() ? "" : ", ").append(heading);
            }
        }
        if (!left.isEmpty()) {
            lines.add("left out: " + left);
        }
        String missing = columns.missing().stream().map(Heading::key).collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            lines.add("no column for: " + missing);
        }
        return lines;
    }

    private static String headings(TableColumns columns) {
        return IntStream.range(0, columns.count()).mapToObj(columns::heading).collect(Collectors.joining(", "));
    }
}

package freshfurrow.app.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What a season needs and nobody answered. */
final class Missing {
    private static final int MOST_NAMED = 5;

    private Missing() {}

    /** A few words for each thing. */
    static List<String> of(Map<Section, Map<String, Entry>> entries, List<FieldRow> rows, Answers answers) {
        List<String> missing = new ArrayList<>();
        if (isNowhere(entries)) {
            missing.add("where the yard is");
        }
        entries.get(Section.CROPS).values().forEach(crop -> lackedEnd(crop)
                .ifPresent(end -> missing.add("the " + end + " of the window of " + Names.name(crop.id()))));
        missing.addAll(ofFields(rows, answers));
        return missing;
    }

    /** Of those, what fields lack. */
    static List<String> ofFields(List<FieldRow> rows, Answers answers) {
        List<String> missing = new ArrayList<>();
        if (rows.isEmpty()) {
            missing.add("fields");
        }
        if (answers.fields().shapes().isEmpty()) {
            add(missing, "the area of", rows, FieldRow::area);
            add(missing, "the latitude of", rows, FieldRow::lat);
            add(missing, "the longitude of", rows, FieldRow::lon);
        }
        add(missing, "the crop of", rows, FieldRow::crop);
        return missing;
    }

    private static boolean isNowhere(Map<Section, Map<String, Entry>> entries) {
        Question at = Section.PLACES.questions().get(0);
        return entries.get(Section.PLACES).values().stream()
                .allMatch(entry -> entry.answer(at).isEmpty());
    }

    /** The end that the window of a crop lacks; empty when it has both, or none, for which the season's are taken. */
    static Optional<String> lackedEnd(Entry crop) {
        return Section.CROPS.questions().stream()
                .flatMap(question -> crop.answer(question).stream()
                        .flatMap(typed -> TypedAnswer.lackedEnd(question, typed).stream()))
                .findFirst();
    }

    private static void add(List<String> missing, String what, List<FieldRow> rows, Function<FieldRow, String> value) {
        List<String> without = rows.stream()
                .filter(row -> value.apply(row).isBlank())
                .map(FieldRow::label)
                .toList();
        if (without.isEmpty()) {
            return;
        }
        int more = without.size() - MOST_NAMED;
        missing.add(what + " " + String.join(", ", without.subList(0, Math.min(MOST_NAMED, without.size())))
                + (more > 0 ? " and " + more + " more" : ""));
    }
}

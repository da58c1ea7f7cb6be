package freshfurrow.app.begin;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Fields that all have ids of their own, and crops by the ids that crops have in the file. */
final class NamedFields {
    private NamedFields() {}

    /**
     * The rows as they come to stand in the file.
     *
     * @param taken ids of places and water points
     * @param crops ids of all crops; of fields that name none when it is the only one
     */
    static List<FieldRow> of(List<FieldRow> rows, Names.Taken taken, List<String> crops) {
        List<FieldRow> named = new ArrayList<>();
        for (FieldRow row : rows) {
            String name = Names.name(row.name());
            String id = Names.id(row.id().isBlank() ? name : row.id());
            String typed = Names.id(row.crop());
            String crop = typed.isEmpty() && crops.size() == 1
                    ? crops.get(0)
                    : crops.stream().filter(typed::equalsIgnoreCase).findFirst().orElse(typed);
            String own = id.isEmpty() ? String.format(Locale.ROOT, "F%02d", named.size() + 1) : id;
            named.add(row.withId(taken.free(own)).withName(name).withCrop(crop));
        }
        return named;
    }

    /** Ids of the crops that rows name, in their order. */
    static Set<String> crops(List<FieldRow> rows) {
        Set<String> crops = new LinkedHashSet<>();
        rows.stream()
                .map(row -> Names.id(row.crop()))
                .filter(crop -> !crop.isEmpty())
                .forEach(crops::add);
        return crops;
    }
}

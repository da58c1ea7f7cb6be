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
     * @param onlyCrop of fields that name none; empty when there are several or none
     */
    static List<FieldRow> of(List<FieldRow> rows, Names.Taken taken, String onlyCrop) {
        List<FieldRow> named = new ArrayList<>();
        for (FieldRow row : rows) {
            String name = Names.name(row.name());
            String id = Names.id(row.id().isBlank() ? name : row.id());
            String crop = Names.id(row.crop());
            String own = id.isEmpty() ? String.format(Locale.ROOT, "F%02d", named.size() + 1) : id;
            named.add(row.withId(taken.free(own)).withName(name).withCrop(crop.isEmpty() ? onlyCrop : crop));
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

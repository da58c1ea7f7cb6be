package freshfurrow.app.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Fields that all have ids of their own, and crops by the ids that crops have in the file. */
final class NamedFields {
    private NamedFields() {}

    /**
     * The rows as they come to stand in the file.
     *
     * @param taken ids of places and water points
     * @param crops all of them; of fields that name none when it is the only one
     */
    static List<FieldRow> of(List<FieldRow> rows, Names.Taken taken, CropIds crops) {
        List<FieldRow> named = new ArrayList<>();
        for (FieldRow row : rows) {
            String name = Names.name(row.name());
            String id = Names.id(row.id().isBlank() ? name : row.id());
            String typed = crops.id(row.crop());
            String crop =
                    typed.isEmpty() && crops.ids().size() == 1 ? crops.ids().get(0) : typed;
            String own = id.isEmpty() ? String.format(Locale.ROOT, "F%02d", named.size() + 1) : id;
            named.add(row.withId(taken.free(own)).withName(name).withCrop(crop));
        }
        return named;
    }
}

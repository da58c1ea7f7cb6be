package freshfurrow.app.begin;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Crops by the ids that they have in the file: one for all spellings of a name. */
final class CropIds {
    private final Map<String, String> byKey = new LinkedHashMap<>();
    private final Map<String, String> byName = new LinkedHashMap<>();
    private final Names.Taken taken = new Names.Taken();

    private CropIds() {}

    /** Those that were answered and those that fields name, or the usual one where there is none. */
    static CropIds of(Answers answers) {
        CropIds crops = new CropIds();
        Stream.concat(
                        answers.of(Section.CROPS).stream().map(Entry::id),
                        answers.fields().rows().stream().map(FieldRow::crop))
                .forEach(crops::add);
        if (crops.byKey.isEmpty()) {
            crops.add(answers.units() == UnitSystem.US ? "corn" : "maize");
        }
        return crops;
    }

    /** Those that fields name, which may be none. */
    static CropIds of(List<FieldRow> fields) {
        CropIds crops = new CropIds();
        fields.stream().map(FieldRow::crop).forEach(crops::add);
        return crops;
    }

    /** By the first spelling of each name. */
    Map<String, String> byName() {
        return Collections.unmodifiableMap(byName);
    }

    /** In the file. */
    List<String> ids() {
        return List.copyOf(byKey.values());
    }

    /** Of one of the names, however it is spelled; empty where nothing is named. */
    String id(String typed) {
        return byKey.getOrDefault(key(Names.name(typed)), "");
    }

    private void add(String typed) {
        String name = Names.name(typed);
        String key = key(name);
        if (key.isEmpty() || byKey.containsKey(key)) {
            return;
        }
        String own = Names.id(name);
        String id = taken.free(own.isEmpty() ? "crop-" + (byKey.size() + 1) : own);
        byKey.put(key, id);
        byName.put(name, id);
    }

    /** The same for all spellings of a name. */
    private static String key(String name) {
        String id = Names.id(name);
        return (id.isEmpty() ? name : id).toLowerCase(Locale.ROOT);
    }
}

package freshfurrow.app.begin;

import freshfurrow.model.read.Problem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** The ids that things have in the file: made of the names that people gave them, or the first usual ones that are free. */
final class EntryIds {
    private final Map<Section, Map<String, Entry>> bySection = new EnumMap<>(Section.class);
    private final List<Problem> twice = new ArrayList<>();
    private final Map<String, Section> owners = new HashMap<>();

    private EntryIds() {}

    /** Those of all things but crops, whose names are those that fields give. */
    static EntryIds of(Answers answers) {
        EntryIds ids = new EntryIds();
        for (Section section : Section.values()) {
            if (section != Section.CROPS) {
                ids.add(section, answers.of(section));
            }
        }
        return ids;
    }

    /** Of a section, in their order. */
    Map<String, Entry> of(Section section) {
        return bySection.get(section);
    }

    /** What is wrong with names that two things have; the later one then has an id with a number behind it. */
    List<Problem> twice() {
        return List.copyOf(twice);
    }

    private void add(Section section, List<Entry> entries) {
        Names.Taken taken = takenWith(section);
        Map<String, Entry> byId = new LinkedHashMap<>();
        for (Entry entry : entries) {
            String named = Names.id(entry.id());
            String own = named.isEmpty() ? usual(section, byId.size() + 1) : named;
            String id = taken.free(own);
            if (!id.equals(own)) {
                Section owner = isAmong(byId.keySet(), own) ? section : owners.get(key(own));
                twice.add(twice(section, id, own, owner.noun()));
            }
            owners.putIfAbsent(key(id), section);
            byId.put(id, entry);
        }
        bySection.put(section, byId);
    }

    /** Ids are told apart among machines, among places and water points, and within each other section. */
    private Names.Taken takenWith(Section section) {
        Names.Taken taken = new Names.Taken();
        switch (section) {
            case RIGS -> of(Section.PLANTERS).keySet().forEach(taken::free);
            case WATER -> of(Section.PLACES).keySet().forEach(taken::free);
            case SEASON, PLACES, CROPS, RECIPES, PLANTERS, COMPOST -> {}
        }
        return taken;
    }

    private static boolean isAmong(Set<String> ids, String own) {
        return ids.stream().anyMatch(id -> key(id).equals(key(own)));
    }

    private static Problem twice(Section section, String id, String own, String noun) {
        return new Problem(
                NewSeason.FILE_NAME,
                OptionalInt.empty(),
                section.key() + "." + id,
                "the id " + own + " is " + (noun.startsWith("the ") ? noun : "a " + noun) + "'s already",
                "give every " + section.noun() + " a name of its own");
    }

    /** The first that nothing has yet, of whatever section. */
    private String usual(Section section, int number) {
        int free = number;
        while (owners.containsKey(key(section.usualId(free)))) {
            free++;
        }
        return section.usualId(free);
    }

    private static String key(String id) {
        return id.toLowerCase(Locale.ROOT);
    }
}

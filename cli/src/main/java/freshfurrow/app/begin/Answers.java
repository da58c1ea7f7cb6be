package freshfurrow.app.begin;

import java.util.List;
import java.util.Map;

/**
 * All that is known of a season that is begun.
 *
 * @param entries answers by section; a section that nobody answered has one entry of defaults
 * @param invented whether places and fields are an example's
 */
public record Answers(UnitSystem units, Map<Section, List<Entry>> entries, GivenFields fields, boolean invented) {
    private static final Entry NOTHING = new Entry("", Map.of());

    public Answers {
        entries = Map.copyOf(entries);
    }

    List<Entry> of(Section section) {
        List<Entry> given = entries.getOrDefault(section, List.of());
        return given.isEmpty() && section != Section.CROPS ? List.of(NOTHING) : given;
    }
}

package freshfurrow.model.timeline;

import freshfurrow.model.plan.PlantingOrders;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Planting orders as a timeline plays them. */
final class PlayedLists {
    private final int[][] entries;

    private PlayedLists(int[][] entries) {
        this.entries = entries;
    }

    /**
     * The lists of orders.
     *
     * @throws IllegalArgumentException when a list names a field that the season does not have, or one twice, or when there are
     *     more or fewer lists than planters
     */
    static PlayedLists of(CompiledSeason season, PlantingOrders orders) {
        List<List<String>> byPlanter = orders.byPlanter();
        if (byPlanter.size() != season.planterCount()) {
            throw new IllegalArgumentException(byPlanter.size() + " lists for " + season.planterCount() + " planters");
        }
        Map<String, Integer> entryOf = new HashMap<>();
        for (int field = 0; field < season.fieldCount(); field++) {
            String id = season.season().fields().get(field).id();
            entryOf.put(id, orders.withoutExtract().contains(id) ? season.without(field) : field);
        }
        return new PlayedLists(byPlanter.stream()
                .map(ids -> ids.stream().mapToInt(id -> entry(entryOf, id)).toArray())
                .toArray(int[][]::new));
    }

    /** The entries of each planter's list. */
    int[][] entries() {
        return entries;
    }

    /** How many there are of each. */
    int[] sizes() {
        return Arrays.stream(entries).mapToInt(list -> list.length).toArray();
    }

    private static int entry(Map<String, Integer> entryOf, String id) {
        Integer entry = entryOf.remove(id);
        if (entry == null) {
            throw new IllegalArgumentException("field " + id + " is unknown or stands in two places");
        }
        return entry;
    }
}

package freshfurrow.cli.text;

import freshfurrow.cli.day.Loading;
import freshfurrow.model.mixing.Buckets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What a rig has to have on board for a day, in words. */
public record LoadingText(Figures figures) {
    /**
     * What to load.
     *
     * @param what compost, water or tools
     * @param text how much of it
     */
    public record Item(String what, String text) {}

    /** The list; empty when there is nothing to load. */
    public List<Item> items(Loading loading) {
        List<Item> items = new ArrayList<>();
        if (!loading.kgByLot().isEmpty()) {
            items.add(new Item(
                    "Compost",
                    loading.kgByLot().entrySet().stream()
                            .map(lot -> figures.mass(lot.getValue()) + " of " + lot.getKey()
                                    + buckets(lot.getValue(), loading.bucketKg()))
                            .collect(Collectors.joining(", "))));
        }
        if (!loading.isNothing()) {
            items.add(new Item("Water", water(loading)));
        }
        if (!loading.kgByLot().isEmpty()) {
            items.add(new Item("Tools", "scale, buckets, drum strainer, masks, gloves, eye protection"));
        }
        return items;
    }

    /** Compost in buckets, as {@code " (2 buckets + 3.5 lb)"}; empty for less than a bucket, or where none was weighed. */
    public String buckets(double kg, OptionalDouble bucketKg) {
        return bucketKg.stream()
                .mapToObj(full -> Buckets.of(kg, full))
                .filter(buckets -> buckets.full() > 0)
                .map(buckets -> " (" + text(buckets) + ")")
                .findFirst()
                .orElse("");
    }

    private String water(Loading loading) {
        String onBoard = loading.onBoardL() < 1
                ? "none on board"
                : figures.volume(loading.onBoardL()) + " on board from the day before";
        return loading.draws() == 0
                ? onBoard
                : onBoard + ", " + figures.volume(loading.drawL()) + " to draw in "
                        + Figures.count(loading.draws(), "draw", "draws");
    }

    private String text(Buckets buckets) {
        String full = Figures.count(buckets.full(), "bucket", "buckets");
        return buckets.restKg() == 0 ? full : full + " + " + figures.mass(buckets.restKg());
    }
}

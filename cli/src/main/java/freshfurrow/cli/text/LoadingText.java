package freshfurrow.cli.text;

import freshfurrow.cli.day.Loading;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.model.mixing.Buckets;
import freshfurrow.model.plan.Activity;
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
    public List<Item> items(Loading loading, PlanIndex index) {
        List<Item> items = new ArrayList<>();
        if (loading.isOfCompost()) {
            items.add(new Item(
                    "Compost",
                    loading.fetched()
                            .map(loadings -> fetched(loading, loadings, index))
                            .orElseGet(() -> compost(loading))));
        }
        if (!loading.isNothing()) {
            items.add(new Item("Water", water(loading)));
        }
        if (loading.isOfCompost()) {
            items.add(new Item("Tools", "scale, buckets, drum strainer, masks, gloves, eye protection"));
        }
        return items;
    }

    private String compost(Loading loading) {
        return loading.kgByLot().entrySet().stream()
                .map(lot -> compost(lot.getKey(), lot.getValue(), loading))
                .collect(Collectors.joining(", "));
    }

    private String compost(String lot, double kg, Loading loading) {
        return figures.mass(kg) + " of " + lot + buckets(kg, loading.bucketKg());
    }

    /** What is on board, and what is loaded when and where: first in the morning, then on later trips. */
    private String fetched(Loading loading, List<Activity.LoadCompost> loadings, PlanIndex index) {
        List<String> parts = new ArrayList<>();
        parts.add(loading.kgByLot().isEmpty() ? "none on board" : compost(loading) + " on board from the day before");
        for (Activity.LoadCompost trip : loadings) {
            CrewClock clock = figures.crewClock(trip.start().toLocalDate());
            parts.add((parts.size() == 1 ? "load " : "then ") + compost(trip.lot(), trip.kg(), loading) + " at "
                    + index.label(trip.at()) + " about " + clock.about(trip.start()));
        }
        return String.join(", ", parts);
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

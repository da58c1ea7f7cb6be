package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a plan does with a field.
 *
 * @param pieces planted, in time order
 * @param unserved what is left of it, and why
 */
public record FieldWork(Field field, List<Piece> pieces, Optional<Plan.Unserved> unserved) {
    /** A part of the field, planted by one planter out of one load or without extract. */
    public record Piece(String planter, Activity.Planting planting) {}

    public FieldWork {
        pieces = List.copyOf(pieces);
    }

    /** All fields of a season, in its order. */
    public static List<FieldWork> of(Season season, Plan plan) {
        Map<String, List<Piece>> pieces = new HashMap<>();
        plan.planters().forEach((id, planter) -> planter.activities().forEach(activity -> {
            if (activity instanceof Activity.Planting planting) {
                pieces.computeIfAbsent(planting.field(), field -> new ArrayList<>())
                        .add(new Piece(id, planting));
            }
        }));
        pieces.values()
                .forEach(list ->
                        list.sort(Comparator.comparing(piece -> piece.planting().start())));
        Map<String, Plan.Unserved> unserved = new HashMap<>();
        plan.unserved().forEach(left -> unserved.put(left.field(), left));
        return season.fields().stream()
                .map(field -> new FieldWork(
                        field,
                        pieces.getOrDefault(field.id(), List.of()),
                        Optional.ofNullable(unserved.get(field.id()))))
                .toList();
    }

    /** When the first of it is planted; empty when nothing is. */
    public Optional<LocalDateTime> start() {
        return pieces.stream().map(piece -> piece.planting().start()).findFirst();
    }

    /** When the last of it is planted; empty when nothing is. */
    public Optional<LocalDateTime> end() {
        return pieces.stream().map(piece -> piece.planting().end()).max(Comparator.naturalOrder());
    }

    public double plantedHa() {
        return pieces.stream().mapToDouble(piece -> piece.planting().areaHa()).sum();
    }

    /** Of that planted without extract, ha. */
    public double withoutExtractHa() {
        return haOf(Activity.PlantWithout.class);
    }

    /** Planted with extract or sprayed, ha. */
    public double withExtractHa() {
        return haOf(Activity.Plant.class);
    }

    private double haOf(Class<? extends Activity.Planting> kind) {
        return pieces.stream()
                .map(Piece::planting)
                .filter(kind::isInstance)
                .mapToDouble(Activity.Planting::areaHa)
                .sum();
    }

    /** Area planted after the window times the days after it, unweighted; a piece counts on the date on which it begins. */
    public double lateHaDays() {
        return haDaysAfter(field.window(), pieces.stream().map(Piece::planting).toList());
    }

    /**
     * Days from the last planting to the window's last date; below 0 when it is planted after it. Empty when nothing is
     * planted.
     */
    public Optional<Long> daysToSpare() {
        return pieces.stream()
                .map(piece -> piece.planting().start().toLocalDate())
                .max(Comparator.naturalOrder())
                .map(last -> ChronoUnit.DAYS.between(last, field.window().last()));
    }

    /** Ids of the planters that plant it, in the order in which they come. */
    public List<String> planters() {
        return pieces.stream().map(Piece::planter).distinct().toList();
    }

    /** Ids of the loads that go into it, in the order in which they are planted. */
    public List<String> loads() {
        return pieces.stream()
                .map(Piece::planting)
                .filter(Activity.Plant.class::isInstance)
                .map(planting -> ((Activity.Plant) planting).load())
                .distinct()
                .toList();
    }

    /** Area planted after a window times the days after its last date, ha-days. */
    public static double haDaysAfter(DateWindow window, List<Activity.Planting> plantings) {
        return plantings.stream()
                .mapToDouble(planting -> planting.areaHa()
                        * Math.max(0, daysAfter(window, planting.start().toLocalDate())))
                .sum();
    }

    private static long daysAfter(DateWindow window, LocalDate date) {
        return ChronoUnit.DAYS.between(window.last(), date);
    }
}

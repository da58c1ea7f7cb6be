package freshfurrow.model.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A field to plant or to spray, with all it inherits from its crop already filled in.
 *
 * @param areaHa hectares, above 0
 * @param at where machines enter it; may be absent when distances come from a matrix
 * @param outline rings of its polygons as given by a GeoJSON file, each closed; empty when only a point is known
 * @param window dates to plant it in; planting never begins earlier, planting later counts as late
 * @param recipe id of a recipe of the season
 * @param lateWeight what a late day of this field counts against others, 0 or more
 * @param extractWeight what planting it without extract counts against others, 0 or more
 * @param planters ids of the machines that may plant or spray it; empty when all that do such work may
 * @param work what is done to it
 * @param judged what people said of its ground, in a season under way
 * @param fixed what somebody promised of it
 */
public record Field(
        String id,
        String name,
        double areaHa,
        Optional<GeoPoint> at,
        List<List<GeoPoint>> outline,
        String crop,
        DateWindow window,
        String recipe,
        Drainage drainage,
        double lateWeight,
        double extractWeight,
        Set<String> planters,
        Work work,
        List<Judgement> judged,
        Fixed fixed) {
    public Field {
        outline = outline.stream().map(List::copyOf).toList();
        planters = Set.copyOf(planters);
        judged = List.copyOf(judged);
        if (!(areaHa > 0 && lateWeight >= 0 && extractWeight >= 0)) {
            throw new IllegalArgumentException("field " + id + " needs an area above 0 and weights of 0 or more");
        }
    }

    /** What decides when it is too wet. */
    public FieldGround ground() {
        return new FieldGround(drainage, judged);
    }

    /** A field like this one, but for what is changed. */
    public FieldChange change() {
        return new FieldChange(this);
    }

    /** Whether a machine may plant or spray it. */
    public boolean allows(Applicator machine) {
        return machine.work() == work
                && fixed.planter()
                        .map(machine.id()::equals)
                        .orElse(planters.isEmpty() || planters.contains(machine.id()));
    }

    /** The first day on which it may be begun: of its window, or the day that it is fixed to. */
    public LocalDate opens() {
        return fixed.on().filter(window.first()::isBefore).orElse(window.first());
    }
}

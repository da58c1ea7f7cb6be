package freshfurrow.model.season;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A field to be made out of another one, of which all stays as it was but for what is said. */
public final class FieldChange {
    private String id;
    private String name;
    private double areaHa;
    private Optional<GeoPoint> at;
    private List<List<GeoPoint>> outline;
    private String crop;
    private DateWindow window;
    private String recipe;
    private Drainage drainage;
    private double lateWeight;
    private double extractWeight;
    private Set<String> planters;
    private Work work;
    private List<Judgement> judged;
    private Fixed fixed;

    FieldChange(Field from) {
        id = from.id();
        name = from.name();
        areaHa = from.areaHa();
        at = from.at();
        outline = from.outline();
        crop = from.crop();
        window = from.window();
        recipe = from.recipe();
        drainage = from.drainage();
        lateWeight = from.lateWeight();
        extractWeight = from.extractWeight();
        planters = from.planters();
        work = from.work();
        judged = from.judged();
        fixed = from.fixed();
    }

    public FieldChange id(String other) {
        id = other;
        return this;
    }

    public FieldChange name(String other) {
        name = other;
        return this;
    }

    public FieldChange areaHa(double other) {
        areaHa = other;
        return this;
    }

    public FieldChange at(Optional<GeoPoint> other) {
        at = other;
        return this;
    }

    public FieldChange outline(List<List<GeoPoint>> other) {
        outline = other;
        return this;
    }

    public FieldChange crop(String other) {
        crop = other;
        return this;
    }

    public FieldChange window(DateWindow other) {
        window = other;
        return this;
    }

    public FieldChange recipe(String other) {
        recipe = other;
        return this;
    }

    public FieldChange drainage(Drainage other) {
        drainage = other;
        return this;
    }

    public FieldChange lateWeight(double other) {
        lateWeight = other;
        return this;
    }

    public FieldChange extractWeight(double other) {
        extractWeight = other;
        return this;
    }

    public FieldChange planters(Set<String> other) {
        planters = other;
        return this;
    }

    public FieldChange work(Work other) {
        work = other;
        return this;
    }

    public FieldChange judged(List<Judgement> other) {
        judged = other;
        return this;
    }

    public FieldChange fixed(Fixed other) {
        fixed = other;
        return this;
    }

    /**
     * The field as it now is.
     *
     * @throws IllegalArgumentException when the parts do not make one
     */
    public Field field() {
        return new Field(
                id,
                name,
                areaHa,
                at,
                outline,
                crop,
                window,
                recipe,
                drainage,
                lateWeight,
                extractWeight,
                planters,
                work,
                judged,
                fixed);
    }
}

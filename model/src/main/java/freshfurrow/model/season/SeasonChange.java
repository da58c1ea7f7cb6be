package freshfurrow.model.season;

import freshfurrow.model.quantity.DisplayUnits;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A season to be made out of another one, of which all stays as it was but for what is said. */
public final class SeasonChange {
    private String name;
    private LocalDate first;
    private LocalDate last;
    private ZoneId timezone;
    private ClosedDays closed;
    private Map<String, Optional<GeoPoint>> places;
    private List<Recipe> recipes;
    private List<Field> fields;
    private List<Applicator> applicators;
    private List<Rig> rigs;
    private List<WaterPoint> waterPoints;
    private List<CompostLot> compost;
    private Drying drying;
    private List<Rain> rain;
    private Optional<GroundRecord> ground;
    private Distances distances;
    private Goals goals;
    private DisplayUnits units;
    private List<Outage> outages;
    private Optional<Standing> standing;
    private Optional<TimeSpread> spread;

    SeasonChange(Season from) {
        name = from.name();
        first = from.first();
        last = from.last();
        timezone = from.timezone();
        closed = from.closed();
        places = from.places();
        recipes = from.recipes();
        fields = from.fields();
        applicators = from.applicators();
        rigs = from.rigs();
        waterPoints = from.waterPoints();
        compost = from.compost();
        drying = from.drying();
        rain = from.rain();
        ground = from.ground();
        distances = from.distances();
        goals = from.goals();
        units = from.units();
        outages = from.outages();
        standing = from.standing();
        spread = from.spread();
    }

    public SeasonChange name(String other) {
        name = other;
        return this;
    }

    public SeasonChange first(LocalDate other) {
        first = other;
        return this;
    }

    public SeasonChange last(LocalDate other) {
        last = other;
        return this;
    }

    public SeasonChange timezone(ZoneId other) {
        timezone = other;
        return this;
    }

    public SeasonChange closed(ClosedDays other) {
        closed = other;
        return this;
    }

    public SeasonChange places(Map<String, Optional<GeoPoint>> other) {
        places = other;
        return this;
    }

    public SeasonChange recipes(List<Recipe> other) {
        recipes = other;
        return this;
    }

    public SeasonChange fields(List<Field> other) {
        fields = other;
        return this;
    }

    public SeasonChange applicators(List<? extends Applicator> other) {
        applicators = List.copyOf(other);
        return this;
    }

    public SeasonChange rigs(List<Rig> other) {
        rigs = other;
        return this;
    }

    public SeasonChange waterPoints(List<WaterPoint> other) {
        waterPoints = other;
        return this;
    }

    public SeasonChange compost(List<CompostLot> other) {
        compost = other;
        return this;
    }

    public SeasonChange drying(Drying other) {
        drying = other;
        return this;
    }

    public SeasonChange rain(List<Rain> other) {
        rain = other;
        return this;
    }

    public SeasonChange ground(Optional<GroundRecord> other) {
        ground = other;
        return this;
    }

    public SeasonChange distances(Distances other) {
        distances = other;
        return this;
    }

    public SeasonChange goals(Goals other) {
        goals = other;
        return this;
    }

    public SeasonChange units(DisplayUnits other) {
        units = other;
        return this;
    }

    public SeasonChange outages(List<Outage> other) {
        outages = other;
        return this;
    }

    public SeasonChange standing(Optional<Standing> other) {
        standing = other;
        return this;
    }

    public SeasonChange spread(Optional<TimeSpread> other) {
        spread = other;
        return this;
    }

    /**
     * The season as it now is.
     *
     * @throws IllegalArgumentException when the parts do not make one
     */
    public Season season() {
        return new Season(
                name,
                first,
                last,
                timezone,
                closed,
                places,
                recipes,
                fields,
                applicators,
                rigs,
                waterPoints,
                compost,
                drying,
                rain,
                ground,
                distances,
                goals,
                units,
                outages,
                standing,
                spread);
    }
}

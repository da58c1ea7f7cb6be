package freshfurrow.model.season;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** A season to be made out of another one, of which all stays as it was but for what is said. */
public final class SeasonChange {
    private final Season from;
    private String name;
    private LocalDate first;
    private ZoneId timezone;
    private List<Recipe> recipes;
    private List<Field> fields;
    private List<Planter> planters;
    private List<Rig> rigs;
    private List<WaterPoint> waterPoints;
    private List<CompostLot> compost;
    private List<Rain> rain;
    private Optional<GroundRecord> ground;
    private Distances distances;
    private Goals goals;
    private List<Outage> outages;
    private Optional<Standing> standing;

    SeasonChange(Season from) {
        this.from = from;
        name = from.name();
        first = from.first();
        timezone = from.timezone();
        recipes = from.recipes();
        fields = from.fields();
        planters = from.planters();
        rigs = from.rigs();
        waterPoints = from.waterPoints();
        compost = from.compost();
        rain = from.rain();
        ground = from.ground();
        distances = from.distances();
        goals = from.goals();
        outages = from.outages();
        standing = from.standing();
    }

    public SeasonChange name(String text) {
        name = text;
        return this;
    }

    public SeasonChange first(LocalDate date) {
        first = date;
        return this;
    }

    public SeasonChange timezone(ZoneId zone) {
        timezone = zone;
        return this;
    }

    public SeasonChange recipes(List<Recipe> all) {
        recipes = all;
        return this;
    }

    public SeasonChange fields(List<Field> all) {
        fields = all;
        return this;
    }

    public SeasonChange planters(List<Planter> all) {
        planters = all;
        return this;
    }

    public SeasonChange rigs(List<Rig> all) {
        rigs = all;
        return this;
    }

    public SeasonChange waterPoints(List<WaterPoint> all) {
        waterPoints = all;
        return this;
    }

    public SeasonChange compost(List<CompostLot> all) {
        compost = all;
        return this;
    }

    public SeasonChange rain(List<Rain> all) {
        rain = all;
        return this;
    }

    public SeasonChange ground(Optional<GroundRecord> record) {
        ground = record;
        return this;
    }

    public SeasonChange distances(Distances roads) {
        distances = roads;
        return this;
    }

    public SeasonChange goals(Goals weights) {
        goals = weights;
        return this;
    }

    public SeasonChange outages(List<Outage> all) {
        outages = all;
        return this;
    }

    public SeasonChange standing(Standing machines) {
        standing = Optional.of(machines);
        return this;
    }

    /**
     * The season as it now is.
     *
     * @throws IllegalArgumentException when the parts do not make a season
     */
    public Season season() {
        return new Season(
                name,
                first,
                from.last(),
                timezone,
                from.closed(),
                from.places(),
                recipes,
                fields,
                planters,
                rigs,
                waterPoints,
                compost,
                from.drying(),
                rain,
                ground,
                distances,
                goals,
                from.units(),
                outages,
                standing);
    }
}

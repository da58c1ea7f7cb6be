package freshfurrow.model.season;

import freshfurrow.model.quantity.DisplayUnits;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One planting season: everything the timeline needs to play out lists of fields. Lists keep the order of the season
 * file, which breaks ties.
 *
 * @param name what people call the season
 * @param first first day, included; time zero of the season is this day's midnight
 * @param last last day, included; what is not planted by its end is unserved
 * @param timezone whose clock all times are by
 * @param closed days on which planters and rigs do not work
 * @param places named places other than fields and water points, by id; where they are may be absent when distances come from a
 *     matrix
 * @param rain rain that people have told of, whose closures follow from {@code drying}
 * @param ground what the weather of a record does to the ground; empty when only {@code rain} is known
 * @param distances between all ids of fields, places and water points, and of places where machines stand
 * @param outages times in which machines are out of order
 * @param standing where machines stand, when the season is already under way: then {@code fields} and {@code compost} are what is
 *     left of them
 * @param spread how much times vary around those of the season; empty where all work takes the time that the season gives it
 */
public record Season(
        String name,
        LocalDate first,
        LocalDate last,
        ZoneId timezone,
        ClosedDays closed,
        Map<String, Optional<GeoPoint>> places,
        List<Recipe> recipes,
        List<Field> fields,
        List<Applicator> applicators,
        List<Rig> rigs,
        List<WaterPoint> waterPoints,
        List<CompostLot> compost,
        Drying drying,
        List<Rain> rain,
        Optional<GroundRecord> ground,
        Distances distances,
        Goals goals,
        DisplayUnits units,
        List<Outage> outages,
        Optional<Standing> standing,
        Optional<TimeSpread> spread) {

    public Season {
        places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
        recipes = List.copyOf(recipes);
        fields = List.copyOf(fields);
        rigs = List.copyOf(rigs);
        applicators = mounted(applicators, rigs);
        waterPoints = List.copyOf(waterPoints);
        compost = List.copyOf(compost);
        rain = List.copyOf(rain);
        outages = List.copyOf(outages);
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("season ends on " + last + ", before it begins on " + first);
        }
    }

    /** The same season in another spring: with that ground, and no other rain. */
    public Season inSpring(GroundRecord spring) {
        return change().rain(List.of()).ground(Optional.of(spring)).season();
    }

    /** A season like this one, but for what is changed. */
    public SeasonChange change() {
        return new SeasonChange(this);
    }

    /** Whether any work takes another time than the season gives it. */
    public boolean timesVary() {
        return spread.isPresent() && !spread.get().isNone();
    }

    /** Whether a field may be planted without extract; what is not sprayed is not done. */
    public boolean mayGoWithout(Field field) {
        return goals.untreatedDays().isPresent() && field.work() == Work.PLANT;
    }

    /** Changes of the clock that hold times of this season may cross: those in its days, and in the longest hold time after them. */
    public ClockChanges clockChanges() {
        return ClockChanges.of(timezone, start(), end().plusSeconds(longestHoldS()));
    }

    /** Number of calendar days of the season, both ends included; at least 1. */
    public int days() {
        return (int) ChronoUnit.DAYS.between(first, last) + 1;
    }

    /**
     * The recipe of that id.
     *
     * @throws IllegalArgumentException when the season has no such recipe
     */
    public Recipe recipe(String id) {
        return named(recipes, Recipe::id, id).orElseThrow(() -> new IllegalArgumentException("no recipe " + id));
    }

    /**
     * The field of that id.
     *
     * @throws IllegalArgumentException when the season has no such field
     */
    public Field field(String id) {
        return named(fields, Field::id, id).orElseThrow(() -> new IllegalArgumentException("no field " + id));
    }

    /**
     * The machine of that id that puts mix on fields.
     *
     * @throws IllegalArgumentException when the season has no such machine
     */
    public Applicator applicator(String id) {
        return named(applicators, Applicator::id, id)
                .orElseThrow(() -> new IllegalArgumentException("no planter " + id));
    }

    /** Of the machines that put mix on fields, those that plant. */
    public List<Planter> planters() {
        return applicators(Planter.class);
    }

    /** Of the machines that put mix on fields, those that spray. */
    public List<Sprayer> sprayers() {
        return applicators(Sprayer.class);
    }

    /** Those that are mounted on a rig have what is that rig's, whatever was said. */
    private static List<Applicator> mounted(List<Applicator> all, List<Rig> rigs) {
        return all.stream()
                .map(one -> one instanceof Sprayer sprayer
                        ? sprayer.on()
                                .flatMap(id -> named(rigs, Rig::id, id))
                                .<Applicator>map(sprayer::asOn)
                                .orElse(sprayer)
                        : one)
                .toList();
    }

    private <A extends Applicator> List<A> applicators(Class<A> kind) {
        return applicators.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Ids of the machines that are one with that of an id, itself among them: a rig and the sprayers that are mounted on it. */
    public Set<String> oneWith(String id) {
        String rig = applicators.stream()
                .filter(machine -> machine.id().equals(id))
                .findFirst()
                .flatMap(Applicator::on)
                .orElse(id);
        Set<String> all = new LinkedHashSet<>(List.of(rig, id));
        applicators.stream()
                .filter(machine -> machine.on().filter(rig::equals).isPresent())
                .forEach(machine -> all.add(machine.id()));
        return all;
    }

    /** All machines, those that put mix on fields first. */
    public Stream<Machine> machines() {
        return Stream.concat(applicators.stream(), rigs.stream());
    }

    /**
     * The rig of that id.
     *
     * @throws IllegalArgumentException when the season has no such rig
     */
    public Rig rig(String id) {
        return named(rigs, Rig::id, id).orElseThrow(() -> new IllegalArgumentException("no rig " + id));
    }

    /**
     * The water point of that id.
     *
     * @throws IllegalArgumentException when the season has no such water point
     */
    public WaterPoint waterPoint(String id) {
        return named(waterPoints, WaterPoint::id, id)
                .orElseThrow(() -> new IllegalArgumentException("no water point " + id));
    }

    /** Whether it says where compost lies, so that rigs have to fetch it; else they have it wherever they make batches. */
    public boolean saysWhereCompostLies() {
        return compost.stream().anyMatch(lot -> lot.at().isPresent())
                || standing.stream()
                        .flatMap(machines -> machines.rigs().values().stream())
                        .anyMatch(rig -> !rig.compostKg().isEmpty());
    }

    /** All compost in the order in which it becomes available: what lies in lots and, of the same lots, what rigs have on board to begin with. */
    public List<CompostLot> compostWithThatOnBoard() {
        Map<String, Double> onBoardKg = new LinkedHashMap<>();
        standing.ifPresent(machines -> machines.rigs().values().forEach(rig -> rig.compostKg()
                .forEach((lot, kg) -> onBoardKg.merge(lot, kg, Double::sum))));
        return Stream.concat(
                        onBoardKg.entrySet().stream()
                                .filter(lot -> lot(lot.getKey()).isEmpty())
                                .map(lot -> new CompostLot(lot.getKey(), lot.getValue(), first)),
                        compost.stream()
                                .map(lot -> lot.withMassKg(lot.massKg() + onBoardKg.getOrDefault(lot.id(), 0.0))))
                .sorted(Comparator.comparing(CompostLot::from))
                .toList();
    }

    /** The lot of compost of that id; empty when there is none, as when it is used up. */
    public Optional<CompostLot> lot(String id) {
        return named(compost, CompostLot::id, id);
    }

    /** Its local times as seconds since its first midnight. */
    public SeasonTime time() {
        return new SeasonTime(first);
    }

    /** The midnight that begins the first day. */
    public LocalDateTime start() {
        return first.atStartOfDay();
    }

    /** The midnight that ends the last day. */
    public LocalDateTime end() {
        return last.plusDays(1).atStartOfDay();
    }

    /** Whether there is a field of that id. */
    public boolean hasField(String id) {
        return named(fields, Field::id, id).isPresent();
    }

    /** Whether there is a rig of that id. */
    public boolean hasRig(String id) {
        return named(rigs, Rig::id, id).isPresent();
    }

    private static <T> Optional<T> named(List<T> all, Function<T, String> name, String id) {
        return all.stream().filter(one -> name.apply(one).equals(id)).findFirst();
    }

    /** The hold time of the recipe that keeps longest, s; 0 without recipes. */
    public int longestHoldS() {
        return recipes.stream().mapToInt(Recipe::holdS).max().orElse(0);
    }
}

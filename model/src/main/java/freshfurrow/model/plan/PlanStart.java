package freshfurrow.model.plan;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What was done, and what became known, before a plan of what is left of a season begins.
 *
 * @param standing where the machines stand
 * @param planted what was planted, by field and date
 * @param lots what is left of compost, by lot, but where it lies; lots that are used up or gone are not among them
 * @param rain that the season file does not tell of
 * @param outages of machines, in the past or still to come
 * @param judged what people said of the ground of fields, by id of the field
 * @param batches made before of which mix is on board
 * @param fromLog what of all this the log said
 * @param logSha256 of the season's log that was read, lower-case hex, if there was one
 */
public record PlanStart(
        Standing standing,
        List<Planted> planted,
        List<CompostLot> lots,
        List<Rain> rain,
        List<Outage> outages,
        Map<String, List<Judgement>> judged,
        List<Plan.Batch> batches,
        FromLog fromLog,
        Optional<String> logSha256) {
    /** Of no bytes: the checksum of a log that is not there yet. */
    private static final String NO_LOG = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    private static final double GRAM_KG = 0.001;

    public PlanStart {
        planted = List.copyOf(planted);
        lots = List.copyOf(lots);
        rain = List.copyOf(rain);
        outages = List.copyOf(outages);
        Map<String, List<Judgement>> words = new LinkedHashMap<>();
        judged.forEach((field, said) -> words.put(field, List.copyOf(said)));
        judged = Collections.unmodifiableMap(words);
        batches = List.copyOf(batches);
    }

    /**
     * A part of a field that was planted.
     *
     * @param areaHa ha, above 0
     */
    public record Planted(String field, LocalDate date, double areaHa) {
        public Planted {
            if (!(areaHa > 0)) {
                throw new IllegalArgumentException(
                        areaHa + " ha of " + field + " planted on " + date + ", expected above 0");
            }
        }
    }

    /** This start with the promises that a plan made before has given for the days ahead. */
    public PlanStart withPromises(Map<String, Standing.Promise> promised) {
        return new PlanStart(
                standing.withPromised(promised), planted, lots, rain, outages, judged, batches, fromLog, logSha256);
    }

    /** This start of a season whose log had that checksum. */
    public PlanStart withLog(String sha256) {
        return new PlanStart(standing, planted, lots, rain, outages, judged, batches, fromLog, Optional.of(sha256));
    }

    /** When the plan begins. */
    public LocalDateTime now() {
        return standing.now();
    }

    /** What was planted of each field, ha. */
    public Map<String, Double> plantedHa() {
        Map<String, Double> done = new LinkedHashMap<>();
        planted.forEach(part -> done.merge(part.field(), part.areaHa(), Double::sum));
        return done;
    }

    /**
     * What is left of a season: its fields less what was planted, the compost that is left, the rain and outages that became known,
     * and the machines where they stand.
     *
     * @param whole the season as its file tells it
     * @throws IllegalArgumentException when this is not of that season: a field, place, recipe or lot unknown, more of a field planted
     *     than its area, more of a lot left than it had, or a beginning outside of the season
     */
    public Season remaining(Season whole) {
        if (now().isBefore(whole.start()) || !now().isBefore(whole.end())) {
            throw new IllegalArgumentException(
                    now() + " is not in the season, which goes from " + whole.first() + " to " + whole.last());
        }
        checkNames(whole);
        checkLots(whole);
        Map<String, Double> done = plantedHa();
        List<Field> left = whole.fields().stream()
                .filter(field -> leftHa(field, done) >= Plan.LEAST_HA)
                .map(field -> left(field, done))
                .toList();
        Stream.concat(done.keySet().stream(), judged.keySet().stream())
                .filter(id -> !whole.hasField(id))
                .findFirst()
                .ifPresent(id -> {
                    throw new IllegalArgumentException("there is no field " + id);
                });
        return whole.change()
                .places(placesLeft(whole, left))
                .fields(left)
                .compost(lots.stream()
                        .map(lot -> lot.withAt(whole.lot(lot.id()).flatMap(CompostLot::at)))
                        .toList())
                .rain(Stream.concat(whole.rain().stream(), rain.stream()).toList())
                .outages(outages)
                .standing(Optional.of(standing))
                .season();
    }

    private Field left(Field field, Map<String, Double> done) {
        Field left = done.containsKey(field.id())
                ? field.change()
                        .areaHa(leftHa(field, done))
                        .fixed(field.fixed().onAnyDay())
                        .field()
                : field;
        List<Judgement> said = judged.getOrDefault(field.id(), List.of());
        return said.isEmpty() ? left : left.change().judged(said).field();
    }

    private void checkLots(Season whole) {
        Set<String> seen = new HashSet<>();
        for (CompostLot lot : lots) {
            CompostLot known = whole.compost().stream()
                    .filter(one -> one.id().equals(lot.id()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("there is no lot " + lot.id()));
            if (!seen.add(lot.id())) {
                throw new IllegalArgumentException("lot " + lot.id() + " is there twice");
            }
            if (!lot.from().equals(known.from())) {
                throw new IllegalArgumentException(
                        "lot " + lot.id() + " is on hand from " + lot.from() + ", in the season from " + known.from());
            }
            if (logSha256.filter(NO_LOG::equals).isPresent() && lot.massKg() > known.massKg() + GRAM_KG) {
                throw new IllegalArgumentException("lot " + lot.id() + " has " + lot.massKg() + " kg left of "
                        + known.massKg() + " kg, and no delivery was logged");
            }
        }
    }

    /** A field that is done is a place like any other as long as a machine stands there or compost lies there. */
    private Map<String, Optional<GeoPoint>> placesLeft(Season whole, List<Field> left) {
        Set<String> taken = new HashSet<>();
        whole.machines().forEach(machine -> taken.add(machine.at()));
        whole.compost().forEach(lot -> lot.at().ifPresent(taken::add));
        standing.planters().values().forEach(planter -> taken.add(planter.at()));
        standing.rigs().values().forEach(rig -> taken.add(rig.at()));
        left.forEach(field -> taken.remove(field.id()));
        Map<String, Optional<GeoPoint>> places = new LinkedHashMap<>(whole.places());
        whole.fields().stream()
                .filter(field -> taken.contains(field.id()))
                .forEach(field -> places.put(field.id(), field.at()));
        return places;
    }

    private void checkNames(Season whole) {
        PlaceIndex places = PlaceIndex.of(whole);
        standing.planters().forEach((id, planter) -> {
            checkPlace(places, id, planter.at());
            planter.tank().ifPresent(tank -> whole.recipe(tank.mix().recipe()));
        });
        standing.rigs().forEach((id, rig) -> {
            checkPlace(places, id, rig.at());
            rig.mix().ifPresent(mix -> whole.recipe(mix.recipe()));
            checkCompost(whole, id, rig);
        });
    }

    private static void checkCompost(Season whole, String id, Standing.OfRig rig) {
        for (String lot : rig.compostKg().keySet()) {
            if (whole.lot(lot).flatMap(CompostLot::at).isEmpty()) {
                throw new IllegalArgumentException(
                        id + " has compost of " + lot + " on board, which is not a lot with a place");
            }
        }
    }

    private static void checkPlace(PlaceIndex places, String machine, String place) {
        if (!places.contains(place)) {
            throw new IllegalArgumentException(
                    machine + " stands at " + place + ", which is not a place of the season");
        }
    }

    private static double leftHa(Field field, Map<String, Double> done) {
        double left = field.areaHa() - done.getOrDefault(field.id(), 0.0);
        if (left < -Plan.LEAST_HA) {
            throw new IllegalArgumentException("field " + field.id() + " has " + field.areaHa() + " ha, of which "
                    + done.get(field.id()) + " ha were planted");
        }
        return left;
    }
}

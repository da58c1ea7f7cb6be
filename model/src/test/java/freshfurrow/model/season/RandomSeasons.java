package freshfurrow.model.season;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.quantity.DisplayUnits;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Seasons out of a seed, small but with all that makes a season hard: several machines, both ways of extracting, few hoses
 * and daily limits, breaks and closed days, rain, late deliveries of compost, short hold times, fields for some planters. Seeds below zero give seasons in which machines take their time to begin
 * and to end with.
 */
public final class RandomSeasons {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);

    private final LocalDate first;
    private final ZoneId zone;
    private final Random random;
    private final Map<String, double[]> points = new LinkedHashMap<>();

    private final int mostFields;

    private final boolean takingTheirTime;

    private RandomSeasons(long seed, int mostFields, LocalDate first, ZoneId zone) {
        this.first = first;
        this.zone = zone;
        random = new Random(seed);
        takingTheirTime = seed < 0;
        this.mostFields = mostFields;
    }

    /** A season with 1 to 12 fields, 1 to 3 planters, 1 to 3 rigs and 1 to 3 water points, 5 to 16 days long. */
    public static Season season(long seed) {
        return season(seed, 12);
    }

    /** A season with 1 to {@code mostFields} fields. */
    public static Season season(long seed, int mostFields) {
        return withPlacesOfLots(new RandomSeasons(seed, mostFields, FIRST, ZoneOffset.UTC).make(), seed);
    }

    /** A season with 1 to 12 fields that begins on some date, by the clock of a zone. */
    public static Season season(long seed, LocalDate first, ZoneId zone) {
        return withPlacesOfLots(new RandomSeasons(seed, 12, first, zone).make(), seed);
    }

    /** A season with 1 to {@code mostFields} fields, some of them to be sprayed, with 1 or 2 sprayers, and planters or none. */
    public static Season mixed(long seed, int mostFields) {
        Random random = new Random(seed ^ 0x5eed);
        Season season = season(seed, mostFields);
        List<Applicator> machines = new ArrayList<>();
        boolean plants = random.nextInt(4) > 0;
        if (plants) {
            machines.addAll(season.applicators());
        }
        int sprayers = 1 + random.nextInt(2);
        for (int i = 0; i < sprayers; i++) {
            machines.add(sprayer("S" + i, (Planter) season.applicators().get(0), random, seed < 0));
        }
        List<Field> fields = season.fields().stream()
                .map(field -> plants && random.nextBoolean() ? field : sprayed(field, sprayers, random))
                .toList();
        return season.change().applicators(machines).fields(fields).season();
    }

    /** The season with a sprayer or two that are mounted on rigs, beside its planters, or instead. */
    public static Season withMounted(long seed, int mostFields) {
        Season mixed = mixed(seed, mostFields);
        Random random = new Random(seed ^ 0xb00);
        List<Applicator> machines = new ArrayList<>();
        for (Applicator machine : mixed.applicators()) {
            machines.add(
                    machine instanceof Sprayer sprayer && (sprayer.id().equals("S0") || random.nextBoolean())
                            ? sprayer.change()
                                    .fillSetupS(Math.max(60, sprayer.fillSetupS()))
                                    .on(Optional.of(mixed.rigs()
                                            .get(random.nextInt(mixed.rigs().size()))
                                            .id()))
                                    .sprayer()
                            : machine);
        }
        return mixed.change().applicators(machines).season();
    }

    private static Field sprayed(Field field, int sprayers, Random random) {
        Set<String> some = random.nextInt(4) > 0 ? Set.of() : Set.of("S" + random.nextInt(sprayers));
        return field.change().work(Work.SPRAY).planters(some).field();
    }

    private static Sprayer sprayer(String id, Planter like, Random random, boolean takingItsTime) {
        Swath swath = random.nextBoolean()
                ? new Swath.Boom(4 + random.nextInt(14), 1.5 + random.nextDouble(), 0.6)
                : new Swath.Hose(0.5 + 3 * random.nextDouble());
        List<WorkHours> sprayHours = List.of(
                WorkHours.ALWAYS,
                new WorkHours(List.of(new DaySpan(6 * 3600, 9 * 3600), new DaySpan(17 * 3600, 20 * 3600))),
                new WorkHours(List.of(new DaySpan(7 * 3600 + 1, 11 * 3600))));
        return new Sprayer(
                id,
                swath,
                List.of(200.0, 1100.5, 3000.0).get(random.nextInt(3)),
                0.1,
                like.roadSpeedMPerS(),
                random.nextBoolean() ? 0 : 300,
                random.nextBoolean() ? 0 : 400,
                takingItsTime && random.nextBoolean() ? 900 : 0,
                like.at(),
                like.hours(),
                sprayHours.get(random.nextInt(3)));
    }

    /** The season with compost that rigs have wherever they make batches. */
    public static Season withoutPlacesOfLots(Season season) {
        return season.change()
                .compost(season.compost().stream()
                        .map(lot -> lot.withAt(Optional.empty()))
                        .toList())
                .season();
    }

    /** Every other season, but for those of which rigs fetch the compost. */
    private static Season withPlacesOfLots(Season season, long seed) {
        Season untreated = seed % 3 == 0 ? goingWithout(season, new Random(seed)) : season;
        return seed % 2 == 0 ? untreated : withPlacesOfLots(untreated, new Random(seed));
    }

    /** The season where fields may be planted without extract, and planters wait for a rig for some time at most. */
    public static Season goingWithout(Season season, Random random) {
        return season.change()
                .goals(season.goals().withUntreatedDays(OptionalDouble.of(random.nextInt(6))))
                .fields(season.fields().stream()
                        .map(field ->
                                field.change().extractWeight(random.nextInt(3)).field())
                        .toList())
                .applicators(season.applicators().stream()
                        .map(planter -> ((Planter) planter)
                                .change()
                                .longestWaitS(
                                        random.nextBoolean()
                                                ? OptionalInt.empty()
                                                : OptionalInt.of(600 * random.nextInt(10)))
                                .planter())
                        .toList())
                .season();
    }

    /** Orders of a season's fields, some of which go without extract where that is allowed. */
    public static PlantingOrders orders(Season season, List<List<String>> lists) {
        Random random = new Random(lists.hashCode());
        return season.goals().untreatedDays().isEmpty()
                ? PlantingOrders.withExtract(lists)
                : new PlantingOrders(
                        lists,
                        lists.stream()
                                .flatMap(List::stream)
                                .filter(field -> random.nextInt(4) == 0 && season.mayGoWithout(season.field(field)))
                                .collect(Collectors.toSet()));
    }

    /** The season with a place for each lot, and rigs that hold a batch, three or ten. */
    public static Season withPlacesOfLots(Season season, Random random) {
        List<String> places = PlaceIndex.of(season).ids();
        return season.change()
                .compost(season.compost().stream()
                        .map(lot -> lot.withAt(Optional.of(places.get(random.nextInt(places.size())))))
                        .toList())
                .rigs(season.rigs().stream()
                        .map(rig -> withCompostLoad(rig, random))
                        .toList())
                .season();
    }

    private static Rig withCompostLoad(Rig rig, Random random) {
        double holdsKg = rig.batchCompostKg() * (1 + 2 * random.nextInt(2));
        RigChange change = rig.change().compostLoadingMinPerKg(random.nextBoolean() ? 0.1 : 1.5);
        return switch (random.nextInt(4)) {
            case 0 -> change.rig();
            case 1 ->
                change.payloadKg(OptionalDouble.of(rig.nurseTankL() + 1_000 + holdsKg))
                        .emptyWeightKg(OptionalDouble.of(1_000))
                        .rig();
            default -> change.compostLoad(OptionalDouble.of(holdsKg)).rig();
        };
    }

    /** The season in which people said of some fields that their ground is fit, or unfit for a while or for good. */
    public static Season withJudgedGround(Season season, long seed) {
        Random random = new Random(seed);
        return season.change()
                .fields(season.fields().stream()
                        .map(field -> field.change()
                                .judged(random.ints(random.nextInt(3), 0, season.days() * 24 * 60)
                                        .mapToObj(minute ->
                                                judgement(season, season.start().plusMinutes(minute), random))
                                        .toList())
                                .field())
                        .toList())
                .season();
    }

    /** The season in which every third field is fixed to a planter, a day or both, as it may be. */
    public static Season withFixedFields(Season season, long seed) {
        Random random = new Random(seed);
        return season.change()
                .fields(season.fields().stream()
                        .map(field -> random.nextInt(3) > 0
                                ? field
                                : field.change()
                                        .fixed(fixed(season, field, random))
                                        .field())
                        .toList())
                .season();
    }

    private static Fixed fixed(Season season, Field field, Random random) {
        List<String> planters = season.applicators().stream()
                .filter(field::allows)
                .map(Applicator::id)
                .toList();
        List<LocalDate> days = season.first()
                .datesUntil(season.last().plusDays(1))
                .filter(day -> !season.closed().contains(day)
                        && !day.isBefore(field.window().first()))
                .toList();
        return new Fixed(
                random.nextBoolean() && !planters.isEmpty()
                        ? Optional.of(planters.get(random.nextInt(planters.size())))
                        : Optional.empty(),
                random.nextBoolean() && !days.isEmpty()
                        ? Optional.of(days.get(random.nextInt(days.size())))
                        : Optional.empty());
    }

    /** What somebody says at a moment, at random. */
    public static Judgement judgement(Season season, LocalDateTime said, Random random) {
        LocalDateTime until = random.nextInt(5) == 0 ? season.end() : said.plusMinutes(random.nextInt(5_000));
        return random.nextBoolean()
                ? Judgement.fit(said)
                : new Judgement(said, until.isBefore(season.end()) ? until : season.end());
    }

    /** The season's fields dealt to planters that may plant them, in an order of its own; some are left out. */
    public static List<List<String>> lists(Season season, long seed) {
        Random random = new Random(seed);
        List<List<String>> lists = new ArrayList<>();
        season.applicators().forEach(planter -> lists.add(new ArrayList<>()));
        for (Field field : season.fields()) {
            int p = random.nextInt(season.applicators().size());
            if (field.allows(season.applicators().get(p))) {
                List<String> list = lists.get(p);
                list.add(random.nextInt(list.size() + 1), field.id());
            }
        }
        return lists;
    }

    private Season make() {
        Season season = season();
        return takingTheirTime ? takingTheirTime(season) : season;
    }

    private Season takingTheirTime(Season season) {
        return season.change()
                .applicators(season.applicators().stream()
                        .map(planter -> ((Planter) planter)
                                .change()
                                .overtimeS(oneOf(0, 900, 7200))
                                .flushS(oneOf(0, 300, 1200, 5000))
                                .planter())
                        .toList())
                .waterPoints(season.waterPoints().stream()
                        .map(point -> point.change().hookUpS(oneOf(0, 100, 360)).waterPoint())
                        .toList())
                .rigs(season.rigs().stream()
                        .map(rig -> rig.change()
                                .setUpS(oneOf(0, 600, 1800, 7200))
                                .closeUpS(oneOf(0, 300, 1200, 5400))
                                .rig())
                        .toList())
                .season();
    }

    private Season season() {
        LocalDate last = first.plusDays(between(4, 15));
        List<Recipe> recipes = several(
                2,
                i -> new Recipe(
                        "recipe" + i,
                        between(80, 300),
                        oneOf(1.5, 2.0, 2.2417, 4.0),
                        oneOf(1800, 7200, 4 * 3600, 20 * 3600),
                        i == 0 ? OptionalInt.empty() : OptionalInt.of(60)));
        List<Planter> planters = several(
                3,
                i -> WithDefaults.planter(
                        "P" + i,
                        between(4, 18),
                        0.762,
                        1.5 + random.nextDouble(),
                        0.5 + random.nextDouble() / 4,
                        oneOf(300.0, 1100.5, 2271.247, 5000.0),
                        oneOf(4.0, 6.7056),
                        oneOf(0, 360),
                        oneOf(0, 720),
                        place("yard" + i),
                        hours()));
        List<Field> fields = several(mostFields, i -> field(place("F" + i), last, recipes, planters));
        List<WaterPoint> waterPoints = several(
                3,
                i -> WithDefaults.waterPoint(
                        place("W" + i),
                        Optional.empty(),
                        oneOf(1.5, 2.5236, 8.0),
                        between(1, 2),
                        oneOf(WorkHours.ALWAYS, hours()),
                        random.nextBoolean()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(oneOf(1500.0, 9000.0, 34_068.7)),
                        oneOf(0, 900)));
        List<Rig> rigs = several(
                3,
                i -> WithDefaults.rig(
                        "R" + i,
                        oneOf(120.0, 151.416),
                        oneOf(9.0, 13.608),
                        oneOf(900, 1000),
                        oneOf(0, 180),
                        oneOf(800.0, 2000.0, 4542.494),
                        oneOf(1.0, 3.785),
                        oneOf(8.0, 15.6464),
                        OptionalDouble.empty(),
                        i % 2 == 0 ? OptionalDouble.of(12) : OptionalDouble.empty(),
                        oneOf(ExtractAt.values()),
                        place("shed" + i),
                        oneOf(hours(), new WorkHours(List.of(new DaySpan(5 * 3600, 21 * 3600))))));
        return new Season(
                "Random",
                first,
                last,
                zone,
                new ClosedDays(
                        random.nextBoolean() ? Set.of(DayOfWeek.SUNDAY) : Set.of(),
                        random.nextBoolean() ? Set.of(first.plusDays(between(0, 5))) : Set.of()),
                places(),
                recipes,
                fields,
                List.copyOf(planters),
                rigs,
                waterPoints,
                several(3, i -> new CompostLot("lot" + i, between(5, 400), first.plusDays(between(-5, 6)))),
                new Drying(2, 0.02, 0.05, 0.1),
                several(3, i -> new Rain(first.plusDays(between(-2, 12)), between(0, 86_399), between(0, 40))),
                Optional.empty(),
                this::metres,
                Goals.DEFAULT,
                oneOf(DisplayUnits.US, DisplayUnits.METRIC),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private Field field(String id, LocalDate last, List<Recipe> recipes, List<Planter> planters) {
        LocalDate opens = first.plusDays(Math.min(between(-3, 6), ChronoUnit.DAYS.between(first, last)));
        return WithDefaults.field(
                id,
                id,
                oneOf(0.3, 4.0, 16.187_425, 40.468_564_224) * (0.5 + random.nextDouble()),
                Optional.empty(),
                List.of(),
                "corn",
                new DateWindow(opens, opens.plusDays(between(0, 8))),
                recipes.get(random.nextInt(recipes.size())).id(),
                oneOf(Drainage.values()),
                oneOf(0.0, 0.5, 1.0, 3.0),
                random.nextInt(4) > 0
                        ? Set.of()
                        : Set.of(planters.get(random.nextInt(planters.size())).id()));
    }

    private WorkHours hours() {
        return oneOf(
                new WorkHours(List.of(new DaySpan(7 * 3600, 12 * 3600), new DaySpan(45_000, 20 * 3600))),
                new WorkHours(List.of(new DaySpan(6 * 3600, 18 * 3600))),
                new WorkHours(List.of(new DaySpan(0, 10 * 3600), new DaySpan(12 * 3600, 86_400))));
    }

    private String place(String id) {
        points.put(id, new double[] {random.nextDouble() * 12_000, random.nextDouble() * 12_000});
        return id;
    }

    private Map<String, Optional<GeoPoint>> places() {
        Map<String, Optional<GeoPoint>> places = new LinkedHashMap<>();
        points.keySet().stream()
                .filter(id -> id.startsWith("yard") || id.startsWith("shed"))
                .forEach(id -> places.put(id, Optional.of(new GeoPoint(0, 0))));
        return places;
    }

    private double metres(String from, String to) {
        double[] a = points.get(from);
        double[] b = points.get(to);
        if (a == null || b == null) {
            throw new IllegalArgumentException("no road from " + from + " to " + to);
        }
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    private <T> List<T> several(int most, IntFunction<T> make) {
        return IntStream.rangeClosed(1, between(1, most)).mapToObj(make).toList();
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    @SafeVarargs
    private <T> T oneOf(T... values) {
        return values[random.nextInt(values.length)];
    }
}

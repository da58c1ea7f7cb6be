package freshfurrow.model.read;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Crop;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Drying;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.Work;
import freshfurrow.model.season.WorkHours;
import freshfurrow.model.weather.SeasonWeather;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** The whole tree of a season file into a {@link Season}; everything wrong becomes a problem. */
final class SeasonBinder {
    static final Range LATE_WEIGHT = Range.from0(1_000, "a number from 0 to 1,000");

    private static final Range RAIN = Range.from0(2_000, "0 to 78 in (2,000 mm)");
    private static final Range DRYING = Range.from0(10, "0 to 250 d/in (10 d/mm)");
    private static final int LONGEST_SEASON_D = 400;
    /** Rules of thumb, no source: a day, two or three of drying for each inch of rain. */
    private static final Drying USUAL_DRYING = new Drying(2.54, 1 / 25.4, 2 / 25.4, 3 / 25.4);

    private final SeasonFolder folder;
    private final Problems problems;
    private final UnitsSeen units = new UnitsSeen();

    SeasonBinder(SeasonFolder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** A season, the weather record that it names, and its prices. */
    record Bound(Season season, Optional<SeasonWeather> weather, Optional<Costs> costs) {}

    /** The season; empty when there is any problem. */
    Optional<Bound> bind(Node root) {
        Keys keys = Keys.of(root, problems, units);
        if (!(root instanceof Node.Mapping)) {
            return Optional.empty();
        }
        Optional<Keys> head = keys.needed("season", "write season: {name: …, first: …, last: …, timezone: …}")
                .map(node -> Keys.of(node, problems, units));
        Optional<String> name =
                head.flatMap(season -> season.name(season.neededText("name", "Spring at the river farm")));
        Optional<LocalDate> first = head.flatMap(season -> date(season, "first", "2027-04-19"));
        Optional<LocalDate> last = head.flatMap(season -> date(season, "last", "2027-06-05"));
        Optional<ZoneId> zone = head.flatMap(season -> season.neededText("timezone", "America/Chicago")
                .flatMap(text -> Times.zone(text, season.at("timezone"), problems)));
        Optional<ClockFace> clock = head.flatMap(SeasonBinder::clock);
        head.ifPresent(season -> checkLength(season, first, last));
        head.ifPresent(Keys::refuseOthers);

        if (!keys.has("hours")) {
            keys.problem("hours", "is missing", "write working hours, like hours: [\"07:00/12:00\", \"12:30/20:00\"]");
        }
        WorkHours hours = Times.hours(keys, WorkHours.ALWAYS);
        ClosedDays closed = Times.closed(keys);
        Places places = new Places(problems, !DistanceReader.hasMatrix(keys));
        Map<String, Optional<GeoPoint>> named = new LinkedHashMap<>();
        keys.things("places", "place", false).forEach((id, place) -> {
            places.point(id, place);
            place.refuseOthers();
            named.put(id, places.at(id));
        });
        Map<String, Keys> recipeKeys = keys.things("recipes", "recipe", true);
        List<Recipe> recipes = each(recipeKeys, Machines::recipe);
        List<WaterPoint> points = each(
                keys.things("waterPoints", "water point", true), (id, own) -> Machines.waterPoint(id, own, places));
        Map<String, Keys> cropKeys = keys.things("crops", "crop", false);
        Map<String, Crop> crops = crops(cropKeys, recipeKeys.keySet());
        Set<String> windowless = new HashSet<>(cropKeys.keySet());
        windowless.removeIf(id -> cropKeys.get(id).has("window"));
        Map<String, Keys> planterKeys = keys.things("planters", "planter", !keys.has("sprayers"));
        Map<String, Keys> sprayerKeys = keys.things("sprayers", "sprayer", false);
        List<Applicator> applicators = new ArrayList<>();
        applicators.addAll(each(planterKeys, (id, own) -> Machines.planter(id, own, hours)));
        applicators.addAll(each(sprayerKeys, (id, own) -> Sprayers.sprayer(id, own, hours)));
        Map<String, Keys> applicatorKeys = new LinkedHashMap<>(planterKeys);
        sprayerKeys.forEach(applicatorKeys::putIfAbsent);
        Map<String, Keys> rigKeys = keys.things("rigs", "rig", true);
        List<Rig> rigs = each(rigKeys, (id, own) -> Machines.rig(id, own, hours));
        Map<String, Keys> lotKeys = keys.things("compost", "compost lot", true);
        List<CompostLot> compost = each(lotKeys, Machines::compostLot);
        int beforeFields = problems.count();
        List<FieldReader.FieldSource> sources = new FieldFiles(folder, problems).read(keys);
        boolean fieldsKnown = problems.count() == beforeFields;
        Map<Work, Set<String>> machineIds = Map.of(Work.PLANT, planterKeys.keySet(), Work.SPRAY, sprayerKeys.keySet());
        List<Field> fields = new FieldReader(
                        problems, units, places, crops, windowless, recipeKeys.keySet(), machineIds)
                .read(sources);
        GoalsReader goalsReader = new GoalsReader(keys);
        Goals goals = goalsReader.read();
        fields = new FixedReader(
                        machineIds,
                        first,
                        last,
                        closed,
                        compost,
                        goals.untreatedDays().isPresent())
                .read(
                        keys.things("fixed", "fixed field", false),
                        fields,
                        fieldsKnown
                                ? Optional.of(sources.stream()
                                        .map(FieldReader.FieldSource::id)
                                        .toList())
                                : Optional.empty());
        Drying drying = drying(keys);
        List<Rain> rain = rain(keys);
        Optional<Costs> costs = CostsReader.read(
                keys,
                Stream.concat(applicatorKeys.keySet().stream(), rigKeys.keySet().stream())
                        .toList());
        Optional<TimeSpread> spread = SpreadReader.read(keys);
        goals = goalsReader.judgedBy(goals, costs);
        Optional<Distances> distances = new DistanceReader(folder, problems, units).read(keys, places, fieldsKnown);
        Optional<WeatherReader.SeasonGround> ground =
                new WeatherReader(folder, problems).read(keys, places, first, last);
        keys.refuseOthers();
        refuseSharedIds(sprayerKeys, planterKeys, "planter");
        refuseSharedIds(rigKeys, planterKeys, "planter");
        refuseSharedIds(rigKeys, sprayerKeys, "sprayer");
        Parts parts = new Parts(
                first,
                last,
                closed,
                cropKeys,
                crops,
                recipes,
                sources,
                fields,
                applicatorKeys,
                applicators,
                rigKeys,
                rigs,
                lotKeys,
                compost,
                fieldsKnown);
        DisplayUnits shown = clock.map(units.choice()::withClock).orElseGet(units::choice);
        new Consistency(parts, keys, places, shown, problems).check();
        if (!problems.none()) {
            return Optional.empty();
        }
        Season season = new Season(
                name.orElseThrow(),
                first.orElseThrow(),
                last.orElseThrow(),
                zone.orElseThrow(),
                closed,
                named,
                recipes,
                fields,
                applicators,
                rigs,
                points,
                compost,
                drying,
                rain,
                ground.map(WeatherReader.SeasonGround::ground),
                distances.orElseThrow(),
                goals,
                shown,
                List.of(),
                Optional.empty(),
                spread);
        new RoomInHours(season, keys, applicatorKeys, rigKeys, lotKeys, sources, problems).check();
        return problems.none()
                ? Optional.of(new Bound(season, ground.map(WeatherReader.SeasonGround::weather), costs))
                : Optional.empty();
    }

    private static void refuseSharedIds(Map<String, Keys> machines, Map<String, Keys> others, String noun) {
        machines.forEach((id, keys) -> {
            if (others.containsKey(id)) {
                keys.problems()
                        .add(
                                keys.place(),
                                "the id " + id + " is a " + noun + "'s already",
                                "give every machine its own id");
            }
        });
    }

    private static <T> List<T> each(Map<String, Keys> things, BiFunction<String, Keys, Optional<T>> read) {
        List<T> all = new ArrayList<>();
        things.forEach((id, keys) -> read.apply(id, keys).ifPresent(all::add));
        return all;
    }

    private Optional<LocalDate> date(Keys keys, String key, String example) {
        return keys.needed(key, "write a date, like " + key + ": " + example)
                .flatMap(node -> Times.date(node, problems));
    }

    private static Optional<ClockFace> clock(Keys season) {
        Optional<String> text = season.text("clock");
        Optional<ClockFace> clock = text.flatMap(said -> Arrays.stream(ClockFace.values())
                .filter(face -> face.symbol().equals(said.toLowerCase(Locale.ROOT)))
                .findFirst());
        if (text.isPresent() && clock.isEmpty()) {
            season.problem("clock", "'" + text.get() + "' is not a clock", "write 12h or 24h");
        }
        return clock;
    }

    private static void checkLength(Keys season, Optional<LocalDate> first, Optional<LocalDate> last) {
        if (first.isEmpty() || last.isEmpty()) {
            return;
        }
        if (last.get().isBefore(first.get())) {
            season.problem("last", "the season ends before it starts", "put the earlier date in first");
        } else if (last.get().isAfter(first.get().plusDays(LONGEST_SEASON_D))) {
            season.problem(
                    "last",
                    "the season is longer than " + LONGEST_SEASON_D + " days",
                    "check the years of first and last");
        }
    }

    private Map<String, Crop> crops(Map<String, Keys> things, Set<String> recipes) {
        Map<String, Crop> crops = new LinkedHashMap<>();
        things.forEach((id, keys) -> {
            Optional<DateWindow> window = keys.node("window").flatMap(node -> Times.window(node, problems));
            Optional<String> recipe = keys.text("recipe");
            if (recipe.isPresent() && !recipes.contains(recipe.get())) {
                keys.problem(
                        "recipe", "there is no recipe " + recipe.get(), FieldReader.unknown(recipe.get(), recipes));
            }
            Optional<Double> weight = keys.number("lateWeight", LATE_WEIGHT);
            Optional<Double> extractWeight = keys.number("extractWeight", LATE_WEIGHT);
            Optional<Work> work = FieldReader.work(keys);
            keys.refuseOthers();
            crops.put(
                    id,
                    new Crop(
                            id,
                            window,
                            recipe,
                            weight.orElse(1.0),
                            extractWeight.orElse(1.0),
                            work.orElse(Work.PLANT)));
        });
        return crops;
    }

    private Drying drying(Keys season) {
        Optional<Keys> keys = season.keys("drying");
        if (keys.isEmpty()) {
            return USUAL_DRYING;
        }
        Drying drying = new Drying(
                keys.get().optionalQuantity("ignoreBelow", Kind.RAIN, RAIN).orElse(USUAL_DRYING.ignoreBelowMm()),
                keys.get().optionalQuantity("well", Kind.DRYING, DRYING).orElse(USUAL_DRYING.wellDaysPerMm()),
                keys.get().optionalQuantity("moderate", Kind.DRYING, DRYING).orElse(USUAL_DRYING.moderateDaysPerMm()),
                keys.get().optionalQuantity("poor", Kind.DRYING, DRYING).orElse(USUAL_DRYING.poorDaysPerMm()));
        keys.get().refuseOthers();
        return drying;
    }

    private List<Rain> rain(Keys season) {
        List<Rain> rain = new ArrayList<>();
        Optional<Node> node = season.node("rain");
        if (node.isPresent() && !(node.get() instanceof Node.Sequence)) {
            problems.add(
                    season.at("rain"),
                    "is not a list",
                    () -> "write - {date: 2027-05-03, amount: " + units.example(Kind.RAIN)
                            + "} on a line for each rain");
        } else if (node.isPresent() && node.get() instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                Keys keys = Keys.of(item, problems, units);
                Optional<LocalDate> date = date(keys, "date", "2027-05-03");
                Optional<Integer> from =
                        keys.text("from").flatMap(text -> Times.clock(text, keys.at("from"), problems));
                if (from.orElse(0) >= DAY_S) {
                    keys.problem("from", "is the end of the day", "write the date after it, and from: 00:00");
                }
                Optional<Double> amount = keys.quantity("amount", Kind.RAIN, RAIN);
                keys.refuseOthers();
                if (date.isPresent() && amount.isPresent()) {
                    rain.add(new Rain(date.get(), Math.min(from.orElse(0), DAY_S - 1), amount.get()));
                }
            }
        }
        return rain;
    }
}

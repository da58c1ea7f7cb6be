package freshfurrow.model.read;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.HOUR_S;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.station.StationFile;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.text.Unseen;
import freshfurrow.model.weather.GroundModel;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.Topsoil;
import freshfurrow.model.weather.YearSpans;
import freshfurrow.model.weather.record.Filling;
import freshfurrow.model.weather.record.GapFilling;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The key {@code weather}: a station's record, how its weather becomes workable ground, and the year that a plan is made for. */
final class WeatherReader {
    private static final Range YEAR = new Range(1800, 2099, "a year from 1800 to 2099", "2019");
    private static final Range LATITUDE = new Range(-90, 90, "degrees from -90 to 90", "41.2");
    private static final Range COVER = new Range(0, 1, "a share from 0 to 1", "0.7");
    private static final Range RAINED_OFF = Range.between(0.1, 500, "0.004 to 19 in (0.1 to 500 mm)");
    private static final Range LIMIT = new Range(0.3, 1.5, "a share from 0.3 to 1.5", "0.9");
    private static final Range CURVE_NUMBER = new Range(30, 100, "a curve number from 30 to 100", "82");
    private static final Range DRAINS = Range.between(HOUR_S, 60 * DAY_S, "1 h to 60 d");
    private static final int LONGEST_ABOUT = 120;

    private final SeasonFolder folder;
    private final Problems problems;

    WeatherReader(SeasonFolder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** What a season knows of weather: the record, and the ground of the year that it is planned for. */
    record SeasonGround(SeasonWeather weather, GroundRecord ground) {}

    /** Empty when the season names no record, or when anything is wrong with it. */
    Optional<SeasonGround> read(Keys season, Places places, Optional<LocalDate> first, Optional<LocalDate> last) {
        Optional<Keys> keys = season.keys("weather");
        if (keys.isEmpty()) {
            return Optional.empty();
        }
        Keys own = keys.get();
        int before = problems.count();
        Optional<Node> file = own.needed("file", "name a station's table, like file: station.csv");
        Optional<Integer> year = year(own);
        String about = about(own);
        GroundModel model = model(own, places);
        own.refuseOthers();
        if (file.isEmpty() || first.isEmpty() || last.isEmpty() || problems.count() > before) {
            return Optional.empty();
        }
        if (!(file.get() instanceof Node.Text name)) {
            problems.add(file.get().place(), "is not a file name", "name a station's table, like file: station.csv");
            return Optional.empty();
        }
        return record(name, model.latitudeDeg(), first.get(), last.get())
                .map(filled -> new SeasonWeather(name.text(), about, filled.record(), filled.fillings(), model))
                .flatMap(weather -> ground(own, weather, year, first.get(), last.get())
                        .map(ground -> new SeasonGround(weather, ground)));
    }

    private static Optional<Integer> year(Keys own) {
        Optional<Double> year = own.number("year", YEAR);
        if (year.isPresent() && year.get() % 1 != 0) {
            own.problem("year", "is not a whole year", "write it like year: 2019");
            return Optional.empty();
        }
        return year.map(Double::intValue);
    }

    private static String about(Keys own) {
        String about = own.text("about").orElse("").strip();
        if (about.length() > LONGEST_ABOUT) {
            own.problem("about", "is longer than " + LONGEST_ABOUT + " letters", "shorten it");
        } else if (Unseen.isIn(about)) {
            own.problem("about", "contains an invisible character", "leave it out");
        }
        return about;
    }

    private GroundModel model(Keys own, Places places) {
        Map<Drainage, Topsoil> topsoils = new EnumMap<>(Drainage.class);
        for (Drainage drainage : Drainage.values()) {
            Topsoil usual = Topsoil.usual(drainage);
            topsoils.put(
                    drainage,
                    own.keys(drainage.name().toLowerCase(Locale.ROOT))
                            .map(keys -> topsoil(keys, usual))
                            .orElse(usual));
        }
        return new GroundModel(
                latitude(own, places),
                topsoils,
                own.number("residueCover", COVER).orElse(GroundModel.USUAL_RESIDUE_COVER),
                own.optionalQuantity("rainedOff", Kind.RAIN, RAINED_OFF).orElse(GroundModel.USUAL_RAINED_OFF_MM));
    }

    private static Topsoil topsoil(Keys keys, Topsoil usual) {
        Topsoil topsoil = new Topsoil(
                usual.wiltingPointMm(),
                usual.fieldCapacityMm(),
                usual.saturationMm(),
                usual.readilyEvaporableMm(),
                keys.number("curveNumber", CURVE_NUMBER).orElse(usual.curveNumber()),
                keys.optionalQuantity("drains", Kind.TIME, DRAINS)
                        .map(seconds -> seconds / DAY_S)
                        .orElse(usual.drainageDays()),
                keys.number("workableBelow", LIMIT).orElse(usual.workableBelow()));
        keys.refuseOthers();
        return topsoil;
    }

    /** As written, or the mean of all places known; nothing else in a season tells how high the sun stands. */
    private static double latitude(Keys own, Places places) {
        Optional<Double> written = own.number("latitude", LATITUDE);
        OptionalDouble mean =
                places.points().values().stream().mapToDouble(GeoPoint::lat).average();
        if (written.isEmpty() && mean.isEmpty() && !own.has("latitude")) {
            own.problem(
                    "latitude", "is missing, and no place has coordinates", "write degrees north, like latitude: 41.2");
        }
        return written.orElse(mean.orElse(0));
    }

    private Optional<GapFilling> record(Node.Text name, double latitude, LocalDate first, LocalDate last) {
        List<FileProblem> found = new ArrayList<>();
        Optional<WeatherRecord> record = Optional.empty();
        try {
            record = StationFile.read(folder.read(name, StationFile.LARGEST_MIB), found);
        } catch (FileProblem e) {
            found.add(e);
        }
        found.forEach(problems::add);
        if (record.isEmpty()) {
            return Optional.empty();
        }
        GapFilling filled = new GapFilling(record.get());
        Place file = new Place(name.text(), 0, "");
        for (Filling gap : filled.unfilled()) {
            problems.add(
                    file,
                    gap.words() + " is not known, and no other year of the record knows it",
                    "write the figures of those days, or leave out the days around them too");
        }
        Optional<String> implausible = Plausibility.doubt(filled.record(), latitude, first, last);
        implausible.ifPresent(
                doubt -> problems.add(file, doubt, "check the units in the header: C for Celsius, F for Fahrenheit"));
        return filled.unfilled().isEmpty() && implausible.isEmpty() ? Optional.of(filled) : Optional.empty();
    }

    private Optional<GroundRecord> ground(
            Keys own, SeasonWeather weather, Optional<Integer> year, LocalDate first, LocalDate last) {
        Optional<GroundRecord> ground = weather.ground(year.orElse(first.getYear()), first, last);
        if (ground.isEmpty()) {
            List<Integer> years = weather.years(first, last);
            String known = years.isEmpty()
                    ? weather.file() + " has the season's days of no year"
                    : weather.file() + " has them for " + YearSpans.words(years);
            own.problem(
                    "year",
                    "the weather from " + first.withYear(year.orElse(first.getYear()))
                            + " on is not known to the season's end",
                    known
                            + (years.isEmpty()
                                    ? "; name a longer record"
                                    : "; name one, like year: " + years.get(years.size() - 1)));
        }
        return ground;
    }
}

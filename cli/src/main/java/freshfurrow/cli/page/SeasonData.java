package freshfurrow.cli.page;

import static freshfurrow.cli.page.Numbers.rounded;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.season.WaterPoint;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the season gives: days, units, weather, places, water points and compost. */
final class SeasonData {
    private SeasonData() {}

    static void write(ObjectNode data, Season season, Plan plan, SeasonTime time) {
        data.putObject("season")
                .put("name", season.name())
                .put("first", season.first().toString())
                .put("days", season.days())
                .put("clock", season.units().clock().symbol())
                .put("file", plan.season().file())
                .put("sha256", plan.season().sha256());
        units(data.putObject("units"), season.units());
        ArrayNode closed = data.putArray("closed");
        season.first()
                .datesUntil(season.last().plusDays(1))
                .filter(season.closed()::contains)
                .forEach(date -> closed.add(time.day(date)));
        weather(data, season, time);
        places(data, season);
        ArrayNode lots = data.putArray("lots");
        season.compostWithThatOnBoard().forEach(lot -> lots.addObject()
                .put("id", lot.id())
                .put("kg", rounded(lot.massKg()))
                .put("from", time.day(lot.from())));
    }

    private static void units(ObjectNode units, DisplayUnits shown) {
        unit(units, "area", shown.area().symbol(), shown.area().fromHectares(1))
                .put("decimals", shown.area().decimals());
        unit(units, "volume", shown.volume().symbol(), shown.volume().fromLitres(1));
        unit(units, "mass", shown.mass().symbol(), shown.mass().fromKilograms(1));
        unit(units, "distance", shown.distance().symbol(), shown.distance().fromKilometres(1));
    }

    private static ObjectNode unit(ObjectNode units, String kind, String symbol, double perSi) {
        return units.putObject(kind).put("symbol", symbol).put("perSi", perSi);
    }

    private static void weather(ObjectNode data, Season season, SeasonTime time) {
        Figures figures = new Figures(season.units());
        ArrayNode rain = data.putArray("rain");
        for (Rain shower : season.rain()) {
            LocalDate date = shower.date();
            if (!date.isBefore(season.first()) && !date.isAfter(season.last())) {
                rain.addObject().put("at", time.seconds(shower.start())).put("depth", figures.rain(shower.mm()));
            }
        }
        season.ground().ifPresent(ground -> ground.rainMm().forEach((date, mm) -> rain.addObject()
                .put("at", time.midnight(date))
                .put("depth", figures.rain(mm))
                .put("daily", true)));
        GroundData.put(data, season);
    }

    static String name(Drainage drainage) {
        return drainage.name().toLowerCase(Locale.ROOT);
    }

    /** In the order of {@link PlacePositions}, after the fields. */
    private static void places(ObjectNode data, Season season) {
        ArrayNode points = data.putArray("points");
        for (WaterPoint point : season.waterPoints()) {
            ObjectNode node = points.addObject().put("id", point.id());
            at(node, point.at());
            point.dailyLimitL().ifPresent(limit -> node.put("limitL", rounded(limit)));
        }
        ArrayNode places = data.putArray("places");
        PlaceIndex.of(season).others().forEach((id, at) -> at(places.addObject().put("id", id), at));
    }

    static void at(ObjectNode node, Optional<GeoPoint> at) {
        at.ifPresent(point -> coordinates(node.putArray("at"), point));
    }

    static void coordinates(ArrayNode array, GeoPoint point) {
        array.add(rounded(point.lon())).add(rounded(point.lat()));
    }

    static void rings(ObjectNode node, List<List<GeoPoint>> outline) {
        if (!outline.isEmpty()) {
            ArrayNode rings = node.putArray("rings");
            for (List<GeoPoint> ring : outline) {
                ArrayNode points = rings.addArray();
                ring.forEach(point -> coordinates(points.addArray(), point));
            }
        }
    }
}

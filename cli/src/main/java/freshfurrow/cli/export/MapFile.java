package freshfurrow.cli.export;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.day.FieldWork;
import freshfurrow.cli.text.FieldDone;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.Work;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A plan as a map of GeoJSON (RFC 7946): fields with what is done with them, water points and places. */
public final class MapFile {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final int DECIMALS = 3;

    private final Season season;
    private final AreaUnit unit;
    private final Told told;

    private MapFile(Season season, Plan plan) {
        this.season = season;
        unit = plan.season().units().area();
        told = Told.of(season, plan);
    }

    /**
     * The map as the text of a file, a feature a line. A field without a place has no geometry, as a season may be planned
     * from a table of distances alone.
     */
    public static String text(Season season, Plan plan) {
        return new MapFile(season, plan).write(plan);
    }

    private String write(Plan plan) {
        StringBuilder text = new StringBuilder("{\"type\": \"FeatureCollection\", \"features\": [");
        String separator = "\n";
        for (ObjectNode feature : features(plan)) {
            text.append(separator).append(json(feature));
            separator = ",\n";
        }
        return text.append("\n]}\n").toString();
    }

    private List<ObjectNode> features(Plan plan) {
        List<ObjectNode> features = new ArrayList<>();
        FieldWork.of(season, plan).forEach(work -> features.add(field(work)));
        for (WaterPoint point : season.waterPoints()) {
            features.add(feature(point.id(), "water point", point.at().map(MapFile::point)));
        }
        PlaceIndex.of(season).others().forEach((id, at) -> features.add(feature(id, "place", at.map(MapFile::point))));
        return features;
    }

    private ObjectNode field(FieldWork work) {
        Field field = work.field();
        ObjectNode feature = feature(
                field.id(),
                "field",
                field.outline().isEmpty()
                        ? field.at().map(MapFile::point)
                        : Optional.of(Rings.geometry(field.outline())));
        ObjectNode properties = (ObjectNode) feature.get("properties");
        properties
                .put("name", field.name())
                .put("crop", field.crop())
                .put("areaUnit", unit.symbol())
                .put("area", area(field.areaHa()))
                .put("windowFirst", field.window().first().toString())
                .put("windowLast", field.window().last().toString());
        if (field.work() != Work.PLANT) {
            properties.put("work", field.work().key());
        }
        if (told.either()) {
            properties.put("done", FieldDone.words(work));
        }
        if (told.withoutExtract()) {
            properties
                    .put("withExtract", area(work.withExtractHa()))
                    .put("withoutExtract", area(work.withoutExtractHa()));
        }
        work.start()
                .ifPresent(
                        start -> properties.put("planted", start.toLocalDate().toString()));
        work.end().ifPresent(end -> properties.put("finished", DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(end)));
        work.daysToSpare().ifPresent(days -> properties.put("daysToSpare", days).put("lateDays", Math.max(0, -days)));
        properties.set("planters", strings(work.planters()));
        properties.set("loads", strings(work.loads()));
        work.unserved()
                .ifPresent(left ->
                        properties.put("notPlanted", area(left.areaHa())).put("whyNotPlanted", left.why()));
        return feature;
    }

    private static ObjectNode feature(String id, String kind, Optional<ObjectNode> geometry) {
        ObjectNode feature = JSON.objectNode().put("type", "Feature").put("id", id);
        feature.set("geometry", geometry.isPresent() ? geometry.get() : JSON.nullNode());
        feature.putObject("properties").put("id", id).put("kind", kind);
        return feature;
    }

    private static ObjectNode point(GeoPoint point) {
        ObjectNode geometry = JSON.objectNode().put("type", "Point");
        geometry.set("coordinates", Rings.position(point));
        return geometry;
    }

    private BigDecimal area(double hectares) {
        return BigDecimal.valueOf(unit.fromHectares(hectares)).setScale(DECIMALS, RoundingMode.HALF_UP);
    }

    private static ArrayNode strings(List<String> texts) {
        ArrayNode list = JSON.arrayNode();
        texts.forEach(list::add);
        return list;
    }

    private static String json(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}

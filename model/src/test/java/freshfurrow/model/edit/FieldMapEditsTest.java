package freshfurrow.model.edit;

import static freshfurrow.model.edit.EditedFile.append;
import static freshfurrow.model.edit.EditedFile.edited;
import static freshfurrow.model.edit.EditedFile.remove;
import static freshfurrow.model.edit.EditedFile.season;
import static freshfurrow.model.edit.EditedFile.set;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Edits of fields in GeoJSON files (RFC 7946), with the text before and after each worked out by hand. */
final class FieldMapEditsTest {
    private static final String RING = "[[[2.3, 48.5], [2.4, 48.5], [2.4, 48.6], [2.3, 48.5]]]";
    private static final String A =
            "{\"type\": \"Feature\", \"properties\": {\"id\": \"A\", \"crop\": \"maize\", \"lateWeight\": 1.0},"
                    + " \"geometry\": {\"type\": \"Polygon\", \"coordinates\": " + RING + "}}";
    private static final String B = "{\"type\":\"Feature\",\"id\":\"B\",\"properties\":null,\"geometry\":null}";
    private static final String MAP =
            "{\"type\": \"FeatureCollection\", \"features\": [\n\t" + A + ",\n\t" + B + "\n]}\n";

    @Test
    void aPropertyIsReplacedAsWhatItWas() {
        assertThat(edit(set("fields.A.crop", "rye"))).isEqualTo(MAP.replace("maize", "rye"));
        assertThat(edit(set("fields.A.crop", "12"))).isEqualTo(MAP.replace("maize", "12"));
        assertThat(edit(set("fields.A.lateWeight", "0.5"))).isEqualTo(MAP.replace("1.0", "0.5"));
        assertThat(edit(set("fields.A.lateWeight", "08"))).isEqualTo(MAP.replace("1.0", "\"08\""));
    }

    @Test
    void aMissingPropertyComesLast() {
        assertThat(edit(set("fields.A.area", "40 ha"))).isEqualTo(MAP.replace("1.0}", "1.0, \"area\": \"40 ha\"}"));
        assertThat(edit(set("fields.B.name", "a \"b\"")))
                .isEqualTo(MAP.replace("\"properties\":null", "\"properties\":{\"name\": \"a \\\"b\\\"\"}"));
    }

    @Test
    void aPropertyGoesWithItsComma() {
        assertThat(edit(remove("fields.A.crop"))).isEqualTo(MAP.replace(" \"crop\": \"maize\",", ""));
        assertThat(edit(remove("fields.A.lateWeight"))).isEqualTo(MAP.replace(", \"lateWeight\": 1.0", ""));
    }

    @Test
    void aFieldGoesWithItsFeature() {
        assertThat(edit(remove("fields.A"))).isEqualTo(MAP.replace("\t" + A + ",\n", ""));
        assertThat(edit(remove("fields.B"))).isEqualTo(MAP.replace(A + ",\n\t" + B + "\n", A + "\n"));
    }

    @Test
    void aNewFieldIsAFeatureBehindTheLast() {
        Map<String, Value> keys = new LinkedHashMap<>();
        keys.put("crop", Value.of("maize"));
        keys.put("geometry", polygon());
        assertThat(edit(set("fields.C", new Value.Entries(keys))))
                .isEqualTo(MAP.replace(
                        B,
                        B + ",\n {\"type\": \"Feature\", \"properties\": {\"id\": \"C\", \"crop\": \"maize\"},"
                                + " \"geometry\": {\"type\": \"Polygon\", \"coordinates\": " + RING + "}}"));
    }

    @Test
    void idsAreChangedWhereTheyStand() {
        assertThat(edit(set("fields.A.id", "A2"))).isEqualTo(MAP.replace("\"A\"", "\"A2\""));
        assertThat(edit(set("fields.B.id", "B2"))).isEqualTo(MAP.replace("\"B\"", "\"B2\""));
    }

    @Test
    void aListOfMachinesGrows() {
        String one = MAP.replace("\"maize\"", "\"maize\", \"planters\": \"P1\"");
        assertThat(edited("f.geojson", one, append("fields.A.planters", "P2")))
                .isEqualTo(one.replace("\"P1\"", "[\"P1\", \"P2\"]"));
    }

    @Test
    void fieldsAreShownAsIfTheyStoodInTheSeasonFile() {
        assertThat(season("f.geojson", MAP).tree().get("fields").toString())
                .startsWith("{A={crop=maize, lateWeight=1.0, geometry={type=Polygon, coordinates=[[[2.3, 48.5],")
                .endsWith("B={}}");
    }

    private static String edit(Edit edit) {
        return edited("f.geojson", MAP, edit);
    }

    private static Value polygon() {
        Value ring = new Value.Items(List.of(
                Value.list("2.3", "48.5"),
                Value.list("2.4", "48.5"),
                Value.list("2.4", "48.6"),
                Value.list("2.3", "48.5")));
        Map<String, Value> polygon = new LinkedHashMap<>();
        polygon.put("type", Value.of("Polygon"));
        polygon.put("coordinates", new Value.Items(List.of(ring)));
        return new Value.Entries(polygon);
    }
}

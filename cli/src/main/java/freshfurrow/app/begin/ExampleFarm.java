package freshfurrow.app.begin;

import java.util.List;
import java.util.Map;

/** An invented farm to change into one's own: all defaults, a few invented fields. */
public final class ExampleFarm {
    private ExampleFarm() {}

    /** Its answers. */
    public static Answers in(UnitSystem units) {
        return units == UnitSystem.US ? us() : metric();
    }

    private static Answers us() {
        return farm(
                UnitSystem.US,
                "41.0, -97.0",
                "41.01, -97.02",
                List.of(
                        row("N40", "North forty", "40", "41.02", "-97.01", "corn"),
                        row("S80", "South eighty", "80", "40.98", "-97.0", "corn"),
                        row("E60", "East slope", "60", "41.003", "-96.962", "beans")));
    }

    private static Answers metric() {
        return farm(
                UnitSystem.METRIC,
                "48.6, 2.3",
                "48.612, 2.318",
                List.of(
                        row("N16", "North piece", "16", "48.62", "2.29", "maize"),
                        row("S30", "South piece", "30", "48.585", "2.3", "maize"),
                        row("E24", "East slope", "24", "48.603", "2.34", "sunflower")));
    }

    private static Answers farm(UnitSystem units, String yard, String well, List<FieldRow> rows) {
        Map<Section, List<Entry>> entries = Map.of(
                Section.PLACES, List.of(new Entry("", Map.of("at", yard))),
                Section.WATER, List.of(new Entry("", Map.of("at", well))));
        return new Answers(units, entries, GivenFields.table(rows), true);
    }

    private static FieldRow row(String id, String name, String area, String lat, String lon, String crop) {
        return new FieldRow(id, name, area, lat, lon, crop, "");
    }
}

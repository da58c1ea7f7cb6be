package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.WrittenQuantity;
import freshfurrow.model.read.FieldReader.FieldSource;
import freshfurrow.model.read.tree.CsvTable;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.read.tree.TreeReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Fields from a map in the season file, from a CSV file or from a GeoJSON file, all brought to the same form. */
final class FieldFiles {
    static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "area",
            "lat",
            "lon",
            "crop",
            "window",
            "recipe",
            "drainage",
            "lateWeight",
            "extractWeight",
            "work",
            "planters",
            "sprayers");

    /** Which are not read each time, as nobody could edit their fields. */
    private static final List<String> OTHER_MAPS = List.of(".shp", ".kml", ".kmz", ".zip");

    /** Of which a plan is still found, written and shown in less than a minute, with the memory of an ordinary machine. */
    private static final int MOST_FIELDS = 10_000;

    private final SeasonFolder folder;
    private final Problems problems;

    FieldFiles(SeasonFolder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    List<FieldSource> read(Keys season) {
        Optional<Node> node = season.needed("fields", "name a file, like fields: fields.csv, or write a map of fields");
        if (node.isEmpty()) {
            return List.of();
        }
        int before = problems.count();
        List<FieldSource> sources = node.get() instanceof Node.Text text ? file(text) : map(node.get());
        if (sources.isEmpty() && problems.count() == before) {
            season.problem("fields", "there is no field", "write at least one field");
        }
        if (sources.size() > MOST_FIELDS) {
            problems.add(
                    node.get() instanceof Node.Text name
                            ? new Place(name.text(), 0, "")
                            : node.get().place(),
                    String.format(
                            Locale.ROOT,
                            "has %,d fields, more than the %,d that are planned",
                            sources.size(),
                            MOST_FIELDS),
                    "split them into several seasons, by machines");
            return List.of();
        }
        return sources;
    }

    private List<FieldSource> map(Node node) {
        List<FieldSource> sources = new ArrayList<>();
        if (!(node instanceof Node.Mapping mapping)) {
            problems.add(
                    node.place(),
                    "is " + node.noun() + " where a file name or a map of fields belongs",
                    "write N40: {…}");
            return sources;
        }
        mapping.entries().forEach((id, keys) -> {
            Keys.checkId(id, keys.place(), problems);
            sources.add(new FieldSource(id, keys, Optional.empty()));
        });
        return sources;
    }

    private List<FieldSource> file(Node.Text name) {
        String lower = name.text().toLowerCase(Locale.ROOT);
        try {
            if (lower.endsWith(".csv")) {
                return table(CsvTable.read(folder.read(name, SeasonFolder.SEASON_MIB)));
            }
            if (lower.endsWith(".geojson") || lower.endsWith(".json")) {
                TextFile file = folder.read(name, SeasonFolder.MAP_MIB);
                return new GeoJsonFields(problems).read(TreeReader.json(file));
            }
            boolean otherMap = OTHER_MAPS.stream().anyMatch(lower::endsWith);
            problems.add(
                    name.place(),
                    "'" + name.text() + "' is not a file of fields",
                    otherMap
                            ? "make one of it with 'freshfurrow import " + name.text() + "', and name fields.geojson"
                            : "name a .csv or .geojson file");
        } catch (FileProblem e) {
            problems.add(e);
        }
        return List.of();
    }

    /** One problem for a column whose unit is missing or wrong, rather than one a row. */
    static void checkUnit(CsvTable table, String column, Kind kind) throws FileProblem {
        String unit = table.unit(column);
        Place header = new Place(table.place().file(), table.place().line(), column);
        String remedy = "put a unit in the header, like " + column + " ("
                + kind.symbols().get(0) + ")";
        if (!unit.isEmpty() && !kind.has(unit)) {
            throw new FileProblem(
                    header,
                    unit + " is not a unit of " + kind.noun(),
                    "use one of " + String.join(", ", kind.symbols()));
        }
        boolean allBare = table.rows().stream()
                .map(row -> row.entries().get(column))
                .allMatch(cell -> cell instanceof Node.Text text
                        && WrittenQuantity.parse(text.text())
                                .filter(written -> written.unit().isEmpty())
                                .isPresent());
        if (unit.isEmpty() && allBare && !table.rows().isEmpty()) {
            throw new FileProblem(header, "none of the figures has a unit", remedy);
        }
    }

    private List<FieldSource> table(CsvTable table) throws FileProblem {
        for (String needed : List.of("id", "area", "crop")) {
            if (!table.columns().contains(needed)) {
                throw new FileProblem(
                        table.place(),
                        "has no column " + needed,
                        "start it with a header row like id,name,area (ac),lat,lon,crop");
            }
        }
        checkUnit(table, "area", Kind.AREA);
        for (String column : table.columns()) {
            if (!COLUMNS.contains(column)) {
                problems.add(
                        table.place(),
                        "the column '" + column + "' is not known",
                        Nearest.to(column, COLUMNS)
                                .map(nearest -> "did you mean " + nearest + "?")
                                .orElse("known are " + String.join(", ", COLUMNS)));
            }
        }
        List<FieldSource> sources = new ArrayList<>();
        for (Node.Mapping row : table.rows()) {
            Map<String, Node> cells = new LinkedHashMap<>(row.entries());
            cells.keySet().retainAll(COLUMNS);
            Node id = cells.remove("id");
            if (id instanceof Node.Text text) {
                Keys.checkId(text.text(), text.place(), problems);
                sources.add(new FieldSource(text.text(), new Node.Mapping(row.place(), cells), Optional.empty()));
            } else {
                problems.add(row.place(), "the row has no id", "give every field an id");
            }
        }
        return sources;
    }
}

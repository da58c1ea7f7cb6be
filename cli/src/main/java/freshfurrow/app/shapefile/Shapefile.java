package freshfurrow.app.shapefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import freshfurrow.app.begin.FieldRow;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Heading;
import freshfurrow.app.begin.UnusableMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * The fields of a shapefile.
 *
 * @param fields each polygon with what the table tells of it
 * @param said what was taken for what, a sentence each
 */
public record Shapefile(GivenFields fields, List<String> said) {
    public Shapefile {
        said = List.copyOf(said);
    }

    /**
     * Reads the parts of a shapefile.
     *
     * @param shp its shapes
     * @param dbf its table
     * @param cpg the name of the table's character set
     * @param prj its projection, as well-known text
     * @throws UnusableMap when one of them is broken, or they do not belong together
     */
    public static Shapefile read(byte[] shp, Optional<byte[]> dbf, Optional<String> cpg, Optional<String> prj)
            throws UnusableMap {
        List<List<Coordinate[]>> shapes = ShpFile.read(shp);
        if (shapes.stream().allMatch(List::isEmpty)) {
            throw new UnusableMap("The shapefile has no polygon in it.");
        }
        Optional<DbfFile> table = dbf.isPresent() ? Optional.of(DbfFile.read(dbf.get(), cpg)) : Optional.empty();
        if (table.isPresent() && table.get().rows().size() != shapes.size()) {
            throw new UnusableMap("The table of the shapefile (.dbf) has "
                    + table.get().rows().size() + " rows for " + shapes.size()
                    + " shapes: they are not of one shapefile. Save it again.");
        }
        MapProjection projection = MapProjection.of(prj, shapes);
        List<String> said = new ArrayList<>(List.of(projection.said()));
        table.ifPresentOrElse(
                columns -> said.add(columns.said()),
                () -> said.add("Without a table (.dbf) beside it, fields have no names."));
        List<FieldRow> rows = new ArrayList<>();
        List<JsonNode> geometries = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            List<Coordinate[]> rings = shapes.get(i);
            if (!rings.isEmpty() && !(table.isPresent() && table.get().isDeleted(i))) {
                rows.add(row(table, i));
                geometries.add(RingGeometry.of(projection.degrees(rings), JsonNodeFactory.instance));
            }
        }
        return new Shapefile(new GivenFields(rows, Optional.of(geometries)), said);
    }

    private static FieldRow row(Optional<DbfFile> table, int i) {
        return new FieldRow(
                cell(table, i, Heading.ID),
                cell(table, i, Heading.NAME),
                "",
                "",
                "",
                cell(table, i, Heading.CROP),
                cell(table, i, Heading.DRAINAGE));
    }

    private static String cell(Optional<DbfFile> table, int row, Heading heading) {
        return table.map(columns -> columns.cell(row, heading)).orElse("");
    }
}

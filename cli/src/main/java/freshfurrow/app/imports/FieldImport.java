package freshfurrow.app.imports;

import freshfurrow.app.begin.DrawnFields;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.PastedTable;
import freshfurrow.app.begin.UnusableMap;
import freshfurrow.app.shapefile.Shapefile;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Fields out of files of any of the formats: a shapefile, KML, KMZ, GeoJSON, or a table; or a zip with one of those. */
public final class FieldImport {
    private static final List<String> MAPS = List.of(".kml", ".geojson", ".json");
    private static final List<String> TABLES = List.of(".csv", ".tsv", ".txt");

    private FieldImport() {}

    /** What a file turned out to hold. */
    public sealed interface Held {
        /** What was taken for what, a sentence each. */
        List<String> said();
    }

    /** Fields of a map. */
    public record Drawn(GivenFields fields, List<String> said) implements Held {}

    /** Rows of a table, of which somebody has still to say what each column is about. */
    public record Tabular(PastedTable table, List<String> said) implements Held {}

    /**
     * Reads files that belong together.
     *
     * @param files by their names, without folders
     * @throws UnusableMap when no fields can be taken from them
     */
    public static Held read(Map<String, byte[]> files) throws UnusableMap {
        Map<String, byte[]> all = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        boolean zipped = false;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (SmallZip.isOne(file.getValue())) {
                all.putAll(SmallZip.files(file.getValue()));
                zipped = true;
            } else {
                all.put(file.getKey(), file.getValue());
            }
        }
        Optional<String> shp = only(all, List.of(".shp"), "shapefiles");
        if (shp.isPresent()) {
            return shapefile(all, shp.get());
        }
        Optional<String> map = all.containsKey("doc.kml") ? Optional.of("doc.kml") : only(all, MAPS, "maps");
        Optional<String> text = map.isPresent() ? map : only(all, TABLES, "tables");
        if (text.isEmpty() && (zipped || all.size() != 1)) {
            throw new UnusableMap("There is no shapefile (.shp), KML, GeoJSON or CSV file in it.");
        }
        return text(all.get(text.orElseGet(() -> all.keySet().iterator().next())));
    }

    private static Held text(byte[] content) throws UnusableMap {
        List<String> said = new ArrayList<>();
        String text = decoded(content, said);
        if (DrawnFields.isMap(text)) {
            return new Drawn(DrawnFields.read(text), said);
        }
        if (text.indexOf('\0') >= 0) {
            throw new UnusableMap("That is no shapefile, KML, KMZ, GeoJSON or CSV file.");
        }
        PastedTable table = PastedTable.readFile(text)
                .orElseThrow(() -> new UnusableMap("That is not a table with a field in it, and no map either."));
        return new Tabular(table, said);
    }

    private static Held shapefile(Map<String, byte[]> files, String shp) throws UnusableMap {
        String base = shp.substring(0, shp.length() - ".shp".length());
        Optional<String> prj = Optional.ofNullable(files.get(base + ".prj")).map(FieldImport::plain);
        Optional<String> cpg = Optional.ofNullable(files.get(base + ".cpg")).map(FieldImport::plain);
        Shapefile read = Shapefile.read(files.get(shp), Optional.ofNullable(files.get(base + ".dbf")), cpg, prj);
        return new Drawn(read.fields(), read.said());
    }

    private static Optional<String> only(Map<String, byte[]> files, List<String> endings, String noun)
            throws UnusableMap {
        List<String> found = files.keySet().stream()
                .filter(name -> endings.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith))
                .filter(name -> !name.startsWith("."))
                .toList();
        if (found.size() > 1) {
            throw new UnusableMap(
                    "There are several " + noun + " in it: " + String.join(", ", found) + ". Take one of them.");
        }
        return found.stream().findFirst();
    }

    private static String plain(byte[] content) {
        return new String(content, StandardCharsets.UTF_8);
    }

    private static String decoded(byte[] content, List<String> said) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
        } catch (CharacterCodingException e) {
            said.add("Its text is not UTF-8, and is taken as Windows-1252.");
            return new String(content, Charset.forName("windows-1252"));
        }
    }
}

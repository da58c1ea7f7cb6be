package freshfurrow.app.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.app.begin.FieldRow;
import freshfurrow.app.begin.UnusableMap;
import freshfurrow.app.shapefile.ShpBytes;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

final class FieldImportTest {
    /** A polygon as in OGC KML 2.3 (12-007r2), clause 10.8. */
    private static final String KML = """
            <?xml version="1.0" encoding="UTF-8"?>
            <kml xmlns="http://www.opengis.net/kml/2.2"><Document><Placemark><name>North</name>
            <Polygon><outerBoundaryIs><LinearRing><coordinates>
            -97.0,41.0,0 -96.99,41.0,0 -96.99,41.01,0 -97.0,41.0,0
            </coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark></Document></kml>
            """;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] zip(Map<String, byte[]> files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static List<String> names(FieldImport.Held held) {
        return ((FieldImport.Drawn) held)
                .fields().rows().stream().map(FieldRow::name).toList();
    }

    @Test
    void aKmzIsAZipOfKml() throws Exception {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("images/icon.png", new byte[] {1, 2, 3});
        files.put("doc.kml", bytes(KML));
        files.put("other.kml", bytes("<kml/>"));

        assertThat(names(FieldImport.read(Map.of("farm.kmz", zip(files))))).containsExactly("North");
        assertThat(names(FieldImport.read(Map.of("farm.kml", bytes(KML))))).containsExactly("North");
    }

    @Test
    void aShapefileIsReadFromItsPartsOrFromAZipOfThem() throws Exception {
        Map<String, byte[]> parts = Map.of(
                "Farm.SHP", ShpBytes.polygons(List.of(List.of(ShpBytes.square(-97, 41, 0.01)))),
                "farm.dbf", ShpBytes.table(List.of("NAME"), List.of(List.of("South"))),
                "farm.prj", bytes("GEOGCS[\"W\",DATUM[\"D_WGS_1984\",SPHEROID[\"W\",6378137,298.257223563]]]"));
        FieldImport.Held held = FieldImport.read(parts);

        assertThat(names(held)).containsExactly("South");
        assertThat(held.said()).contains("By the .prj file, its coordinates are of W, in degrees.");
        assertThat(FieldImport.read(Map.of("farm.zip", zip(parts)))).isEqualTo(held);
    }

    @Test
    void aTableMayBeOfWindows() throws Exception {
        byte[] table = "name;area (ha)\nSüd;4\n".getBytes(Charset.forName("windows-1252"));
        FieldImport.Tabular held = (FieldImport.Tabular) FieldImport.read(Map.of("fields.csv", table));

        assertThat(held.said()).containsExactly("Its text is not UTF-8, and is taken as Windows-1252.");
        assertThat(held.table().rows()).containsExactly(List.of("Süd", "4"));
    }

    @Test
    void aZipThatUnpacksToFarMoreIsRefused() throws Exception {
        byte[] bomb = zip(Map.of("doc.kml", new byte[70 << 20]));
        assertThat(bomb).hasSizeLessThan(100_000);
        Map<String, byte[]> many = new LinkedHashMap<>();
        for (int i = 0; i < 1_001; i++) {
            many.put("f" + i, new byte[0]);
        }

        for (byte[] zip : List.of(bomb, zip(many))) {
            assertThatThrownBy(() -> FieldImport.read(Map.of("farm.kmz", zip)))
                    .isInstanceOf(UnusableMap.class)
                    .hasMessageStartingWith("The zip holds more than 64 MiB or 1,000 files");
        }
    }

    @Test
    void aBrokenZipIsRefused() throws Exception {
        byte[] zip = zip(Map.of("doc.kml", bytes(KML)));

        assertThatThrownBy(() -> FieldImport.read(Map.of("farm.kmz", Arrays.copyOf(zip, 60))))
                .isInstanceOf(UnusableMap.class);
    }

    @Test
    void whatHoldsSeveralOrNoneIsRefused() throws Exception {
        byte[] two = zip(Map.of("a.shp", new byte[0], "b.shp", new byte[0]));
        byte[] none = zip(Map.of("readme.md", bytes("hello")));

        assertThatThrownBy(() -> FieldImport.read(Map.of("farm.zip", two)))
                .hasMessage("There are several shapefiles in it: a.shp, b.shp. Take one of them.");
        assertThatThrownBy(() -> FieldImport.read(Map.of("farm.zip", none)))
                .hasMessage("There is no shapefile (.shp), KML, GeoJSON or CSV file in it.");
        assertThatThrownBy(() -> FieldImport.read(Map.of("farm.xls", new byte[] {1, 0, 2})))
                .hasMessage("That is no shapefile, KML, KMZ, GeoJSON or CSV file.");
    }

    @Test
    void entitiesOfAKmlInAZipAreRefusedToo() throws Exception {
        String hostile = KML.replace("<kml", "<!DOCTYPE kml [<!ENTITY x SYSTEM 'file:///etc/passwd'>]><kml");

        assertThatThrownBy(() -> FieldImport.read(Map.of("farm.kmz", zip(Map.of("doc.kml", bytes(hostile))))))
                .isInstanceOf(UnusableMap.class)
                .hasMessageContaining("document type");
    }
}

package freshfurrow.roads;

import com.graphhopper.storage.Directory;
import freshfurrow.model.roads.UnusableMap;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** A file of OpenStreetMap: XML or PBF, by its name and by what it begins with. */
final class RoadFile {
    private static final long MOST_MIB = 1_024;
    private static final int MEBIBYTE = 1 << 20;

    /** A PBF file begins with the length of its first header, 13 or 14, which says OSMHeader (OpenStreetMap wiki, PBF Format). */
    private static final byte[] PBF_TYPE = {10, 9, 'O', 'S', 'M', 'H', 'e', 'a', 'd', 'e', 'r'};

    private RoadFile() {}

    /**
     * Reads it into a directory.
     *
     * @throws UnusableMap when it is no such file, or is broken
     */
    static RoadGraph imported(Path map, Directory directory) throws UnusableMap {
        // Classes that read PBF files were made by an older protobuf: a hostile map can waste time and memory, and it
        // warns of that.
        System.setProperty("com.google.protobuf.use_unsafe_pre22_gencode", "true");
        try {
            check(map);
            return RoadGraph.imported(map, directory);
        } catch (OutOfMemoryError e) {
            throw new UnusableMap("needs more memory than there is", "take a map of the counties around only");
        } catch (IOException | XMLStreamException | RuntimeException | AssertionError | StackOverflowError e) {
            throw new UnusableMap(
                    "cannot be read as a map of OpenStreetMap",
                    "save it again, as .osm or .osm.pbf, with the roads of the counties around");
        }
    }

    private static void check(Path map) throws UnusableMap, IOException, XMLStreamException {
        if (Files.size(map) > MOST_MIB * MEBIBYTE) {
            throw new UnusableMap("is more than 1 GiB", "take a map of the counties around only");
        }
        String name = String.valueOf(map.getFileName()).toLowerCase(Locale.ROOT);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(map))) {
            if (name.endsWith(".pbf")) {
                byte[] begin = in.readNBytes(Integer.BYTES + PBF_TYPE.length);
                boolean isPbf = begin.length == Integer.BYTES + PBF_TYPE.length
                        && Arrays.equals(begin, Integer.BYTES, begin.length, PBF_TYPE, 0, PBF_TYPE.length);
                if (!isPbf) {
                    throw new IOException("no PBF");
                }
            } else if (name.endsWith(".osm")) {
                checkXml(in);
            } else {
                throw new UnusableMap("is neither .osm nor .osm.pbf", "save the map as one of the two");
            }
        }
    }

    /** Declares no document type, and so no entities, which would be taken from elsewhere or grow without bound. */
    private static void checkXml(InputStream in) throws IOException, XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLStreamReader xml = factory.createXMLStreamReader(in);
        int event = xml.next();
        while (event == XMLStreamConstants.COMMENT
                || event == XMLStreamConstants.PROCESSING_INSTRUCTION
                || event == XMLStreamConstants.SPACE) {
            event = xml.next();
        }
        if (event != XMLStreamConstants.START_ELEMENT || !xml.getLocalName().equals("osm")) {
            throw new IOException("no OpenStreetMap XML");
        }
    }
}

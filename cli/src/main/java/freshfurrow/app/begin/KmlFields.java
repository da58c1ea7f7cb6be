package freshfurrow.app.begin;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Fields drawn on a map, as a KML file of any program (OGC KML 2.3, 12-007r2): placemarks with polygons, each a field. Whatever else
 * stands in the file is passed over. A document type is refused, and with it all entities that a file brings along: nothing but the text
 * itself is read.
 */
final class KmlFields {
    private static final String REFUSED_TYPE =
            "The KML file has a document type declaration, which no map needs and which is not read. Save it again as plain KML.";

    private final XMLStreamReader xml;
    private final List<FieldRow> rows = new ArrayList<>();
    private final List<JsonNode> shapes = new ArrayList<>();

    private KmlFields(XMLStreamReader xml) {
        this.xml = xml;
    }

    static GivenFields read(String text) throws UnusableMap {
        XMLInputFactory parsers = XMLInputFactory.newDefaultFactory();
        parsers.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        parsers.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        parsers.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        try {
            KmlFields fields = new KmlFields(parsers.createXMLStreamReader(new StringReader(text)));
            fields.readFile();
            if (fields.rows.isEmpty()) {
                throw new UnusableMap("The KML file has no placemark with a polygon in it.");
            }
            return new GivenFields(fields.rows, Optional.of(fields.shapes));
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
            throw new UnusableMap("The KML file cannot be read from line " + line
                    + " on. Save it again in the program that it comes from.");
        }
    }

    private void readFile() throws XMLStreamException, UnusableMap {
        boolean isRoot = true;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.DTD) {
                throw new UnusableMap(REFUSED_TYPE);
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (isRoot && !xml.getLocalName().equals("kml")) {
                    throw new UnusableMap("That is XML, but not KML: it begins with " + xml.getLocalName() + ".");
                }
                isRoot = false;
                if (xml.getLocalName().equals("Placemark")) {
                    readPlacemark();
                }
            }
        }
    }

    /** Its name and what is told of it, and all polygons in it, also those of a MultiGeometry. */
    private void readPlacemark() throws XMLStreamException, UnusableMap {
        String name = "";
        Map<Heading, String> told = new EnumMap<>(Heading.class);
        KmlPolygons polygons = new KmlPolygons();
        String about = "";
        for (int depth = 1; depth > 0; ) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
                continue;
            }
            if (event != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            depth++;
            switch (xml.getLocalName()) {
                case "name" -> {
                    String text = xml.getElementText().strip();
                    name = depth == 2 ? text : name; // others are of a style or a view
                    depth--;
                }
                case "Data" -> about = String.valueOf(xml.getAttributeValue(null, "name"));
                case "SimpleData" -> {
                    about = String.valueOf(xml.getAttributeValue(null, "name"));
                    tell(told, about, xml.getElementText());
                    depth--;
                }
                case "value" -> {
                    tell(told, about, xml.getElementText());
                    depth--;
                }
                case "Polygon" -> polygons.begin();
                case "outerBoundaryIs" -> polygons.outer();
                case "innerBoundaryIs" -> polygons.inner();
                case "coordinates" -> {
                    polygons.ring(xml.getElementText(), name);
                    depth--;
                }
                default -> {
                    // passed over, but for what is in it
                }
            }
        }
        polygons.geometry().ifPresent(shapes::add);
        if (shapes.size() > rows.size()) {
            rows.add(row(name, told));
        }
    }

    private static void tell(Map<Heading, String> told, String about, String text) {
        Heading.guess(about).ifPresent(heading -> told.putIfAbsent(heading, text.strip()));
    }

    private static FieldRow row(String name, Map<Heading, String> told) {
        return new FieldRow(
                told.getOrDefault(Heading.ID, ""),
                name.isEmpty() ? told.getOrDefault(Heading.NAME, "") : name,
                "",
                "",
                "",
                told.getOrDefault(Heading.CROP, ""),
                told.getOrDefault(Heading.DRAINAGE, ""));
    }
}

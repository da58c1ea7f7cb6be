package freshfurrow.roads;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An invented map of OpenStreetMap. */
final class OsmMap {
    /** A point, with tags like {@code barrier=gate}. */
    record Point(long id, double lat, double lon, Map<String, String> tags) {}

    /** A way over points, by their ids. */
    record Way(long id, List<Long> points, Map<String, String> tags) {}

    private final Map<Long, Point> points = new LinkedHashMap<>();
    private final List<Way> ways = new ArrayList<>();

    OsmMap point(long id, double lat, double lon, String... tags) {
        points.put(id, new Point(id, lat, lon, tags(tags)));
        return this;
    }

    /** A way over points, with tags like {@code highway=track}. */
    OsmMap way(List<Integer> over, String... tags) {
        ways.add(new Way(ways.size() + 1, over.stream().map(Integer::longValue).toList(), tags(tags)));
        return this;
    }

    List<Point> points() {
        return List.copyOf(points.values());
    }

    List<Way> ways() {
        return List.copyOf(ways);
    }

    private static Map<String, String> tags(String... tags) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String tag : tags) {
            String[] parts = tag.split("=", 2);
            map.put(parts[0], parts[1]);
        }
        return map;
    }

    /** As OpenStreetMap XML. */
    String xml() {
        StringBuilder xml = new StringBuilder("<?xml version='1.0' encoding='UTF-8'?>\n<osm version='0.6'>\n");
        points.values().forEach(point -> {
            xml.append("<node id='%d' lat='%s' lon='%s'>".formatted(point.id(), point.lat(), point.lon()));
            point.tags().forEach((key, value) -> xml.append(tag(key, value)));
            xml.append("</node>\n");
        });
        ways.forEach(way -> {
            xml.append("<way id='%d'>".formatted(way.id()));
            way.points().forEach(id -> xml.append("<nd ref='%d'/>".formatted(id)));
            way.tags().forEach((key, value) -> xml.append(tag(key, value)));
            xml.append("</way>\n");
        });
        return xml.append("</osm>\n").toString();
    }

    private static String tag(String key, String value) {
        return "<tag k='%s' v='%s'/>".formatted(key, value);
    }

    Path writtenTo(Path file) {
        try {
            return Files.writeString(file, xml());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

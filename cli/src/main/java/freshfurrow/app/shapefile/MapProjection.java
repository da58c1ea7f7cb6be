package freshfurrow.app.shapefile;

import freshfurrow.app.begin.UnusableMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.proj4j.BasicCoordinateTransform;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateTransform;
import org.locationtech.proj4j.Proj4jException;
import org.locationtech.proj4j.ProjCoordinate;

/** From the coordinates of a shapefile to longitude and latitude on WGS84, as computed by Proj4J. */
final class MapProjection {
    private static final double MOST_LAT = 90;
    private static final double MOST_LON = 180;
    private static final String UNKNOWN_REMEDY =
            " Save the shapefile in degrees (WGS 84, EPSG:4326), or as GeoJSON or KML.";

    private final Optional<CoordinateTransform> transform;
    private final String said;

    private MapProjection(Optional<CoordinateTransform> transform, String said) {
        this.transform = transform;
        this.said = said;
    }

    /** The one that a .prj file tells of; without one, none where the coordinates can be degrees. */
    static MapProjection of(Optional<String> prj, List<List<Coordinate[]>> shapes) throws UnusableMap {
        if (prj.isEmpty()) {
            boolean degrees = shapes.stream()
                    .flatMap(List::stream)
                    .flatMap(Arrays::stream)
                    .allMatch(MapProjection::isDegrees);
            if (!degrees) {
                throw new UnusableMap(
                        "The coordinates of the shapefile are not degrees, and no .prj file says what they are. "
                                + "Put the .prj file of the same name beside it.");
            }
            return new MapProjection(
                    Optional.empty(),
                    "There is no .prj file with it: its coordinates look like degrees of longitude and latitude, and are taken as such.");
        }
        try {
            ProjectionText text =
                    new ProjectionText(Wkt.of(prj.get().replace("\uFEFF", "").strip()));
            if (text.unknownProjection().isPresent()) {
                throw new UnusableMap("The projection of the .prj file, "
                        + text.unknownProjection().get() + ", is not known here." + UNKNOWN_REMEDY);
            }
            CRSFactory systems = new CRSFactory();
            return new MapProjection(
                    Optional.of(new BasicCoordinateTransform(
                            systems.createFromParameters("file", text.parameters()),
                            systems.createFromParameters("WGS84", "+proj=longlat +datum=WGS84 +no_defs"))),
                    text.said("the .prj file"));
        } catch (IllegalArgumentException | Proj4jException e) {
            throw new UnusableMap("The .prj file of the shapefile cannot be read." + UNKNOWN_REMEDY);
        }
    }

    String said() {
        return said;
    }

    /** The rings in degrees. */
    List<Coordinate[]> degrees(List<Coordinate[]> rings) throws UnusableMap {
        List<Coordinate[]> all = new ArrayList<>();
        for (Coordinate[] ring : rings) {
            Coordinate[] own = new Coordinate[ring.length];
            for (int i = 0; i < ring.length; i++) {
                own[i] = degrees(ring[i]);
            }
            all.add(own);
        }
        return all;
    }

    private Coordinate degrees(Coordinate point) throws UnusableMap {
        Coordinate degrees = point;
        if (transform.isPresent()) {
            try {
                ProjCoordinate moved =
                        transform.get().transform(new ProjCoordinate(point.x, point.y), new ProjCoordinate());
                degrees = new Coordinate(moved.x, moved.y);
            } catch (Proj4jException | IllegalStateException e) {
                degrees = new Coordinate(Double.NaN, Double.NaN);
            }
        }
        if (!isDegrees(degrees)) {
            throw new UnusableMap("A point of the shapefile, " + point.x + ", " + point.y
                    + ", is nowhere on earth by its .prj file. They may not be of one shapefile.");
        }
        return degrees;
    }

    private static boolean isDegrees(Coordinate point) {
        return Math.abs(point.x) <= MOST_LON && Math.abs(point.y) <= MOST_LAT;
    }
}

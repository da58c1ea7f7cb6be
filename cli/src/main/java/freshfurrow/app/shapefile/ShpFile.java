package freshfurrow.app.shapefile;

import freshfurrow.app.begin.UnusableMap;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * The main file of a shapefile (ESRI, 'ESRI Shapefile Technical Description', July 1998): a header of 100 bytes, then for each shape its
 * number and length, big-endian, and its content, little-endian. Heights and measures are left out.
 */
final class ShpFile {
    private static final int FILE_CODE = 9994;
    private static final int HEADER_BYTES = 100;
    private static final int TYPE_AT = 32;
    private static final int BOX_BYTES = 4 * Double.BYTES;
    private static final int NULL_SHAPE = 0;

    /** Polygons, those with heights, and those with measures. */
    private static final List<Integer> POLYGONS = List.of(5, 15, 25);

    private static final int LEAST_RING = 4;

    private ShpFile() {}

    /** The rings of each shape, none of a null shape. */
    static List<List<Coordinate[]>> read(byte[] bytes) throws UnusableMap {
        ByteBuffer file = ByteBuffer.wrap(bytes);
        if (bytes.length < HEADER_BYTES || file.getInt(0) != FILE_CODE) {
            throw new UnusableMap("That is not the main file of a shapefile (.shp).");
        }
        int type = file.order(ByteOrder.LITTLE_ENDIAN).getInt(TYPE_AT);
        if (!POLYGONS.contains(type)) {
            throw new UnusableMap("The shapefile holds shapes of type " + type
                    + ", such as points or lines, and fields are polygons (types 5, 15 and 25).");
        }
        List<List<Coordinate[]>> shapes = new ArrayList<>();
        file.position(HEADER_BYTES);
        try {
            while (file.hasRemaining()) {
                file.order(ByteOrder.BIG_ENDIAN).getInt();
                int contentBytes = Math.multiplyExact(file.getInt(), 2);
                ByteBuffer content = file.slice(file.position(), contentBytes).order(ByteOrder.LITTLE_ENDIAN);
                file.position(file.position() + contentBytes);
                shapes.add(rings(content, shapes.size() + 1));
            }
        } catch (BufferUnderflowException
                | IndexOutOfBoundsException
                | IllegalArgumentException
                | ArithmeticException e) {
            throw new UnusableMap("The shapefile (.shp) ends early or is broken at shape " + (shapes.size() + 1)
                    + ". Copy or save it again.");
        }
        return shapes;
    }

    private static List<Coordinate[]> rings(ByteBuffer content, int number) throws UnusableMap {
        int type = content.getInt();
        if (type == NULL_SHAPE) {
            return List.of();
        }
        if (!POLYGONS.contains(type)) {
            throw new UnusableMap("Shape " + number + " of the shapefile is no polygon.");
        }
        content.position(content.position() + BOX_BYTES);
        int parts = content.getInt();
        int points = content.getInt();
        if (parts < 1
                || points < 1
                || (long) parts * Integer.BYTES + points * 2L * Double.BYTES > content.remaining()) {
            throw new IllegalArgumentException("no room for " + parts + " parts of " + points + " points");
        }
        int[] starts = new int[parts + 1];
        for (int i = 0; i < parts; i++) {
            starts[i] = content.getInt();
        }
        starts[parts] = points;
        List<Coordinate[]> rings = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            if (starts[part] < 0 || starts[part] > starts[part + 1] || (part == 0 && starts[0] != 0)) {
                throw new IllegalArgumentException("parts out of order");
            }
            Coordinate[] ring = new Coordinate[starts[part + 1] - starts[part]];
            for (int i = 0; i < ring.length; i++) {
                ring[i] = new Coordinate(content.getDouble(), content.getDouble());
            }
            boolean closed = ring.length >= LEAST_RING && ring[0].equals2D(ring[ring.length - 1]);
            if (!closed) {
                throw new UnusableMap("A ring of shape " + number + " of the shapefile is not closed.");
            }
            rings.add(ring);
        }
        return rings;
    }
}

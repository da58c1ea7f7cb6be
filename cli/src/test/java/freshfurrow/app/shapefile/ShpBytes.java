package freshfurrow.app.shapefile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Shapefiles as bytes, by the tables of the 'ESRI Shapefile Technical Description', July 1998. */
public final class ShpBytes {
    private static final int HEADER = 100;

    private ShpBytes() {}

    /** A main file with a polygon for each list of rings; no rings make a null shape. */
    public static byte[] polygons(List<List<List<double[]>>> shapes) {
        int bytes = HEADER;
        for (List<List<double[]>> rings : shapes) {
            bytes += 8 + content(rings);
        }
        ByteBuffer file = ByteBuffer.allocate(bytes);
        // Table 1: file code 9994 at 0, length in 16-bit words at 24, both big-endian; version 1000 at 28, shape type
        // at 32, little-endian
        file.order(ByteOrder.BIG_ENDIAN).putInt(0, 9994).putInt(24, bytes / 2);
        file.order(ByteOrder.LITTLE_ENDIAN).putInt(28, 1000).putInt(32, 5);
        file.position(HEADER);
        for (int i = 0; i < shapes.size(); i++) {
            List<List<double[]>> rings = shapes.get(i);
            // Table 2: number from 1 and length in 16-bit words
            file.order(ByteOrder.BIG_ENDIAN).putInt(i + 1).putInt(content(rings) / 2);
            file.order(ByteOrder.LITTLE_ENDIAN);
            if (rings.isEmpty()) {
                file.putInt(0);
                continue;
            }
            // Table 8: type, box of 4 doubles, number of parts and of points, where parts begin, points
            file.putInt(5).position(file.position() + 32);
            file.putInt(rings.size())
                    .putInt(rings.stream().mapToInt(ring -> ring.size()).sum());
            int start = 0;
            for (List<double[]> ring : rings) {
                file.putInt(start);
                start += ring.size();
            }
            for (List<double[]> ring : rings) {
                for (double[] point : ring) {
                    file.putDouble(point[0]).putDouble(point[1]);
                }
            }
        }
        return file.array();
    }

    private static int content(List<List<double[]>> rings) {
        return rings.isEmpty()
                ? 4
                : 44
                        + 4 * rings.size()
                        + rings.stream().mapToInt(ring -> 16 * ring.size()).sum();
    }

    /** A ring around a square, clockwise as outer rings are. */
    public static List<double[]> square(double west, double south, double side) {
        return List.of(
                new double[] {west, south},
                new double[] {west, south + side},
                new double[] {west + side, south + side},
                new double[] {west + side, south},
                new double[] {west, south});
    }

    /** The same the other way around, as holes are. */
    static List<double[]> hole(double west, double south, double side) {
        return List.of(
                new double[] {west, south},
                new double[] {west + side, south},
                new double[] {west + side, south + side},
                new double[] {west, south + side},
                new double[] {west, south});
    }

    /** A table with columns of text, 12 bytes each. */
    public static byte[] table(List<String> columns, List<List<String>> rows) {
        return table(columns, rows, StandardCharsets.UTF_8);
    }

    static byte[] table(List<String> columns, List<List<String>> rows, Charset charset) {
        int headerBytes = 32 + 32 * columns.size() + 1;
        int rowBytes = 1 + 12 * columns.size();
        ByteBuffer file =
                ByteBuffer.allocate(headerBytes + rows.size() * rowBytes + 1).order(ByteOrder.LITTLE_ENDIAN);
        file.put((byte) 3).put(new byte[] {99, 1, 1}).putInt(rows.size());
        file.putShort((short) headerBytes).putShort((short) rowBytes);
        for (int i = 0; i < columns.size(); i++) {
            file.position(32 + 32 * i);
            file.put(columns.get(i).getBytes(charset));
            file.put(32 + 32 * i + 11, (byte) 'C').put(32 + 32 * i + 16, (byte) 12);
        }
        file.put(headerBytes - 1, (byte) 13);
        for (int row = 0; row < rows.size(); row++) {
            file.position(headerBytes + row * rowBytes);
            file.put((byte) ' ');
            for (String cell : rows.get(row)) {
                byte[] text = cell.getBytes(charset);
                byte[] padded = " ".repeat(12).getBytes(charset);
                System.arraycopy(text, 0, padded, 0, text.length);
                file.put(padded);
            }
        }
        return file.put(file.capacity() - 1, (byte) 26).array();
    }
}

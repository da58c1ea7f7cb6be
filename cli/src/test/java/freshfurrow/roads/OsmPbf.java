package freshfurrow.roads;

import com.google.protobuf.ByteString;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.openstreetmap.osmosis.osmbinary.Fileformat;
import org.openstreetmap.osmosis.osmbinary.Osmformat;

/** A map in the PBF format, as the OpenStreetMap wiki has it: a header block, then one block of points and ways. */
final class OsmPbf {
    private static final double PER_DEGREE = 1e7;

    private final Map<String, Integer> words = new LinkedHashMap<>();

    private OsmPbf() {
        words.put("", 0);
    }

    static byte[] of(OsmMap map) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Osmformat.HeaderBlock header = Osmformat.HeaderBlock.newBuilder()
                .addRequiredFeatures("OsmSchema-V0.6")
                .build();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            write(out, "OSMHeader", header.toByteString());
            write(out, "OSMData", new OsmPbf().block(map).toByteString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void write(DataOutputStream out, String type, ByteString content) throws IOException {
        Fileformat.Blob blob = Fileformat.Blob.newBuilder()
                .setRaw(content)
                .setRawSize(content.size())
                .build();
        Fileformat.BlobHeader header = Fileformat.BlobHeader.newBuilder()
                .setType(type)
                .setDatasize(blob.getSerializedSize())
                .build();
        out.writeInt(header.getSerializedSize());
        out.write(header.toByteArray());
        out.write(blob.toByteArray());
    }

    private Osmformat.PrimitiveBlock block(OsmMap map) {
        Osmformat.PrimitiveGroup.Builder points = Osmformat.PrimitiveGroup.newBuilder();
        for (OsmMap.Point point : map.points()) {
            Osmformat.Node.Builder node = Osmformat.Node.newBuilder()
                    .setId(point.id())
                    .setLat(Math.round(point.lat() * PER_DEGREE))
                    .setLon(Math.round(point.lon() * PER_DEGREE));
            point.tags().forEach((key, value) -> node.addKeys(word(key)).addVals(word(value)));
            points.addNodes(node);
        }
        Osmformat.PrimitiveGroup.Builder ways = Osmformat.PrimitiveGroup.newBuilder();
        for (OsmMap.Way over : map.ways()) {
            Osmformat.Way.Builder way = Osmformat.Way.newBuilder().setId(over.id());
            over.tags().forEach((key, value) -> way.addKeys(word(key)).addVals(word(value)));
            long before = 0;
            for (long id : over.points()) {
                way.addRefs(id - before);
                before = id;
            }
            ways.addWays(way);
        }
        Osmformat.StringTable.Builder table = Osmformat.StringTable.newBuilder();
        words.keySet().forEach(word -> table.addS(ByteString.copyFromUtf8(word)));
        return Osmformat.PrimitiveBlock.newBuilder()
                .setStringtable(table)
                .addPrimitivegroup(points)
                .addPrimitivegroup(ways)
                .build();
    }

    private int word(String word) {
        return words.computeIfAbsent(word, unseen -> words.size());
    }
}

package freshfurrow.app.shapefile;

import freshfurrow.app.begin.Heading;
import freshfurrow.app.begin.UnusableMap;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The table of a shapefile, a dBASE file (as the 'ESRI Shapefile Technical Description' has it): a header with a descriptor of 32 bytes
 * for each column, then rows of one length, each cell as text, that begin with a mark of those that were deleted.
 */
record DbfFile(List<String> columns, List<List<String>> rows, List<Integer> deleted) {
    private static final int VERSION_BITS = 7;
    private static final int VERSION = 3;
    private static final int ROWS_AT = 4;
    private static final int HEADER_LENGTH_AT = 8;
    private static final int ROW_LENGTH_AT = 10;
    private static final int DESCRIPTOR_BYTES = 32;
    private static final int NAME_BYTES = 11;
    private static final int LENGTH_AT = 16;
    private static final int END_OF_COLUMNS = 0x0D;
    private static final int BYTE = 0xFF;
    private static final int SHORT = 0xFFFF;

    DbfFile {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        deleted = List.copyOf(deleted);
    }

    /** Reads the table; without a character set its text is UTF-8, where that can be, or else Windows-1252. */
    static DbfFile read(byte[] bytes, Optional<String> cpg) throws UnusableMap {
        try {
            if (bytes.length < DESCRIPTOR_BYTES || (bytes[0] & VERSION_BITS) != VERSION) {
                throw new IllegalArgumentException("no dBASE file");
            }
            ByteBuffer file = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
            return read(file, charset(bytes, cpg));
        } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
            throw new UnusableMap("The table of the shapefile (.dbf) ends early or is broken. Copy or save it again.");
        }
    }

    private static DbfFile read(ByteBuffer file, Charset charset) {
        int rowCount = file.getInt(ROWS_AT);
        int rowsAt = file.getShort(HEADER_LENGTH_AT) & SHORT;
        int rowLength = file.getShort(ROW_LENGTH_AT) & SHORT;
        List<String> columns = new ArrayList<>();
        List<Integer> lengths = new ArrayList<>();
        for (int at = DESCRIPTOR_BYTES; file.get(at) != END_OF_COLUMNS; at += DESCRIPTOR_BYTES) {
            String name = text(file, at, NAME_BYTES, charset);
            columns.add(name.indexOf('\0') < 0 ? name : name.substring(0, name.indexOf('\0')));
            lengths.add(file.get(at + LENGTH_AT) & BYTE);
        }
        int needed = 1 + lengths.stream().mapToInt(Integer::intValue).sum();
        if (rowCount < 0 || rowLength < needed || rowsAt + (long) rowCount * rowLength > file.capacity()) {
            throw new IllegalArgumentException("rows that there are not");
        }
        List<List<String>> rows = new ArrayList<>();
        List<Integer> deleted = new ArrayList<>();
        for (int row = 0; row < rowCount; row++) {
            int at = rowsAt + row * rowLength;
            if (file.get(at) == '*') {
                deleted.add(row);
            }
            at++;
            List<String> cells = new ArrayList<>();
            for (int length : lengths) {
                cells.add(text(file, at, length, charset).replace('\0', ' ').strip());
                at += length;
            }
            rows.add(cells);
        }
        return new DbfFile(columns, rows, deleted);
    }

    private static String text(ByteBuffer file, int at, int length, Charset charset) {
        byte[] bytes = new byte[length];
        file.get(at, bytes);
        return new String(bytes, charset);
    }

    private static Charset charset(byte[] bytes, Optional<String> cpg) {
        try {
            if (cpg.isPresent()) {
                String name = cpg.get().strip();
                return Charset.forName(name.matches("\\d+") ? "windows-" + name : name);
            }
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            // told by its bytes, as without it
        }
        try {
            StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes, DESCRIPTOR_BYTES, bytes.length - DESCRIPTOR_BYTES));
            return StandardCharsets.UTF_8;
        } catch (CharacterCodingException e) {
            return Charset.forName("windows-1252");
        }
    }

    boolean isDeleted(int row) {
        return deleted.contains(row);
    }

    /** What the first column about that tells; empty when there is none. */
    String cell(int row, Heading heading) {
        Integer column = about().get(heading);
        return column == null ? "" : rows.get(row).get(column);
    }

    private Map<Heading, Integer> about() {
        Map<Heading, Integer> about = new EnumMap<>(Heading.class);
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            Heading.guess(columns.get(i)).ifPresent(heading -> about.putIfAbsent(heading, column));
        }
        return about;
    }

    /** Which columns are used, and which are not. */
    String said() {
        List<Heading> used = List.of(Heading.ID, Heading.NAME, Heading.CROP, Heading.DRAINAGE);
        Map<Heading, Integer> about = about();
        String taken = used.stream()
                .filter(about::containsKey)
                .map(heading -> columns.get(about.get(heading)) + " is " + heading.key())
                .collect(Collectors.joining(", "));
        List<Integer> takenColumns =
                used.stream().filter(about::containsKey).map(about::get).toList();
        List<String> left = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!takenColumns.contains(i)) {
                left.add(columns.get(i));
            }
        }
        return "Of its table, " + (taken.isEmpty() ? "nothing is used" : taken)
                + (left.isEmpty()
                        ? "."
                        : "; left out: " + String.join(", ", left) + ". Areas and places come from the drawing.");
    }
}

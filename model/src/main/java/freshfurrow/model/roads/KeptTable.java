package freshfurrow.model.roads;

import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.WriteTurn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Measured distances in a file: who wrote it, the map that they were measured on, then for each place those to all places before it. A
 * file that does not say so to its end is taken for none.
 *
 * @param map the SHA-256 of the map
 * @param metres by position of one place, then of one before it
 */
record KeptTable(String map, List<int[]> metres) {
    private static final String TITLE = "freshfurrow roads 1";

    static Optional<KeptTable> read(Path file, int places) {
        try {
            List<String> lines = Files.readAllLines(file);
            if (lines.size() != places + 2 || !lines.get(0).equals(TITLE)) {
                return Optional.empty();
            }
            List<int[]> metres = new ArrayList<>();
            for (int i = 0; i < places; i++) {
                metres.add(row(lines.get(i + 2), i));
            }
            return Optional.of(new KeptTable(lines.get(1), metres));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** A line for each place. */
    static String text(List<int[]> metres) {
        return metres.stream()
                .map(row -> IntStream.of(row).mapToObj(Integer::toString).collect(Collectors.joining(" ")))
                .collect(Collectors.joining("\n"));
    }

    private static int[] row(String line, int length) {
        int[] row = line.isEmpty()
                ? new int[0]
                : Stream.of(line.split(" ", -1)).mapToInt(Integer::parseInt).toArray();
        if (row.length != length || IntStream.of(row).anyMatch(metres -> metres < 0)) {
            throw new IllegalArgumentException(line);
        }
        return row;
    }

    /** Writes it, where that can be: without it the distances are measured again. */
    void write(Path file) {
        String rows = text(metres);
        try {
            WriteTurn.writeAll(List.of(NewFile.of(file, TITLE + "\n" + map + "\n" + rows + "\n", IfThere.REPLACE)));
        } catch (IOException e) {
            return; // as on a disk that can only be read
        }
    }
}

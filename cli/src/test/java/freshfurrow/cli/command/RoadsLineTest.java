package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

final class RoadsLineTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private RoadsLine line(boolean shown) {
        return new RoadsLine(new TerminalLine(new PrintStream(err, true, StandardCharsets.UTF_8), shown));
    }

    @Test
    void whatTakesLongIsSaidAndTakenAwayAgain() {
        RoadsLine line = line(true);
        line.reads(Path.of("maps", "county.osm.pbf"), true);
        line.done();
        line.measures(12);
        line.done();
        String read = "Reading the map of roads county.osm.pbf; it is kept for the next time";
        String measured = "Measuring the roads between 12 places; they are kept for the next time";

        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo("\r" + read + "\r" + " ".repeat(read.length()) + "\r\r" + measured + "\r"
                        + " ".repeat(measured.length()) + "\r");
    }

    @Test
    void whereThereIsNoTerminalNothingIsSaid() {
        RoadsLine line = line(false);
        line.reads(Path.of("county.osm"), false);
        line.done();

        assertThat(err.size()).isZero();
    }
}

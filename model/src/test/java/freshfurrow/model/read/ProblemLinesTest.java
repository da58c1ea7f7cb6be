package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class ProblemLinesTest {
    private static Problem at(int line, String path, String reason) {
        return new Problem(
                "fields.csv", line > 0 ? OptionalInt.of(line) : OptionalInt.empty(), path, reason, "use -90 to 90");
    }

    private static List<Problem> latitudes(int many) {
        return IntStream.range(0, many)
                .mapToObj(i -> at(i + 2, "lat", (141 + i) + ".5 is out of range"))
                .toList();
    }

    @Test
    void upToThreeAlikeAreToldOneByOne() {
        assertThat(ProblemLines.of(latitudes(3)))
                .containsExactly(
                        "fields.csv:2: lat: 141.5 is out of range; use -90 to 90",
                        "fields.csv:3: lat: 142.5 is out of range; use -90 to 90",
                        "fields.csv:4: lat: 143.5 is out of range; use -90 to 90");
    }

    @Test
    void moreAreToldOnceWithTheFirstThreePlacesAndACount() {
        assertThat(ProblemLines.of(latitudes(80)))
                .containsExactly(
                        "fields.csv:2: lat: 141.5 is out of range; use -90 to 90 (80 alike: lines 2, 3, 4 and 77 more)");
    }

    @Test
    void otherProblemsKeepTheirPlaceInBetween() {
        List<Problem> problems = Stream.concat(
                        Stream.concat(latitudes(2).stream(), Stream.of(at(3, "crop", "there is no crop corn"))),
                        latitudes(5).stream().skip(2))
                .toList();

        assertThat(ProblemLines.of(problems))
                .containsExactly(
                        "fields.csv:2: lat: 141.5 is out of range; use -90 to 90 (5 alike: lines 2, 3, 4 and 2 more)",
                        "fields.csv:3: crop: there is no crop corn; use -90 to 90");
    }

    @Test
    void placesWithoutALineAreToldByTheirKeys() {
        List<Problem> problems = IntStream.range(0, 4)
                .mapToObj(i -> at(0, "fields.F" + i + ".lat", "'north' is not a number"))
                .toList();

        assertThat(ProblemLines.of(problems))
                .containsExactly("fields.csv: fields.F0.lat: 'north' is not a number; use -90 to 90"
                        + " (4 alike: fields.F0.lat, fields.F1.lat, fields.F2.lat and 1 more)");
    }

    @Test
    void whatIsWrongInAnotherKeyOrWayIsAnotherProblem() {
        List<Problem> problems = List.of(
                at(2, "lat", "1 is out of range"),
                at(3, "lon", "1 is out of range"),
                at(4, "lat", "'x' is not a number"),
                at(5, "lat", "1 is out of range"));

        assertThat(ProblemLines.of(problems)).hasSize(4);
    }
}

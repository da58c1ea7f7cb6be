package freshfurrow.app.begin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Positions as people copy or type them. */
final class TypedPositionTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            41.02, -97.01         | 41.02   | -97.01
            41,-97                | 41      | -97
            41.02 N 97.01 W       | 41.02   | -97.01
            33.5\u00b0 S; 70.6\u00b0 E | -33.5   | 70.6
            46,6541; 20,1502      | 46.6541 | 20.1502
            46,6541 20,1502       | 46.6541 | 20.1502
            46,6541, 20,1502      | 46.6541 | 20.1502
            33,5\u00b0 S 70,6\u00b0 W | -33.5   | -70.6
            """)
    void areUnderstood(String typed, String lat, String lon) {
        assertThat(TypedPosition.read(typed)).contains(new TypedPosition.Position(lat, lon));
    }

    @ParameterizedTest
    @ValueSource(strings = {"46,6541", "46,6541,20,1502", "46,6541 20", "46.6541", "north field", ""})
    void whatCouldBeTwoThingsIsNotGuessed(String typed) {
        assertThat(TypedPosition.read(typed)).isEmpty();
    }
}

package freshfurrow.app.begin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Working hours as growers type them. */
final class TypedHoursTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            7-12, 1 to 8 pm             | 07:00/12:00, 13:00/20:00
            7-12, 1-8                   | 07:00/12:00, 13:00/20:00
            7-noon, 1:30-8              | 07:00/12:00, 13:30/20:00
            7 to 6                      | 07:00/18:00
            7-12, 12:30 to 8 pm         | 07:00/12:00, 12:30/20:00
            7 am to 12 pm, 1 pm to 8 pm | 07:00/12:00, 13:00/20:00
            07:00/12:00, 13:00/20:00    | 07:00/12:00, 13:00/20:00
            6-10, 10-11                 | 06:00/10:00, 10:00/11:00
            13-20, 7-12                 | 13:00/20:00, 07:00/12:00
            7-12, 01:00-20:00           | 07:00/12:00, 01:00/20:00
            1 pm to 8 am                | 13:00/08:00
            """)
    void areWrittenAsASeasonFileHasThem(String typed, String written) {
        assertThat(TypedHours.asWritten(typed)).contains(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "7", "7-12-15", "all day", "7-25", "13 pm-15 pm", "7-12,"})
    void areNotGuessed(String typed) {
        assertThat(TypedHours.asWritten(typed)).isEmpty();
    }
}

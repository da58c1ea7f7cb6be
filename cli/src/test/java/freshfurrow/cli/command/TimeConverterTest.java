package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

final class TimeConverterTest {
    @ParameterizedTest
    @CsvSource({"30s,PT30S", "30 s,PT30S", "5min,PT5M", "1h,PT1H", "0.5 H,PT30M", "1.5s,PT1.5S"})
    void aTimeIsANumberWithAUnit(String text, Duration duration) {
        assertThat(new TimeConverter().convert(text)).isEqualTo(duration);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "30", "s", "-1s", "1m", "1e3s", "NaN s", "1,5s", "1 day"})
    void whatIsNoTimeIsRefusedWithAnExample(String text) {
        assertThatThrownBy(() -> new TimeConverter().convert(text))
                .isInstanceOf(TypeConversionException.class)
                .hasMessageContaining("write it like 30s, 5min or 1h");
    }

    @Test
    void noTimeAtAllIsRefused() {
        assertThatThrownBy(() -> new TimeConverter().convert("0s")).hasMessageContaining("out of range");
    }

    @Test
    void moreThanAWeekIsRefused() {
        assertThatThrownBy(() -> new TimeConverter().convert("999999999h")).hasMessageContaining("out of range");
    }
}

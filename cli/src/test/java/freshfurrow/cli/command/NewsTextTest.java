package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NewsTextTest {
    @ParameterizedTest
    @CsvSource({
        "R1=2027-04-20T00:00/2101-01-01T00:00, 2101-01-01T00:00",
        "R1=1999-12-31T23:59/2027-04-20T00:00, 1999-12-31T23:59",
        "R1=2027-04-20T00:00/9999-12-31T00:00, 9999-12-31T00:00"
    })
    void aMachineIsDownInYearsThatAPlanFileCanTell(String down, String wrong) {
        assertThatExceptionOfType(WrongArgument.class)
                .isThrownBy(() -> NewsText.down(down))
                .withMessage("--down '" + wrong + "' is out of range; use years from 2000 to 2100");
    }

    @Test
    void aMachineMayBeDownUntilTheLastYearOfAPlanFile() {
        assertThat(NewsText.down("R1=2000-01-01T00:00/2100-12-31T23:59").until())
                .isEqualTo(LocalDateTime.of(2100, 12, 31, 23, 59));
    }
}

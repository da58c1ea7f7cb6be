package freshfurrow.model.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkHoursTest {
    @ParameterizedTest(name = "{0} without {1} and {2} min: {3}")
    @CsvSource({
        "06:00/18:00, 30, 15, 06:30/17:45",
        "06:00/18:00, 0, 15, 06:00/17:45",
        // a break does not end a day; a period that is too short is not worked in
        "06:00/12:00 13:00/18:00, 30, 15, 06:30/12:00 13:00/17:45",
        "06:00/06:20 07:00/18:00, 30, 15, 07:30/17:45",
        "06:00/17:00 17:30/17:40, 30, 15, 06:30/16:45",
        "06:00/06:30 07:00/18:00, 30, 15, 07:00/17:45",
        // past midnight
        "00:00/04:00 20:00/24:00, 30, 15, 00:00/03:45 20:30/24:00",
        "00:00/00:10 20:00/24:00, 30, 15, 20:30/23:55",
        "00:00/12:00 13:00/24:00, 30, 15, 00:00/11:45 13:30/24:00",
        "00:00/24:00, 30, 15, 00:30/23:45",
        "20:00/24:00, 30, 15, 20:30/23:45",
        "00:00/04:00, 30, 15, 00:30/03:45",
        // nothing is left
        "06:00/06:45, 30, 15, ''",
        "06:00/06:20 07:00/07:20, 30, 15, ''",
        "06:00/06:40 07:00/07:20, 30, 15, 06:30/06:40 07:00/07:05",
    })
    void whatIsKeptOfADayIsTakenFromItsBeginningAndItsEnd(String hours, int firstMin, int lastMin, String left) {
        assertThat(hours(hours).without(new KeptTime(firstMin * 60, lastMin * 60)))
                .isEqualTo(left.isEmpty() ? Optional.empty() : Optional.of(hours(left)));
    }

    @ParameterizedTest(name = "{0} begin at {1}")
    @CsvSource({
        "06:00/12:00 13:00/18:00, 06:00",
        "00:00/04:00 20:00/24:00, 20:00",
        "00:00/24:00, 00:00",
        "00:00/04:00, 00:00",
        "20:00/24:00, 20:00",
    })
    void aDayBeginsWhereItsHoursDoAndNotAtMidnight(String hours, String begins) {
        assertThat(hours(hours).dayStartS()).isEqualTo(clock(begins));
    }

    private static WorkHours hours(String spans) {
        List<DaySpan> list = new ArrayList<>();
        for (String span : spans.split(" ", -1)) {
            int slash = span.indexOf('/');
            list.add(new DaySpan(clock(span.substring(0, slash)), clock(span.substring(slash + 1))));
        }
        return new WorkHours(list);
    }

    private static int clock(String time) {
        return time.equals("24:00") ? 86_400 : LocalTime.parse(time).toSecondOfDay();
    }
}

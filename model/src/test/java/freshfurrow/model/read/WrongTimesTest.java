package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates, hours and windows that no season can have. */
final class WrongTimesTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    last: 2027-06-05  | last: 2027-04-01  | season.yaml:1: season.last: the season ends before it starts; put the earlier date in first
                    last: 2027-06-05  | last: 2029-06-05  | season.yaml:1: season.last: the season is longer than 400 days; check the years of first and last
                    first: 2027-04-19 | first: 19.4.2027  | season.yaml:1: season.first: '19.4.2027' is not a date; write year-month-day, like 2027-04-19
                    first: 2027-04-19 | first: 2027-02-30 | season.yaml:1: season.first: '2027-02-30' is not a date; write year-month-day, like 2027-04-19
                    first: 2027-04-19 | first: +999999999-12-31 | season.yaml:1: season.first: +999999999-12-31 is out of range; use a year from 2000 to 2099
                    from: 2027-04-01  | from: 0027-04-01  | season.yaml:39: compost.windrow.from: 0027-04-01 is out of range; use a year from 2000 to 2099
                    window: 2027-04-20/2027-05-12 | window: 2027-05-12/2027-04-20 | season.yaml:9: crops.corn.window: the window ends before it opens; put the earlier date first
                    window: 2027-04-20/2027-05-12 | window: 2027-04-20            | season.yaml:9: crops.corn.window: '2027-04-20' is not a date interval; write first and last date, like 2027-04-20/2027-05-12
                    window: 2027-04-20/2027-05-12 | window: 2027-04-20 to 2027-05-12 | season.yaml:9: crops.corn.window: '2027-04-20 to 2027-05-12' is not a date interval; write first and last date, like 2027-04-20/2027-05-12
                    window: 2027-04-20/2027-05-12 | window: [2027-04-20, 2027-05-12] | season.yaml:9: crops.corn.window: is a list where one value belongs; write one value here
                    lon: -97.0, crop: corn} | lon: -97.0, crop: corn, window: 2027-06-06/2027-06-20} | season.yaml:12: fields.S80.window: the window 2027-06-06/2027-06-20 lies outside the season 2027-04-19/2027-06-05; move the window or the season's first and last day
                    lon: -97.0, crop: corn} | lon: -97.0, crop: corn, window: 2027-04-01/2027-04-18} | season.yaml:12: fields.S80.window: the window 2027-04-01/2027-04-18 lies outside the season 2027-04-19/2027-06-05; move the window or the season's first and last day
                    lon: -97.0, crop: corn} | lon: -97.0, crop: corn, window: 2007-04-20/2027-05-12} | season.yaml:12: fields.S80.window: the window is longer than 400 days; check the years of its dates
                    "07:00/12:00"     | "12:00/07:00"     | season.yaml:2: hours[1]: ends before it starts; put the earlier time first; write hours over midnight as two spans, like 20:00/24:00 and 00:00/04:00
                    "12:30/20:00"     | "20:00/04:00"     | season.yaml:2: hours[2]: ends before it starts; put the earlier time first; write hours over midnight as two spans, like 20:00/24:00 and 00:00/04:00
                    "12:30/20:00"     | "11:30/20:00"     | season.yaml:2: hours: two spans overlap; make each start when or after the one before it ends
                    "12:30/20:00"     | "12:30-20:00"     | season.yaml:2: hours[2]: '12:30-20:00' is not a span of hours; write start and end, like "07:00/12:00"
                    "12:30/20:00"     | "12:30/25:00"     | season.yaml:2: hours[2]: '25:00' is not a time of day; write hours and minutes, like 07:00
                    "12:30/20:00"     | "12:30/8 pm"      | season.yaml:2: hours[2]: '8 pm' is not a time of day; write hours and minutes, like 07:00
                    `["07:00/12:00", "12:30/20:00"]` | [] | season.yaml:2: hours: is empty; write working hours, like hours: ["07:00/12:00", "12:30/20:00"]
                    `hoses: 1,`       | `hoses: 1, hours: [],` | season.yaml:37: waterPoints.well.hours: is empty; write working hours, like hours: ["07:00/12:00", "12:30/20:00"]
                    SUNDAY            | SUNDAI            | season.yaml:3: closed[1]: 'SUNDAI' is not a weekday; write SUNDAY or a date like 2027-05-31
                    SUNDAY            | 31 May            | season.yaml:3: closed[1]: '31 May' is not a date; write year-month-day, like 2027-04-19
                    SUNDAY            | MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY, SUNDAY | season.yaml:3: closed: closes every day of the week; leave at least one weekday open
                    last: 2027-06-05  | last: 2027-06-05} #   | season.yaml:1: season.timezone: is missing; write it like timezone: America/Chicago
                    `from: "14:00"`   | from: "24:00"     | season.yaml:43: rain[1].from: is the end of the day; write the date after it, and from: 00:00
                    window: 2027-04-20/2027-05-12 | window: 2028-04-20/2028-05-12 | season.yaml:9: crops.corn.window: the window 2028-04-20/2028-05-12 lies outside the season 2027-04-19/2027-06-05; move the window or the season's first and last day
                    `from: "14:00"`   | from: 2 pm        | season.yaml:43: rain[1].from: '2 pm' is not a time of day; write hours and minutes, like 07:00
                    date: 2027-05-03  | date: tomorrow    | season.yaml:43: rain[1].date: 'tomorrow' is not a date; write year-month-day, like 2027-04-19
                    `  - {date`       | `  {date`         | season.yaml:42: rain: is not a list; write - {date: 2027-05-03, amount: 0.8 in} on a line for each rain
                    """)
    void aWrongDateOrTimeIsOneLine(String before, String after, String line) {
        assertThat(WrittenSeason.in(folder).with(before, after).problems()).containsExactly(line);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    SUNDAY, 2027-05-31 | 2027-04-19 | season.yaml:3: closed: leaves no day of the season open; open a day or lengthen the season
                    SUNDAY, 2027-05-31 | MONDAY     | season.yaml:3: closed: leaves no day of the season open; open a day or lengthen the season
                    """)
    void aSeasonWithoutAnOpenDayIsOneLine(String before, String after, String line) {
        assertThat(WrittenSeason.in(folder)
                        .with("last: 2027-06-05", "last: 2027-04-19")
                        .with("window: 2027-04-20", "window: 2027-04-19")
                        .with(before, after)
                        .problems())
                .containsExactly(line);
    }
}

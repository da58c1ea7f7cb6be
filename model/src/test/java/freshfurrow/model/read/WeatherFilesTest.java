package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.record.DailyWeather;
import freshfurrow.model.weather.record.Filling;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weather records of a season from 19 April to 5 June 2027. */
final class WeatherFilesTest {
    private static final LocalDate MAY_4 = LocalDate.of(2018, 5, 4);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aTableIsReadInItsUnits() {
        // 68 F = 20 °C, 50 F = 10 °C, 0.5 in = 12.7 mm
        SeasonWeather weather = weather(table(2018, 2019));
        DailyWeather day = weather.record().between(MAY_4, MAY_4).orElseThrow();

        assertThat(day.tmaxC(0)).isCloseTo(20, within(1e-9));
        assertThat(day.tminC(0)).isCloseTo(10, within(1e-9));
        assertThat(day.rainMm(0)).isCloseTo(12.7, within(1e-9));
        assertThat(weather.file()).isEqualTo("station.csv");
        assertThat(weather.about()).isEqualTo("a test");
        assertThat(weather.model().latitudeDeg()).isBetween(40.98, 41.02);
        assertThat(weather.fillings()).isEmpty();
    }

    @Test
    void theWeatherOfTheYearThatIsNamedIsLaidOverTheSeason() {
        Reading.Valid read = valid(season("year: 2018").withFile("station.csv", table(2018, 2019)));

        assertThat(read.season().ground().orElseThrow().rainMm()).containsOnlyKeys(LocalDate.of(2027, 5, 4));
        assertThat(read.season().ground().orElseThrow().origin()).isEqualTo("2018 in station.csv");
        assertThat(read.weather()
                        .orElseThrow()
                        .years(read.season().first(), read.season().last()))
                .containsExactly(2018, 2019);
    }

    @Test
    void theSeasonsOwnYearIsTakenWhereTheRecordHasIt() {
        Reading.Valid read = valid(season("about: 1").withFile("station.csv", table(2027, 2027)));

        assertThat(read.season().ground().orElseThrow().origin()).isEqualTo("2027 in station.csv");
    }

    @Test
    void aYearThatTheRecordDoesNotHaveIsOneLine() {
        assertThat(season("year: 2020")
                        .withFile("station.csv", table(2018, 2019))
                        .problems())
                .containsExactly(
                        "season.yaml:44: weather.year: the weather from 2020-04-19 on is not known to the season's end; "
                                + "station.csv has them for 2018 to 2019; name one, like year: 2019");
        assertThat(season("about: 1").withFile("station.csv", table(2018, 2019)).problems())
                .hasSize(1)
                .first()
                .asString()
                .contains("the weather from 2027-04-19 on", "name one, like year: 2019");
    }

    /**
     * The columns of readme-by_station.txt, GHCN-Daily, NOAA National Centers for Environmental Information: tenths of °C and mm, and a
     * quality flag in the sixth.
     */
    @Test
    void aFileByStationOfGhcnDailyIsReadInTenths() {
        StringBuilder text = new StringBuilder();
        for (LocalDate day = LocalDate.of(2018, 4, 1); day.getMonthValue() < 7; day = day.plusDays(1)) {
            String row = "ZZ000000001,%s,%s,%d,,%s,S,0700%n";
            String date = day.toString().replace("-", "");
            boolean fourth = day.equals(MAY_4);
            text.append(String.format(Locale.ROOT, row, date, "TMAX", fourth ? 201 : 200, ""));
            text.append(String.format(Locale.ROOT, row, date, "TMIN", 55, ""));
            text.append(String.format(Locale.ROOT, row, date, "SNWD", 0, ""));
            text.append(String.format(Locale.ROOT, row, date, "PRCP", fourth ? 127 : 0, ""));
            if (fourth) {
                text.append(String.format(Locale.ROOT, row, "20180701", "TMAX", 990, "X"));
            }
        }
        DailyWeather day =
                weather(text.toString()).record().between(MAY_4, MAY_4).orElseThrow();

        assertThat(day.tmaxC(0)).isCloseTo(20.1, within(1e-9));
        assertThat(day.tminC(0)).isCloseTo(5.5, within(1e-9));
        assertThat(day.rainMm(0)).isCloseTo(12.7, within(1e-9));
    }

    @Test
    void shortGapsOfTemperatureAreInterpolatedAndRainIsThatOfTheNearestYear() {
        // 2 to 5 May 2018 have no temperatures and 4 May no rain; 68 F and 50 F on both sides, and it rained on 4 May
        // 2019 too
        String text = rows(
                table(2018, 2019),
                2018,
                "-05-0[2345]",
                row -> row.substring(0, 11) + "," + row.substring(row.lastIndexOf(',')));
        text = rows(text, 2018, "-05-04", row -> row.substring(0, row.lastIndexOf(',') + 1));
        SeasonWeather weather = weather(text);
        DailyWeather day = weather.record().between(MAY_4, MAY_4).orElseThrow();

        assertThat(weather.fillings())
                .containsExactly(
                        new Filling(MAY_4, MAY_4, true, OptionalInt.of(2019)),
                        new Filling(LocalDate.of(2018, 5, 2), LocalDate.of(2018, 5, 5), false, OptionalInt.empty()));
        assertThat(day.tmaxC(0)).isCloseTo(20, within(1e-9));
        assertThat(day.rainMm(0)).isCloseTo(12.7, within(1e-9));
    }

    @Test
    void missingRowsAreAGapAndALongOneStays() {
        String month = rows(table(2018, 2019), 2018, "-05-", row -> "");
        String longer = rows(month, 2018, "-06-01", row -> "");

        assertThat(weather(month).fillings())
                .extracting(Filling::words)
                .containsExactly("rain of 2018-05-01 to 2018-05-31", "temperature of 2018-05-01 to 2018-05-31");
        assertThat(season("year: 2018").withFile("station.csv", longer).problems())
                .hasSize(1)
                .first()
                .asString()
                .contains("station.csv has them for 2019");
    }

    @Test
    void aGapThatNoOtherYearKnowsIsOneLine() {
        String text = rows(table(2018, 2018), 2018, "-05-04", row -> row.substring(0, row.lastIndexOf(',') + 1));

        assertThat(season("year: 2018").withFile("station.csv", text).problems())
                .containsExactly(
                        "station.csv: rain of 2018-05-04 is not known, and no other year of the record knows it; "
                                + "write the figures of those days, or leave out the days around them too");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    2018-05-04,68,50,0.5 | 2018-05-03,68,50,0.5 | station.csv:35: 2018-05-03 is repeated here, first in line 34; keep one row for each day
                    2018-05-04,68,50,0.5 | 2018-05-04,68,70,0.5 | station.csv:35: tmin is above tmax; check whether the two are swapped
                    2018-05-04,68,50,0.5 | 2018-05-04,68,50,9999 | station.csv:35: rain 9999 is a code for a missing figure; leave the cell empty instead
                    2018-05-04,68,50,0.5 | 2018-05-04,-9999,50,0 | station.csv:35: tmax -9999 is a code for a missing figure; leave the cell empty instead
                    2018-05-04,68,50,0.5 | 2018-05-04,68,50,-0.5 | station.csv:35: rain -0.5 in is below 0; write 0, or leave the cell empty
                    2018-05-04,68,50,0.5 | 2018-05-04,168,50,0 | station.csv:35: tmax 168 F has never been measured on earth; check the unit in the header; there have been temperatures of -130 to 134 F (-90 to 57 C)
                    2018-05-04,68,50,0.5 | 2018-05-04,68,50,wet | station.csv:35: rain 'wet' is not a number; write a number, or leave the cell empty when it is not known
                    2018-05-04,68,50,0.5 | 4 May 2018,68,50,0.5 | station.csv:35: '4 May 2018' is not a date; write year-month-day, like 2019-05-04
                    2018-05-04,68,50,0.5 | 2017-05-04,68,50,0.5 | station.csv:35: 2017-05-04 comes after 2018-05-03; sort the rows by date
                    tmax (F)             | tmax                 | station.csv:1: tmax: has no unit; put a unit in the header: tmax (C) or tmax (F)
                    rain (in)            | rain (F)             | station.csv:1: rain: F is not a unit of a depth of rain; put a unit in the header: rain (in) or rain (mm)
                    date,                | day,                 | station.csv:1: has no column date; start it with date,tmax (C),tmin (C),rain (mm) or the like in F and in
                    """)
    void aMistakeInTheTableIsOneLine(String before, String after, String line) {
        assertThat(season("year: 2018")
                        .withFile("station.csv", table(2018, 2018).replace(before, after))
                        .problems())
                .containsExactly(line);
    }

    @Test
    void aMistakeThatComesAgainIsStillOneLine() {
        String text = rows(table(2018, 2019), 2018, "-05-", row -> row.substring(0, row.lastIndexOf(',')) + ",9999");

        assertThat(season("year: 2018").withFile("station.csv", text).problems())
                .containsExactly(
                        "station.csv:32: rain 9999 is a code for a missing figure, and 30 more like it; leave the cell empty instead");
    }

    @Test
    void fahrenheitTakenForCelsiusAndTheOtherWayRoundAreOneLine() {
        // 68 and 50: a mean of 59
        String hot = table(2018, 2018).replace("68,50", "55,45").replace("(F)", "(C)");
        String cold = table(2018, 2018).replace("68,50", "20,10");

        assertThat(season("year: 2018").withFile("station.csv", hot).problems())
                .containsExactly(
                        "station.csv: the season's days would have a mean of 50 C (122 F), which cannot be at 41 degrees north; "
                                + "check the units in the header: C for Celsius, F for Fahrenheit");
        assertThat(season("year: 2018").withFile("station.csv", cold).problems())
                .hasSize(1)
                .first()
                .asString()
                .contains("a mean of -9 C");
    }

    private SeasonWeather weather(String text) {
        return valid(season("year: 2018, about: a test").withFile("station.csv", text))
                .weather()
                .orElseThrow();
    }

    private WrittenSeason season(String keys) {
        return WrittenSeason.in(folder).with("goals: {", "weather: {file: station.csv, " + keys + "}\ngoals: {");
    }

    private static Reading.Valid valid(WrittenSeason season) {
        Reading reading = season.read();
        assertThat(WrittenSeason.problems(reading)).isEmpty();
        return (Reading.Valid) reading;
    }

    /** April to June of each year: 68 and 50 F every day, and half an inch of rain on 4 May. */
    private static String table(int firstYear, int lastYear) {
        StringBuilder text = new StringBuilder("date,tmax (F),tmin (F),rain (in)\n");
        for (int year = firstYear; year <= lastYear; year++) {
            LocalDate.of(year, 4, 1).datesUntil(LocalDate.of(year, 7, 1)).forEach(day -> text.append(day)
                    .append(day.getMonthValue() == 5 && day.getDayOfMonth() == 4 ? ",68,50,0.5\n" : ",68,50,0\n"));
        }
        return text.toString();
    }

    /** The table with the rows of a year that match changed; rows that become empty are left out. */
    private static String rows(String table, int year, String dates, UnaryOperator<String> change) {
        StringBuilder text = new StringBuilder();
        for (String row : table.split("\n", -1)) {
            String changed = row.matches(year + dates + ".*") ? change.apply(row) : row;
            if (!changed.isEmpty()) {
                text.append(changed).append('\n');
            }
        }
        return text.toString();
    }
}

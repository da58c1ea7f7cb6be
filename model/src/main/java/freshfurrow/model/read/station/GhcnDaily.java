package freshfurrow.model.read.station;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.read.tree.TextFile;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The files by station of GHCN-Daily, Global Historical Climatology Network, NOAA National Centers for Environmental Information,
 * as its {@code readme-by_station.txt} describes them: no header; station, date as YYYYMMDD, element, value, measurement flag,
 * quality flag, source flag, time of observation. TMAX and TMIN are in tenths of °C, PRCP in tenths of mm, -9999 is missing; a
 * value with a quality flag failed a check and counts as missing. Other elements are not looked at.
 */
final class GhcnDaily {
    private static final Pattern FIRST_LINE = Pattern.compile("[A-Z0-9_-]{11},\\d{8},[A-Z0-9]{4},-?\\d+,");
    private static final Map<String, Element> ELEMENTS =
            Map.of("TMAX", Element.TMAX, "TMIN", Element.TMIN, "PRCP", Element.RAIN);
    private static final int QUALITY_FLAG = 5;

    private GhcnDaily() {}

    static boolean looksLikeIt(TextFile file) {
        return FIRST_LINE.matcher(file.text()).lookingAt();
    }

    /** Rows of one day may stand apart, by element; they are put in the order of their dates. */
    static void read(TextFile file, Observations observations) throws FileProblem {
        Map<LocalDate, Map<Element, Value>> days = new TreeMap<>();
        String station = "";
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(file.text()))) {
            for (CSVRecord row : parser) {
                Place place = new Place(file.name(), (int) row.getRecordNumber(), "");
                if (row.size() < QUALITY_FLAG) {
                    throw new FileProblem(
                            place,
                            "is not a row of a GHCN-Daily file",
                            "use the file as it was published, or delete this row");
                }
                if (!station.isEmpty() && !station.equals(row.get(0))) {
                    throw new FileProblem(
                            place, "is of another station, " + row.get(0), "keep the rows of one station");
                }
                station = row.get(0);
                Element element = ELEMENTS.get(row.get(2));
                if (element != null) {
                    LocalDate date = date(row.get(1), place);
                    boolean failed =
                            row.size() > QUALITY_FLAG && !row.get(QUALITY_FLAG).isBlank();
                    Value before = days.computeIfAbsent(date, key -> new TreeMap<>())
                            .put(element, new Value(place, failed ? "-9999" : row.get(3)));
                    if (before != null) {
                        throw new FileProblem(
                                place,
                                row.get(2) + " of " + date + " is repeated here, first in line "
                                        + before.place().line(),
                                "keep one of the two");
                    }
                }
            }
        } catch (IOException | UncheckedIOException e) {
            throw new FileProblem(new Place(file.name(), 0, ""), "is not a table", "use the file as it was published");
        }
        days.forEach((date, values) -> {
            observations.day(values.values().iterator().next().place(), date.toString());
            values.forEach((element, value) -> tenths(observations, element, value));
        });
    }

    /**
     * What a row gives.
     *
     * @param tenths as written
     */
    private record Value(Place place, String tenths) {}

    private static void tenths(Observations observations, Element element, Value value) {
        try {
            int tenths = Integer.parseInt(value.tenths().strip());
            String unit = element == Element.RAIN ? " mm" : " C";
            observations.figure(value.place(), element, tenths == -9999 ? "" : tenths / 10.0 + unit);
        } catch (NumberFormatException e) {
            observations.figure(value.place(), element, value.tenths());
        }
    }

    private static LocalDate date(String text, Place place) throws FileProblem {
        try {
            return LocalDate.parse(text, DateTimeFormatter.BASIC_ISO_DATE);
        } catch (DateTimeException e) {
            throw new FileProblem(place, "'" + text + "' is not a date", "write year, month and day, like 20190504");
        }
    }
}

package freshfurrow.model.read.station;

import freshfurrow.model.quantity.WrittenQuantity;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Gathers what a station wrote down, row by row, and what is wrong with it, by kind of mistake. */
final class Observations {
    /** Nines that stand for a missing figure in one file or another. */
    private static final Pattern MISSING_CODE = Pattern.compile("-?999+(\\.9+)?|-99(\\.9+)?|99\\.99");

    private static final int FIRST_YEAR = 1800;
    private static final int LAST_YEAR = 2099;

    private final String file;
    private final NavigableMap<LocalDate, Day> days = new TreeMap<>();
    private final Map<String, Mistake> mistakes = new LinkedHashMap<>();
    private Optional<Day> current = Optional.empty();
    private Optional<LocalDate> before = Optional.empty();

    Observations(String file) {
        this.file = file;
    }

    /** Begins the row of a day. */
    void day(Place place, String text) {
        current = Optional.empty();
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
                mistake("year", place, date + " is out of range", "use years from " + FIRST_YEAR + " to " + LAST_YEAR);
                return;
            }
            Day day = days.get(date);
            if (day != null) {
                mistake(
                        "twice",
                        place,
                        date + " is repeated here, first in line " + day.place.line(),
                        "keep one row for each day");
                return;
            }
            if (before.isPresent() && date.isBefore(before.get())) {
                mistake("order", place, date + " comes after " + before.get(), "sort the rows by date");
            }
            before = Optional.of(date);
            current = Optional.of(new Day(place));
            days.put(date, current.get());
        } catch (DateTimeException e) {
            mistake("date", place, "'" + text + "' is not a date", "write year-month-day, like 2019-05-04");
        }
    }

    /** A figure of the day begun last; nothing where nothing is written. */
    void figure(Place place, Element element, String text) {
        if (text.isBlank() || current.isEmpty()) {
            return;
        }
        Optional<WrittenQuantity> written = WrittenQuantity.parse(text);
        if (written.isEmpty() || !element.kind().has(written.get().unit())) {
            mistake(
                    "quantity " + element,
                    place,
                    element.column() + " '" + text + "' is not a number",
                    "write a number, or leave the cell empty when it is not known");
            return;
        }
        String digits = text.replace(written.get().unit(), "").strip();
        double figure =
                element.kind().toSi(written.get().figure(), written.get().unit());
        if (MISSING_CODE.matcher(digits).matches()) {
            mistake(
                    "code " + element,
                    place,
                    element.column() + " " + digits + " is a code for a missing figure",
                    "leave the cell empty instead");
        } else if (element == Element.RAIN && figure < 0) {
            mistake("negative", place, "rain " + text + " is below 0", "write 0, or leave the cell empty");
        } else if (!element.possible(figure)) {
            mistake(
                    "range " + element,
                    place,
                    element.column() + " " + text + " has never been measured on earth",
                    "check the unit in the header; there have been " + element.words());
        } else {
            current.get().figures.put(element, figure);
            checkOrder(place, current.get());
        }
    }

    private void checkOrder(Place place, Day day) {
        OptionalDouble tmax = day.figure(Element.TMAX);
        OptionalDouble tmin = day.figure(Element.TMIN);
        if (tmax.isPresent() && tmin.isPresent() && tmin.getAsDouble() > tmax.getAsDouble()) {
            mistake("tmin", place, "tmin is above tmax", "check whether the two are swapped");
            day.figures.remove(Element.TMIN);
        }
    }

    /** One problem for each kind of mistake: its first place, and how often it comes again. */
    List<FileProblem> mistakes() {
        return mistakes.values().stream()
                .map(mistake -> new FileProblem(
                        mistake.place,
                        mistake.reason + (mistake.again == 0 ? "" : ", and " + mistake.again + " more like it"),
                        mistake.remedy))
                .toList();
    }

    /** From the first day of which anything is known to the last. */
    Optional<WeatherRecord> record() {
        days.values().removeIf(day -> day.figures.isEmpty());
        if (days.isEmpty()) {
            return Optional.empty();
        }
        LocalDate first = days.firstKey();
        int length = (int) ChronoUnit.DAYS.between(first, days.lastKey()) + 1;
        Map<Element, double[]> figures = new EnumMap<>(Element.class);
        for (Element element : Element.values()) {
            double[] unknown = new double[length];
            Arrays.fill(unknown, Double.NaN);
            days.forEach((date, day) -> day.figure(element)
                    .ifPresent(figure -> unknown[(int) ChronoUnit.DAYS.between(first, date)] = figure));
            figures.put(element, unknown);
        }
        return Optional.of(new WeatherRecord(
                first, figures.get(Element.TMAX), figures.get(Element.TMIN), figures.get(Element.RAIN)));
    }

    private void mistake(String kind, Place place, String reason, String remedy) {
        Mistake first = mistakes.get(kind);
        if (first == null) {
            mistakes.put(kind, new Mistake(new Place(file, place.line(), ""), reason, remedy));
        } else {
            first.again++;
        }
    }

    private static final class Day {
        private final Place place;
        private final Map<Element, Double> figures = new EnumMap<>(Element.class);

        Day(Place place) {
            this.place = place;
        }

        OptionalDouble figure(Element element) {
            Double figure = figures.get(element);
            return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure);
        }
    }

    private static final class Mistake {
        private final Place place;
        private final String reason;
        private final String remedy;
        private int again;

        Mistake(Place place, String reason, String remedy) {
            this.place = place;
            this.reason = reason;
            this.remedy = remedy;
        }
    }
}

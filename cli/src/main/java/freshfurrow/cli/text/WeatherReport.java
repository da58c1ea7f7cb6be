package freshfurrow.cli.text;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.Spring;
import freshfurrow.model.weather.WorkableDays;
import freshfurrow.model.weather.YearSpans;
import freshfurrow.model.weather.record.Filling;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Workable days of a season over many springs, by week and drainage class, with bars. */
public final class WeatherReport {
    private static final int WIDTH = 80;
    private static final int MOST_FILLINGS = 5;

    private final Season season;
    private final SeasonWeather weather;
    private final List<Spring> springs;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    private WeatherReport(Season season, SeasonWeather weather, List<Spring> springs) {
        this.season = season;
        this.weather = weather;
        this.springs = springs;
        this.figures = new Figures(season.units());
    }

    /**
     * The report, a line an entry.
     *
     * @param years years of the record among the springs
     * @param springs at least one
     * @param seed that generated springs come from
     */
    public static List<String> lines(
            Season season, SeasonWeather weather, List<Integer> years, List<Spring> springs, long seed) {
        WeatherReport report = new WeatherReport(season, weather, springs);
        report.head(years, seed);
        for (Drainage drainage : Drainage.values()) {
            if (season.fields().stream().map(Field::drainage).anyMatch(drainage::equals)) {
                report.table(drainage);
            }
        }
        report.foot();
        return report.lines;
    }

    private void head(List<Integer> years, long seed) {
        lines.add("Weather of " + season.name() + ", " + Figures.day(season.first()) + " to "
                + Figures.day(season.last()));
        String about = weather.about().isEmpty() ? "" : " (" + weather.about() + ")";
        lines.add("Record " + weather.file() + ", " + weather.record().first() + " to "
                + weather.record().last() + about);
        int generated = springs.size() - years.size();
        List<String> parts = new ArrayList<>();
        if (!years.isEmpty()) {
            parts.add((years.size() == 1 ? "the year " : "the years ") + YearSpans.words(years));
        }
        if (generated > 0) {
            parts.add(String.format(Locale.ROOT, "%,d generated from the record with seed %d", generated, seed));
        }
        lines.add(String.format(Locale.ROOT, "%,d ", springs.size())
                + (springs.size() == 1 ? "spring: " : "springs: ")
                + String.join(" and ", parts));
        season.ground().ifPresent(ground -> lines.add("Plans use the weather of " + ground.origin()));
        List<Filling> fillings = weather.fillings();
        fillings.stream().limit(MOST_FILLINGS).forEach(filling -> lines.add(filled(filling)));
        if (fillings.size() > MOST_FILLINGS) {
            lines.add("Filled: " + (fillings.size() - MOST_FILLINGS) + " more gaps");
        }
    }

    private static String filled(Filling filling) {
        String source = filling.fromYear().isPresent()
                ? "same dates of " + filling.fromYear().getAsInt()
                : "interpolated";
        return "Filled: " + filling.words() + ", " + source;
    }

    private void table(Drainage drainage) {
        Table table = new Table(
                WIDTH,
                List.of(
                        Table.Column.left("Week from"),
                        Table.Column.right("Rain"),
                        Table.Column.right("Days"),
                        Table.Column.right("8 in 10"),
                        Table.Column.right("5 in 10"),
                        Table.Column.right("2 in 10")),
                "");
        for (WorkableDays week : WorkableDays.byWeek(springs, drainage, season.first(), season.last())) {
            row(table, Figures.day(week.first()), Optional.of(figures.rain(meanRainMm(week))), week, bar(week));
        }
        row(
                table,
                "Season",
                Optional.empty(),
                WorkableDays.of(springs, drainage, season.first(), season.last(), date -> true),
                "");
        row(
                table,
                "Without days off",
                Optional.empty(),
                WorkableDays.of(springs, drainage, season.first(), season.last(), date -> !season.closed()
                        .contains(date)),
                "");
        lines.add("");
        String name = GroundText.name(drainage);
        lines.add(Character.toUpperCase(name.charAt(0)) + name.substring(1) + " fields");
        lines.addAll(table.lines());
    }

    private static void row(Table table, String name, Optional<String> rain, WorkableDays days, String bar) {
        table.row(
                List.of(
                        name,
                        rain.orElse(""),
                        Integer.toString(days.days()),
                        Integer.toString(days.in8Of10()),
                        Integer.toString(days.in5Of10()),
                        Integer.toString(days.in2Of10())),
                List.of(bar));
    }

    private static String bar(WorkableDays week) {
        return "#".repeat(week.in8Of10())
                + "+".repeat(week.in5Of10() - week.in8Of10())
                + "-".repeat(week.in2Of10() - week.in5Of10())
                + ".".repeat(week.days() - week.in2Of10());
    }

    private double meanRainMm(WorkableDays week) {
        return springs.stream()
                .mapToDouble(spring -> week.first()
                        .datesUntil(week.first().plusDays(week.days()))
                        .mapToDouble(date -> spring.ground().rainMm().getOrDefault(date, 0.0))
                        .sum())
                .average()
                .orElse(0);
    }

    private void foot() {
        lines.add("");
        lines.add(
                "# days you can count on in 8 springs of 10, + in 5 of 10, - in 2 of 10, . never. Rain is the average.");
        lines.add(
                "An estimate from rain and temperatures. Look at the ground before you drive on it: wheels compact wet");
        lines.add("soil for years, and a planter that sinks in may tip over or need pulling out.");
    }
}

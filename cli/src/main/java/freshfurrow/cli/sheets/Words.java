package freshfurrow.cli.sheets;

import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.sheets.Row.Blank;
import freshfurrow.cli.sheets.Row.Part;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Activity;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the steps of rigs and planters have in common: times, places and room to write, on one date. */
record Words(PlanIndex index, LocalDate date, Figures figures) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private static final DateTimeFormatter OTHER_DAY = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    /** When an activity begins, or what of it falls on the date. */
    String begins(Activity activity) {
        return isSinceTheDayBefore(activity) ? spans(activity) : CLOCK.format(activity.start());
    }

    /** From when to when. */
    String spans(Activity activity) {
        boolean since = isSinceTheDayBefore(activity);
        boolean until = activity.end().isAfter(date.plusDays(1).atStartOfDay());
        if (since && until) {
            return "all day";
        }
        if (since) {
            return "to " + CLOCK.format(activity.end());
        }
        return until
                ? "from " + CLOCK.format(activity.start())
                : CLOCK.format(activity.start()) + "–" + CLOCK.format(activity.end());
    }

    private boolean isSinceTheDayBefore(Activity activity) {
        return activity.start().toLocalDate().isBefore(date);
    }

    Optional<String> useBy(LocalDateTime time) {
        return Optional.of(time.toLocalDate().isEqual(date) ? time(time) : OTHER_DAY.format(time));
    }

    String time(LocalDateTime time) {
        return Figures.clock(time, date);
    }

    Part place(String id) {
        return Part.name(index.label(id));
    }

    Blank volume() {
        return new Blank(figures.units().volume().symbol());
    }

    Blank mass() {
        return new Blank(figures.units().mass().symbol());
    }

    Blank area() {
        return new Blank(figures.units().area().symbol());
    }

    /** Parts with the place behind them, unless it is where the machine is already known to be. */
    List<Part> at(Optional<String> known, String place, Part... parts) {
        List<Part> all = new ArrayList<>(List.of(parts));
        if (!known.equals(Optional.of(place))) {
            all.add(Part.text(" at "));
            all.add(place(place));
        }
        return all;
    }
}

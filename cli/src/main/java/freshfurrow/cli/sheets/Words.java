package freshfurrow.cli.sheets;

import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.sheets.Row.Blank;
import freshfurrow.cli.sheets.Row.Part;
import freshfurrow.cli.text.CrewClock;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Activity;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the steps of rigs and planters have in common: times, places and room to write, on one date. */
record Words(PlanIndex index, LocalDate date, Figures figures) {
    CrewClock clock() {
        return figures.crewClock(date);
    }

    /** About when an activity begins, or what of it falls on the date. */
    String begins(Activity activity) {
        boolean since = activity.start().toLocalDate().isBefore(date);
        if (!since) {
            return clock().about(activity.start());
        }
        return activity.end().isAfter(date.plusDays(1).atStartOfDay())
                ? "all day"
                : "to " + clock().about(activity.end());
    }

    Optional<String> useBy(LocalDateTime time) {
        return Optional.of(clock().shortBy(time).replace(" am", "\u00a0am").replace(" pm", "\u00a0pm"));
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

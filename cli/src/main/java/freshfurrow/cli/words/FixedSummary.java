package freshfurrow.cli.words;

import freshfurrow.cli.needs.PromisedDay;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.FixedField;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Season;
import freshfurrow.model.text.FieldLabel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is fixed of fields, and what of it no plan can keep, as far as the season file alone says so. */
record FixedSummary(Season season, Figures figures) {

    /** By whom and from when each field is planted that is fixed, an entry each. */
    List<String> entries() {
        return fields().stream()
                .map(field -> name(field) + ": " + FixedField.words(field.fixed()))
                .toList();
    }

    /** What cannot be kept, and what makes a field late, a sentence each. */
    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        for (Field field : fields()) {
            PromisedDay.wetAllDay(season, field)
                    .ifPresent(wet -> cautions.add(name(field) + ": " + FixedField.words(field.fixed())
                            + ", and no plan can keep that: its ground is too wet until " + figures.moment(wet.to())
                            + "."));
            field.fixed().on().filter(field.window().last()::isBefore).ifPresent(day -> cautions.add(late(field)));
        }
        PromisedDay.tooFull(season).forEach(day -> cautions.add(tooFull(day)));
        return cautions;
    }

    private static String late(Field field) {
        return name(field) + ": " + FixedField.words(field.fixed()) + ", which is late: its window closes on "
                + Figures.day(field.window().last()) + ".";
    }

    private static String tooFull(PromisedDay day) {
        String fields = day.fields().stream().map(Field::id).collect(Collectors.joining(", "));
        LocalDate on = day.day();
        return fields + ": fixed to start on " + Figures.day(on) + ", and no plan can keep that: "
                + WorkWords.of(day.machine().work()).noun() + " all but the largest takes "
                + day.machine().id() + " "
                + Figures.span(day.all()) + " at the least, and its day has " + Figures.span(day.hours()) + ".";
    }

    private List<Field> fields() {
        return season.fields().stream()
                .filter(field -> !field.fixed().equals(Fixed.NOT))
                .toList();
    }

    private static String name(Field field) {
        return FieldLabel.of(field.id(), field.name());
    }
}

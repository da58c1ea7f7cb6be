package freshfurrow.cli.needs;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.WetGround;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Fields that one machine is to start on a day.
 *
 * @param all but the one that takes longest are planted in this time at the least, as a machine ends a field before it starts the next
 * @param hours in which the machine works that day, with what it may work longer
 */
public record PromisedDay(Applicator machine, LocalDate day, List<Field> fields, Duration all, Duration hours) {
    public PromisedDay {
        fields = List.copyOf(fields);
    }

    /** Those that no plan can keep, as the others take longer than the day. Days on which rain drives a machine from a field are left out. */
    public static List<PromisedDay> tooFull(Season season) {
        Map<List<Object>, List<Field>> byMachineAndDay = new LinkedHashMap<>();
        for (Field field : season.fields()) {
            List<Applicator> may = machines(season, field);
            field.fixed()
                    .on()
                    .filter(day -> may.size() == 1 && !closesOn(season, field, day))
                    .ifPresent(day -> byMachineAndDay
                            .computeIfAbsent(List.of(may.get(0), day), none -> new ArrayList<>())
                            .add(field));
        }
        return byMachineAndDay.entrySet().stream()
                .map(entry -> of(
                        (Applicator) entry.getKey().get(0),
                        (LocalDate) entry.getKey().get(1),
                        entry.getValue()))
                .filter(day -> day.all.compareTo(day.hours) > 0)
                .toList();
    }

    /** The time in which a field's ground is too wet, where that leaves no machine an hour of the day that it is fixed to. */
    public static Optional<WetGround> wetAllDay(Season season, Field field) {
        List<WetGround> wet = WetGround.of(season, field.ground());
        return field.fixed()
                .on()
                .filter(day -> machines(season, field).stream()
                        .flatMap(machine -> spans(machine).stream())
                        .allMatch(span -> wet.stream()
                                .anyMatch(its -> !its.from().isAfter(at(day, span.startS()))
                                        && !its.to().isBefore(at(day, span.endS())))))
                .flatMap(day -> wet.stream()
                        .filter(its -> its.from().isBefore(day.plusDays(1).atStartOfDay()))
                        .reduce((sooner, later) -> later));
    }

    private static PromisedDay of(Applicator machine, LocalDate day, List<Field> fields) {
        double longest = fields.stream()
                .mapToDouble(field -> PlantingDays.seconds(machine, field))
                .max()
                .orElse(0);
        double all = fields.stream()
                .mapToDouble(field -> PlantingDays.seconds(machine, field))
                .sum();
        double moves = (double) machine.moveTimeS() * (fields.size() - 1);
        long hours = spans(machine).stream()
                .mapToLong(span -> (long) span.endS() - span.startS())
                .sum();
        return new PromisedDay(
                machine,
                day,
                fields,
                Duration.ofSeconds((long) Math.floor(all - longest + moves)),
                Duration.ofSeconds(hours + machine.overtimeS()));
    }

    private static List<DaySpan> spans(Applicator machine) {
        return machine.hours().within(machine.applyHours()).orElseThrow().spans();
    }

    private static List<Applicator> machines(Season season, Field field) {
        return season.applicators().stream().filter(field::allows).toList();
    }

    private static boolean closesOn(Season season, Field field, LocalDate day) {
        return WetGround.of(season, field.ground()).stream()
                .anyMatch(its -> its.from().toLocalDate().equals(day));
    }

    private static LocalDateTime at(LocalDate day, int second) {
        return day.atStartOfDay().plusSeconds(second);
    }
}

package freshfurrow.cli.changes;

import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.WetGround;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A field that is planted by another planter, or begun on another day, than in the plan before.
 *
 * @param to empty when it is not planted any more
 * @param why one clause
 */
record MovedField(Field field, Standing.Promise from, Optional<Standing.Promise> to, String why) {
    private static final int MOST_NAMED = 3;
    /** In the order of the days of the plan before. */
    static List<MovedField> of(Season left, Map<String, Standing.Promise> before, Map<String, Standing.Promise> after) {
        List<MovedField> moved = new ArrayList<>();
        for (Field field : left.fields()) {
            Standing.Promise from = before.get(field.id());
            Optional<Standing.Promise> to = Optional.ofNullable(after.get(field.id()));
            if (from != null && !to.equals(Optional.of(from))) {
                moved.add(new MovedField(field, from, to, why(left, field, to, before, after)));
            }
        }
        moved.sort(Comparator.comparing(one -> one.from().day()));
        return List.copyOf(moved);
    }

    private static String why(
            Season left,
            Field field,
            Optional<Standing.Promise> to,
            Map<String, Standing.Promise> before,
            Map<String, Standing.Promise> after) {
        Standing.Promise from = before.get(field.id());
        if (to.isEmpty()) {
            return "no longer " + WorkWords.of(field.work()).done();
        }
        LocalDate day = from.day();
        Optional<LocalDate> wetUntil = wetUntil(left, field, day);
        if (wetUntil.isPresent()) {
            return "too wet until " + wetUntil.get();
        }
        boolean down = left.outages().stream()
                .anyMatch(outage ->
                        outage.machine().equals(from.planter()) && overlaps(outage.from(), outage.until(), day));
        if (down) {
            return from.planter() + " is down";
        }
        boolean rigDown = left.outages().stream()
                .anyMatch(outage -> left.hasRig(outage.machine()) && overlaps(outage.from(), outage.until(), day));
        if (rigDown) {
            return "a rig is down";
        }
        if (to.get().day().isBefore(day)) {
            boolean foundFit = field.judged().stream()
                    .reduce((one, later) -> later)
                    .filter(Judgement::isFit)
                    .isPresent();
            return foundFit ? "found fit" : "moved up into free time";
        }
        return to.get().day().equals(day)
                ? "moved to another " + WorkWords.of(field.work()).machine()
                : pushedBack(left, from, before, after);
    }

    /** By the fields that its planter now starts on its day, and did not before. */
    private static String pushedBack(
            Season left,
            Standing.Promise from,
            Map<String, Standing.Promise> before,
            Map<String, Standing.Promise> after) {
        List<String> others = left.fields().stream()
                .map(Field::id)
                .filter(other -> from.equals(after.get(other)) && !from.equals(before.get(other)))
                .toList();
        if (others.isEmpty()) {
            return "pushed back by other work";
        }
        return "pushed back by " + String.join(", ", others.subList(0, Math.min(MOST_NAMED, others.size())))
                + (others.size() > MOST_NAMED ? " and " + (others.size() - MOST_NAMED) + " more" : "");
    }

    /** The day from which on a field that is wet on some day bears machines again. */
    static Optional<LocalDate> wetUntil(Season left, Field field, LocalDate day) {
        return WetGround.of(left, field.ground()).stream()
                .filter(wet -> overlaps(wet.from(), wet.to(), day))
                .map(wet -> wet.to().toLocalDate())
                .findFirst();
    }

    private static boolean overlaps(LocalDateTime from, LocalDateTime until, LocalDate day) {
        return from.isBefore(day.plusDays(1).atStartOfDay()) && until.isAfter(day.atStartOfDay());
    }
}

package freshfurrow.model.read;

import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Work;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is fixed of fields: by whom each is planted, and when it is begun. What no plan could keep is a problem. */
final class FixedReader {
    private final Map<Work, Set<String>> machines;
    private final Optional<LocalDate> first;
    private final Optional<LocalDate> last;
    private final ClosedDays closed;
    private final List<CompostLot> compost;
    private final boolean mayGoWithout;

    /**
     * @param machines ids of all machines that do a work, right or wrong
     * @param mayGoWithout whether fields may be planted without extract
     */
    FixedReader(
            Map<Work, Set<String>> machines,
            Optional<LocalDate> first,
            Optional<LocalDate> last,
            ClosedDays closed,
            List<CompostLot> compost,
            boolean mayGoWithout) {
        this.machines = machines;
        this.first = first;
        this.last = last;
        this.closed = closed;
        this.compost = compost;
        this.mayGoWithout = mayGoWithout;
    }

    /**
     * The fields with what is fixed of them.
     *
     * @param fixed by id of the field
     * @param known ids of all fields, right or wrong; empty when they could not be read
     */
    List<Field> read(Map<String, Keys> fixed, List<Field> fields, Optional<List<String>> known) {
        fixed.forEach((id, keys) -> {
            if (known.isPresent() && !known.get().contains(id)) {
                keys.problems().add(keys.place(), "there is no field " + id, FieldReader.unknown(id, known.get()));
            }
            if (!keys.has("planter") && !keys.has("sprayer") && !keys.has("on")) {
                keys.problems()
                        .add(
                                keys.place(),
                                "fixes nothing",
                                "write planter, or on, or both, like {planter: P1, on: 2027-05-04}");
            }
        });
        List<Field> all = fields.stream()
                .map(field -> Optional.ofNullable(fixed.get(field.id()))
                        .map(keys -> field.change().fixed(fixed(keys, field)).field())
                        .orElse(field))
                .toList();
        fixed.values().forEach(Keys::refuseOthers);
        return all;
    }

    private Fixed fixed(Keys keys, Field field) {
        String machine = field.work() == Work.SPRAY ? "sprayer" : "planter";
        Collection<String> known = machines.getOrDefault(field.work(), Set.of());
        Optional<String> planter = keys.text(machine);
        planter.ifPresent(id -> {
            if (!known.contains(id)) {
                keys.problem(machine, "there is no " + machine + " " + id, FieldReader.unknown(id, known));
            } else if (!field.planters().isEmpty() && !field.planters().contains(id)) {
                keys.problem(
                        machine,
                        id + " may not " + (field.work() == Work.SPRAY ? "spray " : "plant ") + field.id()
                                + ", which is for "
                                + String.join(
                                        ", ", field.planters().stream().sorted().toList()),
                        "name one of those, or let " + id + " do it");
            }
        });
        Optional<LocalDate> on = keys.node("on").flatMap(node -> Times.date(node, keys.problems()));
        on.ifPresent(day -> check(keys, field, day));
        return new Fixed(planter, on);
    }

    private void check(Keys keys, Field field, LocalDate day) {
        if (first.filter(day::isBefore).isPresent() || last.filter(day::isAfter).isPresent()) {
            keys.problem(
                    "on",
                    day + " is not in the season " + first.orElse(day) + "/" + last.orElse(day),
                    "choose a day of the season");
        } else if (closed.contains(day)) {
            keys.problem("on", "no machine works on " + day, "choose an open day, or open this one");
        } else if (day.isBefore(field.window().first())) {
            keys.problem(
                    "on",
                    "the window of " + field.id() + " opens on "
                            + field.window().first() + ", after " + day,
                    "choose a later day, or open the window sooner");
        } else if (!(mayGoWithout && field.work() == Work.PLANT)
                && !compost.isEmpty()
                && compost.stream().allMatch(lot -> lot.from().isAfter(day))) {
            keys.problem("on", "there is no compost on hand on " + day, "choose a later day, or have a lot sooner");
        }
    }
}

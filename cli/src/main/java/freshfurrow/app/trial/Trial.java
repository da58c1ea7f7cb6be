package freshfurrow.app.trial;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** A plan with which things are tried out. For use by any threads. */
public final class Trial {
    private final Season season;
    private final Plan plan;
    private final PlantingOrders orders;
    private final Map<String, Begun> before;

    private Trial(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
        orders = PlantingOrders.of(
                plan, season.applicators().stream().map(Applicator::id).toList());
        before = Begun.inPlan(plan);
    }

    /**
     * A plan to try things out with.
     *
     * @throws Refused when plan or season cannot be used, or the one is not of the other
     */
    public static Trial of(GivenPlan given, SeasonOfPlan of) {
        Plan plan = given.read();
        return new Trial(of.read(given.file(), plan), plan);
    }

    /** What is left of the season in the plan. */
    public Season season() {
        return season;
    }

    /** The plan that is followed. */
    public Plan plan() {
        return plan;
    }

    /**
     * The plan with fields put elsewhere, one after the other.
     *
     * @throws Refused when a field or machine is not there, the machine may not do the field, or it cannot be fixed to the day
     */
    public Tried with(List<Placing> placings) {
        Season tried = season;
        PlantingOrders lists = orders;
        for (Placing placing : placings) {
            Field field = field(placing);
            int machine = machine(placing, field);
            if (placing.on().isPresent()) {
                tried = withFixed(
                        tried,
                        field,
                        season.applicators().get(machine).id(),
                        placing.on().get());
            }
            lists = new Places(CompiledSeason.of(tried), plan)
                    .with(lists, season.fields().indexOf(field), machine, placing);
        }
        Plan played = played(CompiledSeason.of(tried), lists);
        return new Tried(tried, played, moved(played));
    }

    private Plan played(CompiledSeason compiled, PlantingOrders lists) {
        return plan.start().isPresent()
                ? PlanRecorder.record(
                        compiled, lists, plan.season(), plan.start().get())
                : PlanRecorder.record(compiled, lists, plan.season());
    }

    private Field field(Placing placing) {
        return season.fields().stream()
                .filter(field -> field.id().equals(placing.field()))
                .findAny()
                .orElseThrow(() -> new Refused(new PlanRefusal.NoField(
                        placing.field(), season.fields().stream().map(Field::id).toList())));
    }

    private int machine(Placing placing, Field field) {
        List<Applicator> machines = season.applicators();
        String id = placing.machine()
                .or(() -> Optional.ofNullable(before.get(field.id())).map(Begun::machine))
                .orElseGet(() -> machines.stream()
                        .filter(machine -> field.allows(machine))
                        .map(Applicator::id)
                        .findFirst()
                        .orElse(""));
        int index = machines.stream().map(Applicator::id).toList().indexOf(id);
        if (index < 0 || !field.allows(machines.get(index))) {
            throw new Refused(new PlanRefusal.NotForMachine(field.id(), id));
        }
        return index;
    }

    /** Refuses what the season file would not be allowed to say. */
    private static Season withFixed(Season tried, Field field, String machine, LocalDate on) {
        if (on.isBefore(tried.first())
                || on.isAfter(tried.last())
                || tried.closed().contains(on)) {
            throw new Refused(new PlanRefusal.ClosedDay(on));
        }
        if (on.isBefore(field.window().first())) {
            throw new Refused(
                    new PlanRefusal.BeforeWindow(field.id(), on, field.window().first()));
        }
        if (!tried.mayGoWithout(field)
                && !tried.compost().isEmpty()
                && tried.compost().stream().allMatch(lot -> lot.from().isAfter(on))) {
            throw new Refused(new PlanRefusal.NoCompostYet(on));
        }
        return tried.change()
                .fields(tried.fields().stream()
                        .map(each -> each.id().equals(field.id())
                                ? each.change()
                                        .fixed(new Fixed(Optional.of(machine), Optional.of(on)))
                                        .field()
                                : each)
                        .toList())
                .season();
    }

    private List<Moved> moved(Plan played) {
        Map<String, Begun> after = Begun.inPlan(played);
        List<Moved> moved = new ArrayList<>();
        Stream.concat(before.keySet().stream(), after.keySet().stream())
                .distinct()
                .filter(id -> !Objects.equals(before.get(id), after.get(id)))
                .forEach(id -> moved.add(
                        new Moved(id, Optional.ofNullable(before.get(id)), Optional.ofNullable(after.get(id)))));
        return moved;
    }
}

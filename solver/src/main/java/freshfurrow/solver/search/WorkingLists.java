package freshfurrow.solver.search;

import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.Visit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A schedule's lists as they are worked on without the solver library: each move changes them at once, and all since a step can be voided. */
final class WorkingLists implements Positions, ListMoves<Boolean> {
    private final Schedule schedule;
    private final List<List<Visit>> atStep = new ArrayList<>();
    private final @Nullable PlanterList[] listOf;

    WorkingLists(Schedule schedule) {
        this.schedule = schedule;
        listOf = new PlanterList[schedule.visits().size()];
        for (PlanterList list : schedule.lists()) {
            atStep.add(List.copyOf(list.visits()));
            list.visits().forEach(visit -> listOf[visit.entry()] = list);
        }
    }

    /** Takes the lists as they are now for those of a step. */
    void keep() {
        for (PlanterList list : schedule.lists()) {
            if (!list.visits().equals(atStep.get(list.planter()))) {
                atStep.set(list.planter(), List.copyOf(list.visits()));
            }
        }
    }

    /** Puts back the lists of the last step. */
    void undo() {
        List<PlanterList> changed = schedule.lists().stream()
                .filter(list -> !list.visits().equals(atStep.get(list.planter())))
                .toList();
        for (PlanterList list : changed) {
            list.visits().forEach(visit -> listOf[visit.entry()] = null);
        }
        for (PlanterList list : changed) {
            list.visits().clear();
            put(list, 0, atStep.get(list.planter()));
        }
    }

    /** Fields that stand in no list. */
    List<Integer> leftOut() {
        List<Integer> fields = new ArrayList<>();
        for (int field = 0; field < schedule.season().fieldCount(); field++) {
            if (listOf(standing(field)) == null) {
                fields.add(field);
            }
        }
        return fields;
    }

    Visit remove(PlanterList list, int index) {
        Visit visit = list.visits().remove(index);
        listOf[visit.entry()] = null;
        return visit;
    }

    private void put(PlanterList list, int index, List<Visit> visits) {
        list.visits().addAll(index, visits);
        visits.forEach(visit -> listOf[visit.entry()] = list);
    }

    private List<Visit> take(PlanterList list, int begin, int end) {
        List<Visit> taken = new ArrayList<>();
        for (int i = begin; i < end; i++) {
            taken.add(remove(list, begin));
        }
        return taken;
    }

    @Override
    public Schedule schedule() {
        return schedule;
    }

    @Override
    public @Nullable PlanterList listOf(Visit visit) {
        return listOf[visit.entry()];
    }

    @Override
    public int indexOf(Visit visit) {
        PlanterList list = listOf[visit.entry()];
        return list == null ? -1 : list.visits().indexOf(visit);
    }

    @Override
    public Boolean none() {
        return false;
    }

    @Override
    public Boolean assign(Visit visit, PlanterList to, int index) {
        put(to, index, List.of(visit));
        return true;
    }

    @Override
    public Boolean replace(PlanterList list, int index, Visit by) {
        remove(list, index);
        return assign(by, list, index);
    }

    @Override
    public Boolean change(PlanterList from, int fromIndex, PlanterList to, int index) {
        return assign(remove(from, fromIndex), to, index);
    }

    @Override
    public Boolean changeRun(PlanterList from, int fromIndex, int run, PlanterList to, int index, boolean turned) {
        List<Visit> taken = take(from, fromIndex, fromIndex + run);
        if (turned) {
            Collections.reverse(taken);
        }
        put(to, index, taken);
        return true;
    }

    @Override
    public Boolean swap(PlanterList one, int oneIndex, PlanterList other, int otherIndex) {
        Visit ofOne = one.visits().get(oneIndex);
        Visit ofOther = other.visits().get(otherIndex);
        one.visits().set(oneIndex, ofOther);
        other.visits().set(otherIndex, ofOne);
        listOf[ofOther.entry()] = one;
        listOf[ofOne.entry()] = other;
        return true;
    }

    @Override
    public Boolean turn(PlanterList list, int begin, int end) {
        Collections.reverse(list.visits().subList(begin, end));
        return true;
    }

    @Override
    public Boolean exchangeRests(PlanterList one, int oneRest, PlanterList other, int otherRest) {
        List<Visit> ofOne = take(one, oneRest, one.visits().size());
        List<Visit> ofOther = take(other, otherRest, other.visits().size());
        put(one, oneRest, ofOther);
        put(other, otherRest, ofOne);
        return true;
    }
}

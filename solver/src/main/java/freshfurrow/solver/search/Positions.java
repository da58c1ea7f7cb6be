package freshfurrow.solver.search;

import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.Visit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where each visit stands in the schedule that is being worked on. */
interface Positions {
    Schedule schedule();

    /** The list that the visit stands in; null when in none. */
    @Nullable
    PlanterList listOf(Visit visit);

    /** The visit of a field that stands in a list; where none does, the one with extract. */
    default Visit standing(int field) {
        List<Visit> visits = schedule().visits();
        Visit visit = visits.get(field);
        if (!schedule().season().mayGoWithout() || listOf(visit) != null) {
            return visit;
        }
        Visit without = otherOf(visit);
        return listOf(without) == null ? visit : without;
    }

    /** The other visit of a field that may be planted without extract. */
    default Visit otherOf(Visit visit) {
        int field = visit.field();
        return schedule()
                .visits()
                .get(visit.isWithoutExtract() ? field : schedule().season().without(field));
    }

    /** Index in its list, of a visit that stands in one. */
    int indexOf(Visit visit);

    default boolean allows(PlanterList list, Visit visit) {
        return schedule().season().allows(list.planter(), visit.field());
    }

    /** Whether the planter of {@code to} may plant all the visits from one index of a list to before another. */
    default boolean allows(PlanterList to, PlanterList from, int begin, int end) {
        for (int i = begin; i < end; i++) {
            if (!allows(to, from.visits().get(i))) {
                return false;
            }
        }
        return true;
    }
}

package freshfurrow.solver.search;

import ai.timefold.solver.core.impl.domain.variable.ListVariableStateSupply;
import ai.timefold.solver.core.impl.domain.variable.descriptor.ListVariableDescriptor;
import ai.timefold.solver.core.impl.score.director.InnerScoreDirector;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.Visit;
import org.jspecify.annotations.Nullable;

/** Where each visit stands in the schedule that is being worked on. */
final class Positions {
    private final Schedule schedule;
    private final ListVariableDescriptor<Schedule> variable;
    private final ListVariableStateSupply<Schedule, Object, Object> state;

    Positions(InnerScoreDirector<Schedule, ?> director) {
        schedule = director.getWorkingSolution();
        variable = director.getSolutionDescriptor().getListVariableDescriptor();
        state = director.getListVariableStateSupply(variable);
    }

    Schedule schedule() {
        return schedule;
    }

    ListVariableDescriptor<Schedule> variable() {
        return variable;
    }

    /** The list that the visit stands in; null when in none. */
    @Nullable
    PlanterList listOf(Visit visit) {
        return (PlanterList) state.getInverseSingleton(visit);
    }

    /** Index in its list, of a visit that stands in one. */
    int indexOf(Visit visit) {
        return state.getIndex(visit);
    }

    boolean allows(PlanterList list, Visit visit) {
        return schedule.season().allows(list.planter(), visit.field());
    }

    /** Whether the planter of {@code to} may plant all the visits from one index of a list to before another. */
    boolean allows(PlanterList to, PlanterList from, int begin, int end) {
        for (int i = begin; i < end; i++) {
            if (!allows(to, from.visits().get(i))) {
                return false;
            }
        }
        return true;
    }
}

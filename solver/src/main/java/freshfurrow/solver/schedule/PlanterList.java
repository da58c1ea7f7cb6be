package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.variable.PlanningListVariable;
import java.util.ArrayList;
import java.util.List;

/** The fields that one planter plants, in their order. */
@PlanningEntity
public final class PlanterList {
    @PlanningId
    private int planter;

    @PlanningListVariable(allowsUnassignedValues = true)
    private List<Visit> visits = new ArrayList<>();

    /** For the solver, which makes copies. */
    PlanterList() {}

    PlanterList(int planter, List<Visit> visits) {
        this.planter = planter;
        this.visits = new ArrayList<>(visits);
    }

    /** Index of the planter in the season's planters. */
    public int planter() {
        return planter;
    }

    public List<Visit> visits() {
        return visits;
    }
}

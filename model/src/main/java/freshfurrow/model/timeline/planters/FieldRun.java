package freshfurrow.model.timeline.planters;

import freshfurrow.model.timeline.state.PlanterStates;
import freshfurrow.model.timeline.tables.FieldTable;

/** The fields that the planter which asks for a load has before it. */
public final class FieldRun {
    private final FieldTable fields;
    private final LoadRequest request;
    private final PlanterStates planters;
    private final FieldOrder order;

    public FieldRun(FieldTable fields, LoadRequest request, PlanterStates planters, FieldOrder order) {
        this.fields = fields;
        this.request = request;
        this.planters = planters;
        this.order = order;
    }

    /** Area of all fields up to the end of the one in which an area ends; less than that where the list ends, dm2. */
    public long endDm2(long dm2) {
        int planter = request.planter();
        int i = planters.index(planter);
        long end = planters.leftDm2(planter);
        int size = order.size(planter);
        while (end < dm2 && ++i < size) {
            end += fields.areaDm2(order.field(planter, i));
        }
        planters.lookedAt(planter, i);
        return end;
    }

    /** Area of all fields before the one in which an area ends, dm2. */
    public long beginDm2(long dm2) {
        int planter = request.planter();
        int i = planters.index(planter);
        long begin = 0;
        long end = planters.leftDm2(planter);
        int size = order.size(planter);
        while (end < dm2 && ++i < size) {
            begin = end;
            end += fields.areaDm2(order.field(planter, i));
        }
        planters.lookedAt(planter, i);
        return begin;
    }

    /** Area of the fields of the recipe up to the first of another, as far as {@code enough}, dm2. */
    public long dm2(long enough) {
        int planter = request.planter();
        int recipe = request.recipe();
        int i = planters.index(planter);
        long run = planters.leftDm2(planter);
        int size = order.size(planter);
        while (run < enough && ++i < size && order.recipe(planter, i) == recipe) {
            run += fields.areaDm2(order.field(planter, i));
        }
        planters.lookedAt(planter, i);
        return run;
    }
}

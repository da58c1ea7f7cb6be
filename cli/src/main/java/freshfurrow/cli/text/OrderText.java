package freshfurrow.cli.text;

import freshfurrow.cli.day.MixOrder;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.model.plan.Plan;
import java.util.stream.Collectors;

/** Orders for mix that is made already, in words. */
public record OrderText(PlanIndex index, Figures figures, CrewClock clock) {
    /** What stands above them. */
    public static final String HEADING = "First: mix that is already made";

    /** One order. */
    public String text(MixOrder order) {
        if (order instanceof MixOrder.Apply apply) {
            return inTank(apply.load(), apply)
                    + index.workOf(apply.load().planter()).key() + " "
                    + apply.fields().stream().map(index::label).collect(Collectors.joining(", "))
                    + " with it, the last by about " + clock.lastDrop(apply.load())
                    + (apply.load().dumpedL() > 1
                            ? "; drain the " + figures.volume(apply.load().dumpedL())
                                    + " left over where it can do no harm"
                            : "");
        }
        if (order instanceof MixOrder.DrainTank drain) {
            return inTank(drain.load(), drain)
                    + "drain it where it can do no harm; by this plan no field gets it in time";
        }
        if (order instanceof MixOrder.Bring bring) {
            return onRig(bring.areaHa(), bring) + "take it to " + bring.planter() + " at "
                    + index.label(bring.transfer().at()) + " by about "
                    + clock.about(bring.transfer().start());
        }
        if (order instanceof MixOrder.DrainRig drain) {
            return onRig(drain.areaHa(), drain) + "drain it where it can do no harm; by this plan no "
                    + WorkWords.of(index.plan()).machine() + " gets it in time";
        }
        throw new IllegalArgumentException("no words for " + order);
    }

    private String inTank(Plan.Load load, MixOrder order) {
        return order.machine() + " has " + figures.volume(load.litres()) + " of load " + load.id()
                + " in its tank (use by " + clock.by(order.useBy()) + "): ";
    }

    private String onRig(double areaHa, MixOrder order) {
        return order.machine() + " has mix for " + figures.area(areaHa) + " on board (use by " + clock.by(order.useBy())
                + "): ";
    }
}

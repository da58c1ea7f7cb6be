package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.day.WorkDates;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;

/** A day between the first and the last on which machines of a plan work. */
public record DayOfPlan(Plan plan, LocalDate day) {
    /**
     * Looks for the day.
     *
     * @throws Refused when the plan cannot be read, or has no such day
     */
    public static DayOfPlan of(GivenPlan given, LocalDate day) {
        Plan plan = given.read();
        WorkDates dates = WorkDates.of(plan).orElseThrow(() -> new Refused(new PlanRefusal.NoWork()));
        if (!dates.contains(day)) {
            throw new Refused(new PlanRefusal.NoWorkOn(day, dates.first(), dates.last()));
        }
        return new DayOfPlan(plan, day);
    }
}

package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.refusal.PlanRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.day.MachineDay;
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
        WorkDates dates = dates(plan);
        if (!dates.contains(day)) {
            throw new Refused(new PlanRefusal.NoWorkOn(day, dates.first(), dates.last()));
        }
        return new DayOfPlan(plan, day);
    }

    /**
     * Looks for the first day with work from today on.
     *
     * @throws Refused when the plan cannot be read, or has no more work
     */
    public static DayOfPlan next(GivenPlan given, LocalDate today) {
        Plan plan = given.read();
        WorkDates dates = dates(plan);
        return MachineDay.withOrders(plan).stream()
                .map(MachineDay::date)
                .filter(date -> !date.isBefore(today))
                .findFirst()
                .map(date -> new DayOfPlan(plan, date))
                .orElseThrow(() -> new Refused(new PlanRefusal.NoMoreWork(today, dates.first(), dates.last())));
    }

    private static WorkDates dates(Plan plan) {
        return WorkDates.of(plan).orElseThrow(() -> new Refused(new PlanRefusal.NoWork()));
    }
}

package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import java.util.List;
import java.util.Optional;

/** When machines come to fields: not onto wet ground, and planters not days before they work there. */
final class ComingOut {
    private final Evidence evidence;

    ComingOut(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.all(Activity.Move.class).forEach(this::openOnArrival);
        evidence.plan.planters().forEach((id, its) -> {
            Applicator planter = evidence.planters.get(id);
            if (planter != null) {
                daysBefore(planter, its);
            }
        });
    }

    private void openOnArrival(Evidence.Done<Activity.Move> done) {
        if (isWetAt(done.activity().to(), evidence.end(done.activity()))) {
            evidence.report(
                    Rule.OPEN_ON_ARRIVAL,
                    done.where(),
                    done.activity().to() + " is too wet when it arrives at "
                            + done.activity().end());
        }
    }

    private void daysBefore(Applicator planter, Plan.PlanterPlan its) {
        List<Activity> activities = its.activities();
        for (int i = 0; i < activities.size(); i++) {
            if (activities.get(i) instanceof Activity.Move move) {
                activities.subList(i + 1, activities.size()).stream()
                        .filter(activity -> !(activity instanceof Activity.Wait))
                        .findFirst()
                        .filter(work -> !(work instanceof Activity.Move))
                        .ifPresent(work -> daysBefore(planter, move, work));
            }
        }
    }

    private void daysBefore(Applicator planter, Activity.Move move, Activity work) {
        long workDay = evidence.start(work) / DAY_S * DAY_S;
        List<WorkCalendar.Period> hours = evidence.days.work(planter);
        Optional<Long> lastWorkingDay = hours.stream()
                .filter(period -> period.start() < workDay)
                .map(period -> (Math.min(period.end(), workDay) - 1) / DAY_S * DAY_S)
                .reduce((one, later) -> later);
        if (lastWorkingDay.isEmpty() || evidence.start(move) >= lastWorkingDay.get()) {
            return;
        }
        long from = lastWorkingDay.get();
        long lasts = evidence.lasts(move);
        boolean couldComeLater = hours.stream().anyMatch(period -> {
            long arrival = Math.min(period.end(), evidence.start(work));
            long setOff = Math.max(period.start(), from);
            return arrival - lasts >= setOff && !isWetAt(move.to(), arrival);
        });
        if (couldComeLater) {
            evidence.report(
                    Rule.COMING_OUT,
                    new Evidence.Done<Activity>(planter.id(), move).where(),
                    "it drives to " + move.to() + " days before " + work.start() + ", when it first works there");
        }
    }

    private boolean isWetAt(String place, long time) {
        Field field = evidence.fields.get(place);
        return field != null && evidence.calendar.isWet(field, time);
    }
}

package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Sprayer;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/** Whether planters wait for what they say, from when and until when they say. */
final class Waits {
    private final Evidence evidence;

    Waits(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.plan.planters().forEach((planter, its) -> {
            List<Activity> activities = its.activities();
            @Nullable Field next = null;
            for (int i = activities.size() - 1; i >= 0; i--) {
                @Nullable Activity after = i + 1 < activities.size() ? activities.get(i + 1) : null;
                if (activities.get(i) instanceof Activity.Planting plant) {
                    next = evidence.fields.get(plant.field());
                } else if (activities.get(i) instanceof Activity.Wait wait) {
                    var done = new Evidence.Done<>(planter, wait);
                    end(done, after);
                    if (after instanceof Activity.Fill fill) {
                        hours(done, fill);
                    }
                    if (next != null) {
                        field(done, after, next);
                    }
                }
            }
        });
    }

    /** Whether it is for a field that is closed, and not for a load. */
    static boolean isForField(Activity.Wait wait) {
        return wait.why() == WaitReason.WET || wait.why() == WaitReason.WINDOW || wait.why() == WaitReason.SPRAY_HOURS;
    }

    private boolean isFilledAt(@Nullable Activity after, long time) {
        return after instanceof Activity.Fill && evidence.start(after) == time;
    }

    private boolean setsOffAt(@Nullable Activity after, long time) {
        return after instanceof Activity.Move && evidence.start(after) == time;
    }

    private void end(Evidence.Done<Activity.Wait> done, @Nullable Activity after) {
        Activity.Wait wait = done.activity();
        boolean goesOn = after instanceof Activity.Fill
                || after instanceof Activity.Move
                || after instanceof Activity.PlantWithout;
        if (!isForField(wait) && !(goesOn && after.start().equals(wait.end()))) {
            evidence.report(
                    Rule.WAIT_END,
                    done.where(),
                    "it waits until " + wait.end() + ", but is not filled, plants or sets off then");
        }
    }

    /** A planter may wait where it stands for the field to which it then takes its load. */
    private void field(Evidence.Done<Activity.Wait> done, @Nullable Activity after, Field field) {
        long start = evidence.start(done.activity());
        long opens = evidence.calendar.midnight(field.opens());
        boolean wet = evidence.calendar.isWet(field, start);
        boolean calm = maySpray(done.machine(), start);
        long end = evidence.end(done.activity());
        if (isForField(done.activity())
                && !isFilledAt(after, end)
                && !setsOffAt(after, end)
                && (end < opens || evidence.calendar.isWet(field, end) || !maySpray(done.machine(), end))) {
            evidence.report(
                    Rule.WAIT_END,
                    done.where(),
                    "it waits until " + done.activity().end() + ", but " + field.id() + " cannot be planted then");
        }
        switch (done.activity().why()) {
            case WET -> {
                if (!wet) {
                    reason(done, "it waits for a wet field, but " + field.id() + " is not");
                }
            }
            case WINDOW -> {
                if (start >= opens) {
                    reason(done, "it waits for a window, but that of " + field.id() + " is open");
                }
            }
            case SPRAY_HOURS -> {
                if (calm) {
                    reason(done, "it waits for its spray hours, but is in them");
                }
            }
            default -> {
                if (start < opens || wet || !calm) {
                    evidence.report(
                            Rule.WAIT_START,
                            done.where(),
                            "it waits with its field, but "
                                    + (wet || start < opens
                                            ? field.id() + (wet ? " is wet" : " is not open yet")
                                            : "may not spray then"));
                }
            }
        }
    }

    /** Whether it is a planter, or in its spray hours. */
    private boolean maySpray(String machine, long time) {
        return !(evidence.planters.get(machine) instanceof Sprayer sprayer)
                || evidence.calendar.open(sprayer.sprayHours()).stream()
                        .anyMatch(open -> open.start() <= time && time < open.end());
    }

    private void hours(Evidence.Done<Activity.Wait> done, Activity.Fill fill) {
        if (done.activity().why() != WaitReason.HOURS) {
            return;
        }
        OptionalLong fits = firstFit(done, fill);
        if (fits.isPresent() && fits.getAsLong() < evidence.start(fill)) {
            reason(
                    done,
                    "it waits for hours, but both machines could work on the fill from "
                            + evidence.season.time().at(fits.getAsLong()) + " on");
        }
    }

    /** The first moment from the beginning of a wait at which a fill fits one working period of each machine. */
    private OptionalLong firstFit(Evidence.Done<Activity.Wait> done, Activity.Fill fill) {
        Plan.Load load = evidence.loads.get(fill.load());
        var planter = evidence.planters.get(done.machine());
        var rig = load == null ? null : evidence.rigs.get(load.rig());
        if (planter == null || rig == null) {
            return OptionalLong.empty();
        }
        long from = evidence.start(done.activity());
        long lasts = evidence.lasts(fill);
        return evidence.days.work(planter).stream()
                .flatMapToLong(its -> evidence.days.work(rig).stream()
                        .filter(rigs -> {
                            long start = Math.max(from, Math.max(its.start(), rigs.start()));
                            return start + lasts <= Math.min(its.end(), rigs.end());
                        })
                        .mapToLong(rigs -> Math.max(from, Math.max(its.start(), rigs.start()))))
                .min();
    }

    private void reason(Evidence.Done<Activity.Wait> done, String what) {
        evidence.report(Rule.WAIT_REASON, done.where(), what);
    }
}

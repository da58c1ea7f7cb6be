package freshfurrow.cli.text;

import freshfurrow.cli.day.PlannedMachine;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Work;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What a machine's waits mean to its crew on a date: a wait, a break, the end of the day's work, or a machine that stays parked. */
public record CrewWaits(CrewClock clock, PlannedMachine machine) {
    /** How a wait is told on a sheet of one day. */
    public enum Kind {
        /** For what it waits. */
        WAIT,
        /** Outside working hours, within the day. */
        BREAK,
        /** From the day's last work on. */
        DONE,
        /** Since a day before. */
        PARKED
    }

    /** A wait into another day that is shorter goes on with the crew at the machine, as at work by night. */
    private static final Duration LEAST_REST = Duration.ofHours(4);

    public Kind kind(Activity.Wait wait) {
        if (!begins(wait) || until(wait)) {
            boolean rest = wait.span().compareTo(LEAST_REST) >= 0;
            return !rest ? Kind.WAIT : begins(wait) && worksBefore(wait) ? Kind.DONE : Kind.PARKED;
        }
        return wait.why() == WaitReason.HOURS && isFilled() ? Kind.BREAK : Kind.WAIT;
    }

    /** Since when a machine is parked, as {@code " since Mon Apr 19"}; empty when it is since this date. */
    public String since(Activity.Wait wait) {
        return begins(wait) ? "" : " since " + clock.day(wait.start().toLocalDate());
    }

    /**
     * What comes after a wait and when, as {@code next fill about 12:30 pm}; empty when the machine has no more work, or when the
     * day begins with it.
     */
    public Optional<String> then(Activity.Wait wait) {
        if (!begins(wait) && !until(wait) && once(wait.why()).isEmpty()) {
            return Optional.empty();
        }
        List<Activity> all = machine.activities();
        return all.subList(place(wait) + 1, all.size()).stream()
                .filter(Activity::isWork)
                .findFirst()
                .map(next -> "next " + next.kind().noun() + " about " + clock.about(next.start()) + once(wait.why()));
    }

    /** For what a machine waits, to stand behind its place. */
    public String reason(Activity.Wait wait) {
        return switch (wait.why()) {
            case RIG -> " for the rig";
            case WET -> ", too wet to " + words().verb();
            case WINDOW -> " for the " + words().noun() + " window to open";
            case HOURS ->
                isFilled()
                        ? " until work resumes"
                        : then(wait).map(next -> "; " + next).orElse("");
            case COMPOST -> " for compost";
            case WATER -> " for water";
            case SPRAY_HOURS -> " for spray hours";
        };
    }

    private String once(WaitReason why) {
        return switch (why) {
            case WINDOW -> ", once the " + words().noun() + " window is open";
            case WET -> ", once it is dry enough";
            case COMPOST -> ", once there is compost";
            case RIG, HOURS, WATER, SPRAY_HOURS -> "";
        };
    }

    private boolean isFilled() {
        return !machine.kind().isRig();
    }

    private WorkWords words() {
        return WorkWords.of(machine.kind() == PlannedMachine.Kind.SPRAYER ? Work.SPRAY : Work.PLANT);
    }

    private boolean begins(Activity.Wait wait) {
        return !wait.start().toLocalDate().isBefore(clock.date());
    }

    private boolean until(Activity.Wait wait) {
        return wait.end().isAfter(clock.date().plusDays(1).atStartOfDay());
    }

    private boolean worksBefore(Activity.Wait wait) {
        return machine.activities().subList(0, place(wait)).stream()
                .anyMatch(activity ->
                        activity.isWork() && activity.end().isAfter(clock.date().atStartOfDay()));
    }

    private int place(Activity.Wait wait) {
        int place = machine.activities().indexOf(wait);
        if (place < 0) {
            throw new IllegalArgumentException("this wait is not of this machine");
        }
        return place;
    }
}

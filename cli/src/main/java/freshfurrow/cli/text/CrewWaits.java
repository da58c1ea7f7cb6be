package freshfurrow.cli.text;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.WaitReason;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a machine's waits mean to its crew on a date: a wait, a break, the end of the day's work, or a machine that stays parked.
 *
 * @param activities all of the machine, in order
 */
public record CrewWaits(LocalDate date, List<Activity> activities) {
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

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE MMM d", Locale.ENGLISH);
    private static final DateTimeFormatter OTHER_DAY = DateTimeFormatter.ofPattern("EEE MMM d, HH:mm", Locale.ENGLISH);

    public Kind kind(Activity.Wait wait) {
        if (!begins(wait) || until(wait)) {
            boolean rest = wait.span().compareTo(LEAST_REST) >= 0;
            return !rest ? Kind.WAIT : begins(wait) && worksBefore(wait) ? Kind.DONE : Kind.PARKED;
        }
        return wait.why() == WaitReason.HOURS ? Kind.BREAK : Kind.WAIT;
    }

    /** Since when a machine is parked, as {@code " since Mon Apr 19"}; empty when it is since this date. */
    public String since(Activity.Wait wait) {
        return begins(wait) ? "" : " since " + DAY.format(wait.start());
    }

    /** What comes after a wait and when, as {@code next fill 12:30}; empty when the machine has no more work. */
    public Optional<String> then(Activity.Wait wait) {
        return switch (wait.why()) {
            case WINDOW -> Optional.of("planting window opens " + time(wait.end()));
            case WET -> Optional.of("too wet to plant until " + time(wait.end()));
            case RIG, HOURS, COMPOST, WATER ->
                activities.subList(place(wait) + 1, activities.size()).stream()
                        .filter(Activity::isWork)
                        .findFirst()
                        .map(next -> "next " + next.kind().noun() + " " + time(next.start()));
        };
    }

    /** The reason of a wait, to stand behind its place. */
    public static String reason(WaitReason why) {
        return switch (why) {
            case RIG -> " for the rig";
            case WET -> ", too wet to plant";
            case WINDOW -> " for the planting window to open";
            case HOURS -> " until work resumes";
            case COMPOST -> " for compost";
            case WATER -> " for water";
        };
    }

    private boolean begins(Activity.Wait wait) {
        return !wait.start().toLocalDate().isBefore(date);
    }

    private boolean until(Activity.Wait wait) {
        return wait.end().isAfter(date.plusDays(1).atStartOfDay());
    }

    private boolean worksBefore(Activity.Wait wait) {
        return activities.subList(0, place(wait)).stream()
                .anyMatch(activity -> activity.isWork() && activity.end().isAfter(date.atStartOfDay()));
    }

    private int place(Activity.Wait wait) {
        int place = activities.indexOf(wait);
        if (place < 0) {
            throw new IllegalArgumentException("this wait is not of this machine");
        }
        return place;
    }

    private String time(LocalDateTime time) {
        return (time.toLocalDate().equals(date) ? CLOCK : OTHER_DAY).format(time);
    }
}

package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WorkHours;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Predicate;

/** Days on which rigs are out and make and bring no load: what the record says against coming on the day itself. */
final class DaysBefore {
    private final Season season;
    private final Plan plan;
    private final SeasonTables tables;

    DaysBefore(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
        this.tables = CompiledSeason.of(season).tables();
    }

    void areNeeded() {
        for (int r = 0; r < season.rigs().size(); r++) {
            int rig = r;
            List<Activity> done =
                    done(plan.rigs().get(season.rigs().get(r).id()).activities());
            eachDayOut(done, DaysBefore::isForALoad, (first, work) -> rigIsNeeded(rig, done, first, work));
        }
    }

    private interface Check {
        void that(Activity first, Activity work);
    }

    /** Tells of the first activity of each day without the machine's work, and of the work that comes next. */
    private static void eachDayOut(List<Activity> done, Predicate<Activity> isWork, Check check) {
        LocalDate seen = LocalDate.MIN;
        for (int i = 0; i < done.size(); i++) {
            Activity first = done.get(i);
            LocalDate day = first.start().toLocalDate();
            if (!(first instanceof Activity.Move) || day.equals(seen)) {
                continue;
            }
            seen = day;
            if (done.stream().noneMatch(other -> isWork.test(other) && touches(other, day))) {
                done.subList(i, done.size()).stream()
                        .filter(isWork)
                        .findFirst()
                        .ifPresentOrElse(work -> check.that(first, work), () -> assertThat(first)
                                .as("work that comes after")
                                .isNull());
            }
        }
    }

    private static boolean touches(Activity activity, LocalDate day) {
        return activity.start().toLocalDate().equals(day)
                || activity.end().toLocalDate().equals(day);
    }

    private static boolean isForALoad(Activity activity) {
        return activity instanceof Activity.Extract || activity instanceof Activity.Transfer;
    }

    private void rigIsNeeded(int rig, List<Activity> done, Activity first, Activity work) {
        int from = done.indexOf(first);
        Activity transfer = done.subList(from, done.size()).stream()
                .filter(Activity.Transfer.class::isInstance)
                .findFirst()
                .orElse(work);
        int until = done.indexOf(transfer);
        boolean nothingElseTells = done.subList(afterLastWork(done, from), until).stream()
                .noneMatch(activity -> activity instanceof Activity.LoadCompost
                        || (activity instanceof Activity.Draw draw && !givesWaterAllDay(draw.at())));
        if (nothingElseTells) {
            int at = s(transfer.start());
            int lasts = done.subList(from, until).stream()
                    .filter(activity -> !(activity instanceof Activity.SetUp || activity instanceof Activity.CloseUp))
                    .mapToInt(activity -> s(activity.end()) - s(activity.start()))
                    .sum();
            int begins = tables.rigs().hours(rig).latest(at, lasts) - lasts;
            assertThat(begins)
                    .as("what takes %d s from %s to %s begins", lasts, first, transfer)
                    .isLessThan(midnight(at));
        }
    }

    /** What is done for a load may begin days before, and compost be fetched then that there is none of on the day. */
    private static int afterLastWork(List<Activity> done, int from) {
        int begins = from;
        while (begins > 0 && !isForALoad(done.get(begins - 1))) {
            begins--;
        }
        return begins;
    }

    /** A point with hours, a limit or other rigs at its hoses may give less on the day itself; so may a lot of compost. */
    private boolean givesWaterAllDay(String id) {
        WaterPoint point = season.waterPoints().stream()
                .filter(other -> other.id().equals(id))
                .findFirst()
                .orElseThrow();
        return point.hours().equals(WorkHours.ALWAYS)
                && point.dailyLimitL().isEmpty()
                && season.rigs().size() <= point.hoses();
    }

    private static int midnight(int s) {
        return s / Calendars.DAY_S * Calendars.DAY_S;
    }

    private int s(LocalDateTime time) {
        return (int) Duration.between(season.first().atStartOfDay(), time).toSeconds();
    }

    private static List<Activity> done(List<Activity> activities) {
        return activities.stream()
                .filter(activity -> !(activity instanceof Activity.Wait))
                .toList();
    }
}

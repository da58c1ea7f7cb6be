package freshfurrow.cli.export;

import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.CrewClock;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.Steps;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.TimeZone;
import net.fortuna.ical4j.model.TimeZoneRegistryImpl;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/** A plan as a calendar (RFC 5545) with an entry for each machine and day. */
public final class CalendarFile {
    static final String PRODUCT = "-//freshfurrow//season plan//EN";

    /** The library counts characters where the standard counts octets. */
    private static final int UNFOLDED = Integer.MAX_VALUE;

    private final Season season;
    private final PlanIndex index;
    private final Figures figures;
    private final Optional<TimeZone> zone;

    private CalendarFile(Season season, Plan plan) {
        this.season = season;
        index = new PlanIndex(plan);
        figures = new Figures(plan.season().units());
        zone = Optional.ofNullable(
                new TimeZoneRegistryImpl().getTimeZone(season.timezone().getId()));
    }

    /**
     * The calendar as the text of a file. The same season, plan and calendar before always give the same text.
     *
     * @param before the calendar that this one takes the place of: entries that changed get a higher SEQUENCE, those that are
     *     no more are cancelled
     */
    public static String text(Season season, Plan plan, Optional<CalendarBefore> before) {
        return new CalendarFile(season, plan).write(before.orElse(CalendarBefore.NONE));
    }

    private String write(CalendarBefore before) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId(PRODUCT));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        calendar.add(new XProperty("X-WR-CALNAME", plain(season.name()).strip()));
        zone.ifPresent(known -> calendar.add(known.getVTimeZone()));
        Map<String, VEvent> entries = new LinkedHashMap<>();
        MachineDay.allOf(index.plan()).forEach(day -> entries.put(uid(day), entry(day)));
        before.revise(entries, season.first()).forEach(calendar::add);
        try (StringWriter text = new StringWriter()) {
            new CalendarOutputter(true, UNFOLDED).output(calendar, text);
            return ContentLines.fold(text.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private VEvent entry(MachineDay day) {
        VEvent entry = new VEvent(false);
        entry.add(new Uid(uid(day)));
        entry.add(new DtStart<>(moment(day.start().orElseThrow())));
        entry.add(new DtEnd<>(moment(day.end().orElseThrow())));
        entry.add(new Summary(plain(summary(day))));
        entry.add(new Description(description(day)));
        entry.add(ImmutableStatus.VEVENT_CONFIRMED);
        return entry;
    }

    /**
     * The same for a machine on a date in whatever plan of the season, as a UUID of its name (RFC 4122, version 3); the season
     * is told by its name, as all else in it may change.
     */
    private String uid(MachineDay day) {
        String name = String.join(
                "\n",
                "freshfurrow",
                season.name(),
                day.machine().id(),
                day.date().toString());
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }

    /** With the season's time zone, or in UTC when the zone has no definition to go with it. */
    private Temporal moment(LocalDateTime local) {
        ZoneId id = season.timezone();
        return zone.isPresent()
                ? local.atZone(id)
                : local.atZone(id).withZoneSameInstant(ZoneOffset.UTC).toInstant();
    }

    private String summary(MachineDay day) {
        List<String> parts = new ArrayList<>();
        day.each(Activity.Planting.class).stream()
                .collect(Collectors.groupingBy(Activity.Planting::field, LinkedHashMap::new, Collectors.toList()))
                .forEach((field, plantings) ->
                        parts.add(index.label(field) + " " + figures.area(sum(plantings)) + how(field, plantings)));
        if (day.machine().kind().isRig()) {
            int batches = day.each(Activity.Extract.class).size();
            int draws = day.each(Activity.Draw.class).size();
            if (batches > 0) {
                parts.add(Figures.count(batches, "batch", "batches"));
                parts.add(figures.mass(day.each(Activity.Extract.class).stream()
                                .mapToDouble(
                                        extract -> index.batch(extract.batch()).compostKg())
                                .sum())
                        + " of compost");
            }
            if (draws > 0) {
                parts.add(Figures.count(draws, "water trip", "water trips"));
            }
            int loadings = day.each(Activity.LoadCompost.class).size();
            if (loadings > 0) {
                parts.add(Figures.count(loadings, "compost trip", "compost trips"));
            }
        }
        return day.machine().id() + ": " + (parts.isEmpty() ? "drives" : String.join(", ", parts));
    }

    /** What the area of a field does not say of it; nothing where that is planted with extract. */
    private String how(String field, List<Activity.Planting> plantings) {
        if (season.field(field).work() == Work.SPRAY) {
            return " " + WorkWords.of(Work.SPRAY).done();
        }
        List<Activity.Planting> without = plantings.stream()
                .filter(Activity.PlantWithout.class::isInstance)
                .toList();
        if (without.isEmpty()) {
            return "";
        }
        return (without.size() < plantings.size() ? ", " + figures.area(sum(without)) + " of it" : "")
                + " without extract";
    }

    private static double sum(List<Activity.Planting> plantings) {
        return plantings.stream().mapToDouble(Activity.Planting::areaHa).sum();
    }

    private String description(MachineDay day) {
        Steps steps = new Steps(index, day.date(), figures);
        List<String> lines = new ArrayList<>(List.of(CrewClock.RULE));
        steps.of(
                        day.machine(),
                        day.activities().stream()
                                .filter(activity -> isWithin(activity, day))
                                .toList())
                .forEach(step -> lines.add(plain(step.line())));
        lines.add(Cautions.FIRST);
        return String.join("\n", lines);
    }

    /** Waits before the first and after the last work of the day are left out. */
    private static boolean isWithin(Activity activity, MachineDay day) {
        return activity.isWork()
                || (day.start().filter(activity.start()::isBefore).isEmpty()
                        && day.end().filter(activity.end()::isAfter).isEmpty());
    }

    /** Without line breaks and other control characters, which have no place in a calendar's text (RFC 5545, 3.3.11). */
    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}

package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.tables.Scale.DM2_PER_HA;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.journal.ActivityJournal;
import freshfurrow.model.timeline.journal.Without;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A part of a field that is planted without extract, and why.
 *
 * @param planter its id; likewise {@code field}
 * @param areaHa ha, above 0
 */
public record GoneWithout(
        String planter, String field, double areaHa, LocalDateTime start, LocalDateTime end, Reason reason) {
    /** What stands against extract there. */
    public sealed interface Reason {}

    /** Nothing: it is decided so. */
    public record Decided() implements Reason {}

    /**
     * There is no compost.
     *
     * @param until when the next lot is on hand; empty when none is to come
     */
    public record NoCompost(Optional<LocalDateTime> until) implements Reason {}

    /** No rig could bring a load before the season ends. */
    public record NoLoad() implements Reason {}

    /**
     * The planter would wait too long.
     *
     * @param rig id of the one that would fill it soonest
     * @param fill when it would
     * @param waits how much of the planter's working time it would wait for that
     */
    public record LongWait(String rig, LocalDateTime fill, Duration waits) implements Reason {}

    /** Only a load that is too small for a fill was to be had before the day's work or the dry hours ended. */
    public record SmallLoad() implements Reason {}

    /**
     * All that a season plants without extract when it is played out, in the order in which that begins.
     *
     * @throws IllegalArgumentException when a list names a field that the season does not have, or one twice, or when there are
     *     more or fewer lists than planters
     */
    public static List<GoneWithout> all(CompiledSeason season, PlantingOrders orders) {
        PlayedLists lists = PlayedLists.of(season, orders);
        ActivityJournal journal = new ActivityJournal(season.tables());
        new Timeline(season).play(lists.entries(), lists.sizes(), journal);
        return journal.without().stream().map(part -> of(season.season(), part)).toList();
    }

    private static GoneWithout of(Season season, Without part) {
        return new GoneWithout(
                season.applicators().get(part.planter()).id(),
                season.fields().get(part.field()).id(),
                part.dm2() / DM2_PER_HA,
                season.time().at(part.startS()),
                season.time().at(part.endS()),
                reason(season, part));
    }

    private static Reason reason(Season season, Without part) {
        return switch (part.why()) {
            case DECIDED -> new Decided();
            case COMPOST ->
                new NoCompost(
                        part.untilS() >= Calendar.NEVER
                                ? Optional.empty()
                                : Optional.of(season.time().at(part.untilS())));
            case NO_LOAD -> new NoLoad();
            case LONG_WAIT ->
                new LongWait(
                        season.rigs().get(part.rig()).id(),
                        season.time().at(part.untilS()),
                        Duration.ofSeconds(part.waitS()));
            case SMALL_LOAD -> new SmallLoad();
        };
    }
}

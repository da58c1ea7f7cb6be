package freshfurrow.model.timeline;

import static freshfurrow.model.quantity.Factors.MINUTE_S;
import static freshfurrow.model.quantity.Factors.M_PER_KM;
import static freshfurrow.model.timeline.tables.Scale.DM2_PER_HA;
import static freshfurrow.model.timeline.tables.Scale.ML_PER_L;

import freshfurrow.model.plan.Bill;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.KeptTime;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.journal.ActivityJournal;
import freshfurrow.model.timeline.state.Tally;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/** The full record of a season played out: the plan that people read. */
public final class PlanRecorder {
    private final CompiledSeason compiled;
    private final Season season;

    private PlanRecorder(CompiledSeason compiled) {
        this.compiled = compiled;
        this.season = compiled.season();
    }

    /**
     * Plays the season out and records it.
     *
     * @param listsByPlanter ids of fields in the order in which each planter is to plant them, in the season's order of planters
     * @throws IllegalArgumentException when a list names a field that the season does not have, or one twice, or when there are
     *     more or fewer lists than planters
     */
    public static Plan record(CompiledSeason season, List<List<String>> listsByPlanter, SeasonSource source) {
        return record(season, PlantingOrders.withExtract(listsByPlanter), source);
    }

    /**
     * Plays the season out and records it.
     *
     * @throws IllegalArgumentException as for lists
     */
    public static Plan record(CompiledSeason season, PlantingOrders orders, SeasonSource source) {
        return new PlanRecorder(season).record(orders, source, Optional.empty());
    }

    /**
     * Plays out what is left of a season that is under way.
     *
     * @param season what {@link PlanStart#remaining} makes of the whole season
     * @see #record(CompiledSeason, List, SeasonSource)
     */
    public static Plan record(
            CompiledSeason season, List<List<String>> listsByPlanter, SeasonSource source, PlanStart start) {
        return record(season, PlantingOrders.withExtract(listsByPlanter), source, start);
    }

    /** Plays out what is left of a season that is under way. */
    public static Plan record(CompiledSeason season, PlantingOrders orders, SeasonSource source, PlanStart start) {
        return new PlanRecorder(season).record(orders, source, Optional.of(start));
    }

    /**
     * Plays out a season, or what is left of one, until a time. The plan has all that begins before, but for the letting out of
     * mix that is found to be left over later; perhaps some of what begins later; no fields that are not planted; and totals of what it has.
     *
     * @param start what {@link PlanStart#remaining} made the season of; empty when it has not begun
     * @param untilS s since the season's first midnight
     */
    public static Plan recordUntil(
            CompiledSeason season, PlantingOrders orders, SeasonSource source, Optional<PlanStart> start, int untilS) {
        return new PlanRecorder(season).record(orders, source, start, untilS, OptionalLong.empty());
    }

    /**
     * Plays out a season, or what is left of one, with the times that work takes as it turns out: by the season's spread, in the simulated season of a
     * number. What gets too old before it is in the ground is let out, and is no part of what loads applied. A season without spread goes as planned.
     */
    public static Plan recordAsItTurnsOut(
            CompiledSeason season, PlantingOrders orders, SeasonSource source, Optional<PlanStart> start, long number) {
        return recordAsItTurnsOutUntil(season, orders, source, start, Calendar.NEVER, number);
    }

    /** The same until a time, as {@link #recordUntil} does. */
    public static Plan recordAsItTurnsOutUntil(
            CompiledSeason season,
            PlantingOrders orders,
            SeasonSource source,
            Optional<PlanStart> start,
            int untilS,
            long number) {
        return new PlanRecorder(season).record(orders, source, start, untilS, OptionalLong.of(number));
    }

    private Plan record(PlantingOrders orders, SeasonSource source, Optional<PlanStart> start) {
        return record(orders, source, start, Calendar.NEVER, OptionalLong.empty());
    }

    private Plan record(
            PlantingOrders orders, SeasonSource source, Optional<PlanStart> start, int untilS, OptionalLong number) {
        PlayedLists lists = PlayedLists.of(compiled, orders);
        Timeline timeline = new Timeline(compiled);
        number.ifPresent(timeline::turnsOut);
        ActivityJournal journal = new ActivityJournal(compiled.tables());
        timeline.play(lists.entries(), lists.sizes(), journal, wholeDays(untilS));
        List<Plan.Load> loads = journal.loads();

        Map<String, Plan.PlanterPlan> planters = new LinkedHashMap<>();
        for (int p = 0; p < compiled.planterCount(); p++) {
            Applicator planter = season.applicators().get(p);
            planters.put(
                    planter.id(),
                    new Plan.PlanterPlan(
                            planter.work(),
                            planter.on(),
                            planter.tankL(),
                            orders.byPlanter().get(p),
                            orders.byPlanter().get(p).stream()
                                    .filter(orders.withoutExtract()::contains)
                                    .toList(),
                            journal.planterActivities(p)));
        }
        Map<String, Plan.RigPlan> rigs = new LinkedHashMap<>();
        for (int r = 0; r < compiled.tables().rigs().count(); r++) {
            Rig rig = season.rigs().get(r);
            rigs.put(rig.id(), Plan.RigPlan.of(rig, journal.rigActivities(r)));
        }
        List<Plan.Unserved> unserved = untilS < Calendar.NEVER ? List.of() : unserved(journal, lists);
        return new Plan(
                source,
                new Plan.Score(timeline.hard(), timeline.medium(), timeline.soft()),
                totals(timeline),
                planters,
                rigs,
                loads,
                Stream.concat(start.map(PlanStart::batches).orElse(List.of()).stream(), journal.batches().stream())
                        .toList(),
                unserved,
                Optional.empty(),
                List.of(),
                start);
    }

    /** What days end with is known only when all of their work is. */
    private int wholeDays(int untilS) {
        boolean anyKept = season.machines().anyMatch(machine -> !machine.kept().equals(KeptTime.NONE));
        return anyKept && untilS < Calendar.NEVER ? untilS + 2 * Calendars.DAY_S : untilS;
    }

    private List<Plan.Unserved> unserved(ActivityJournal journal, PlayedLists lists) {
        UnservedReasons reasons = new UnservedReasons(compiled, lists.entries(), lists.sizes());
        return journal.unserved().stream()
                .map(left -> new Plan.Unserved(
                        season.fields().get(left.field()).id(), left.dm2() / DM2_PER_HA, reasons.why(left)))
                .toList();
    }

    private Plan.Totals totals(Timeline timeline) {
        long margin = timeline.count(Tally.SMALLEST_MARGIN_S);
        return new Plan.Totals(
                timeline.count(Tally.PLANTED_DM2) / DM2_PER_HA,
                timeline.count(Tally.UNTREATED_DM2) / DM2_PER_HA,
                timeline.unservedDm2() / DM2_PER_HA,
                timeline.lateDm2Days() / DM2_PER_HA,
                timeline.fills(),
                timeline.waterTrips(),
                timeline.compostTrips(),
                (int) timeline.count(Tally.BATCHES),
                ActivityJournal.kilograms(timeline.count(Tally.COMPOST_MG)),
                timeline.count(Tally.DUMPED_ML) / ML_PER_L,
                tenths((double) timeline.waitS() / MINUTE_S),
                tenths((double) timeline.idleS() / MINUTE_S),
                tenths((double) timeline.overtimeS() / MINUTE_S),
                timeline.count(Tally.DRIVE_M) / M_PER_KM,
                margin == Long.MAX_VALUE ? 0 : tenths((double) margin / MINUTE_S),
                season.time().at(Math.max(compiled.tables().beginning().nowS(), timeline.count(Tally.FINISH_S))),
                season.goals().byMoney().map(prices -> Bill.of(prices, timeline::amount)));
    }

    private static double tenths(double minutes) {
        return Math.round(minutes * 10) / 10.0;
    }
}

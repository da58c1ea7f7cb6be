package freshfurrow.app.log;

import freshfurrow.app.input.ChosenPart;
import freshfurrow.app.input.GivenLog;
import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.KnownLoads;
import freshfurrow.app.input.PlanOrigin;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.refusal.SeasonPart;
import freshfurrow.model.files.ObstructedFile;
import freshfurrow.model.log.Column;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.FactKind;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.write.LogWriter;
import freshfurrow.model.write.LogWriting;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The log of a season: lists it, adds to it, follows compost through it. */
public final class Logbook {
    private final LogOrder order;
    private final SeasonClock clock;
    private final GivenLog log;
    private final GivenPlan plan;

    public Logbook(LogOrder order, SeasonClock clock) {
        this.order = order;
        this.clock = clock;
        log = GivenLog.of(order.season(), order.file());
        plan = order.plan()
                .orElseGet(() -> new GivenPlan(order.season().folder().resolve("plan")));
    }

    /**
     * What the log says.
     *
     * @throws Refused with every problem, when season or log cannot be used, or the plan of its loads is of another season
     */
    public LoggedSeason list() {
        Reading.Valid read = order.season().read();
        return new LoggedSeason(read.season(), entries(read));
    }

    /**
     * The plan that is followed and what the log says.
     *
     * @throws Refused when season, log or plan cannot be used
     */
    public DayOfWork dayOfWork() {
        Reading.Valid read = order.season().read();
        Optional<Plan> followed = Files.exists(plan.file()) ? Optional.of(plan.read()) : Optional.empty();
        return new DayOfWork(
                read.season(), entries(read), followed, order.now().or(() -> clock.inSeason(read.season())));
    }

    /**
     * Where the compost of a field came from.
     *
     * @throws Refused as {@link #list}, or when the season has no such field
     */
    public Trace ofField(String id) {
        return trace(SeasonPart.FIELD, id);
    }

    /**
     * Where the compost of a lot went.
     *
     * @throws Refused as {@link #list}, or when the season has no such lot
     */
    public Trace ofLot(String id) {
        return trace(SeasonPart.LOT, id);
    }

    private Trace trace(SeasonPart part, String id) {
        Reading.Valid read = order.season().read();
        Season season = read.season();
        List<String> ids = part == SeasonPart.FIELD
                ? season.fields().stream().map(Field::id).toList()
                : season.compost().stream().map(CompostLot::id).toList();
        ChosenPart.among(part, Optional.of(id), ids);
        return new Trace(season, entries(read), planIfThere(read));
    }

    /**
     * Adds lines, all of them or none.
     *
     * @param lines of each its cells but for its number; without a time, it is of now
     * @throws Refused with every problem, when season, log or a line is wrong, or the log cannot be written; then it is as it was
     */
    public AddedEntries add(List<Map<Column, String>> lines) {
        return add(lines, LogWriter::add);
    }

    /**
     * Adds those of the lines that are not there yet, each cell the same, all of them or none: whoever does not know whether a line
     * arrived sends it again.
     *
     * @param lines of each its cells but for its number, with its time
     * @throws Refused as {@link #add}
     */
    public AddedEntries addOnce(List<Map<Column, String>> lines) {
        return add(lines, LogWriter::addOnce);
    }

    @FunctionalInterface
    private interface Adding {
        LogWriting to(LogWriter log, List<Map<Column, String>> lines) throws IOException;
    }

    private AddedEntries add(List<Map<Column, String>> lines, Adding adding) {
        Reading.Valid read = order.season().read();
        Season season = read.season();
        List<Map<Column, String>> timed =
                lines.stream().map(line -> timed(season, line)).toList();
        boolean namesLoads = timed.stream().anyMatch(cells -> cells.containsKey(Column.LOAD));
        LogContext context = context(read, namesLoads || plantsLoads(read));
        try {
            LogWriting writing = adding.to(new LogWriter(log.file(), context), timed);
            if (writing instanceof LogWriting.Refused refused) {
                throw new Refused(new InputRefusal.ProblemsFound(refused.problems()));
            }
            LogWriting.Added added = (LogWriting.Added) writing;
            return new AddedEntries(season, added.log(), added.entries());
        } catch (ObstructedFile e) {
            throw new Refused(new LogRefusal.ObstructedLog(log.file(), e.obstacle()));
        } catch (IOException e) {
            throw new Refused(new LogRefusal.UnwritableLog(log.file(), FileFailure.reason(e)));
        }
    }

    /**
     * Adds all that the plan says was done up to some moment and the log lacks, all of it or nothing.
     *
     * @param until without it, now
     * @param except ids of fields and machines that it is not meant for
     * @throws Refused as {@link #add}, when there is no plan of the season, when it is not yet so late, or a name is unknown
     */
    public AddedEntries addAsPlanned(Optional<LocalDateTime> until, List<String> except) {
        Reading.Valid read = order.season().read();
        Plan followed = plan.read();
        if (!order.changed()) {
            PlanOrigin.mustBeOf(read, plan.file(), followed);
        }
        SeasonOfPlan.checked(plan.file(), followed, read.season());
        LogContext context = context(read, true);
        SeasonLog before = log.read(context).log();
        List<Map<Column, String>> lines =
                PlanAsLines.of(context, before, followed, until.orElseGet(() -> now(read.season())), except);
        return lines.isEmpty() ? new AddedEntries(read.season(), before, List.of()) : add(lines);
    }

    private Map<Column, String> timed(Season season, Map<Column, String> line) {
        Map<Column, String> cells = new EnumMap<>(line);
        cells.computeIfAbsent(Column.AT, column -> time(season, cells).toString());
        return cells;
    }

    private SeasonLog entries(Reading.Valid read) {
        return log.read(context(read, true)).log();
    }

    private Optional<Plan> planIfThere(Reading.Valid read) {
        if (!Files.exists(plan.file()) && order.plan().isEmpty()) {
            return Optional.empty();
        }
        Plan its = plan.read();
        PlanOrigin.mustBeOf(read, plan.file(), its);
        return Optional.of(its);
    }

    /** Whether the log speaks of loads, which only plans know; a log that does not needs no plan that can be read. */
    private boolean plantsLoads(Reading.Valid read) {
        return LogReader.read(log.file(), context(read, false)) instanceof LogReading.Valid logged
                && logged.log().standing().stream()
                        .anyMatch(entry -> entry.fact() instanceof Fact.Planted planted
                                && planted.load().isPresent());
    }

    private LogContext context(Reading.Valid read, boolean checkLoads) {
        Season season = read.season();
        LocalDateTime latest = order.now()
                .or(() -> clock.inSeason(season))
                .orElse(LogContext.of(season).latest());
        Optional<Set<String>> loads = checkLoads ? Optional.of(loads(read)) : Optional.empty();
        return new LogContext(season, loads, latest);
    }

    private Set<String> loads(Reading.Valid read) {
        return order.changed() ? KnownLoads.ofAny(plan) : KnownLoads.of(read, plan);
    }

    private LocalDateTime time(Season season, Map<Column, String> cells) {
        if (FactKind.VOID.word().equals(cells.get(Column.FACT))) {
            return clock.now(season);
        }
        return now(season);
    }

    private LocalDateTime now(Season season) {
        return order.now()
                .or(() -> clock.inSeason(season))
                .orElseThrow(() -> new Refused(new LogRefusal.NoTimeOfEntry(season.first(), season.last())));
    }
}

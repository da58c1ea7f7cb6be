package freshfurrow.model.progress;

import freshfurrow.model.log.Breakdown;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LastSeen;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.FromLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.KeptTime;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where a season stands now, from its plan, its log and what became known. The plan is taken as carried out until now, or until
 * something happened that it did not know of: rain, a machine that broke down, ground that was found unfit; after that machines stand still. What is logged counts
 * instead: a field with lines in the log has exactly the area of these lines, a lot from which batches were logged what they leave, a water
 * point what was logged there today, a tank what was logged of the load that was filled into it last, and batches the ends that were logged.
 */
public final class SoFar {
    private final Season whole;
    private final Plan plan;
    private final LocalDateTime now;
    private final News news;
    private final LogSums sums;
    private final List<Entry> entries;
    private final boolean onlyLogged;
    private final LoggedLoads loads;

    private SoFar(Season whole, Plan plan, LocalDateTime now, News news, SeasonLog log, boolean onlyLogged) {
        this.whole = whole;
        this.plan = plan;
        this.now = now;
        this.news = news;
        this.onlyLogged = onlyLogged;
        SeasonLog until = new SeasonLog(log.entries().stream()
                .map(this::onADayOfTheSeason)
                .filter(entry -> !entry.at().isAfter(now) || entry.fact() instanceof Fact.Voided)
                .toList());
        sums = LogSums.of(whole, until);
        entries = until.standing();
        loads = new LoggedLoads(whole, plan, sums);
    }

    /**
     * What was done, and where that leaves the season.
     *
     * @param start where a plan of what is left begins
     * @param followedUntil until when the plan is taken as carried out where the log does not say
     * @param loggedFields ids of fields whose area comes from the log
     * @param behind by id, machines that begin so much of their working time later, as they are behind the plan
     */
    public record Result(
            PlanStart start, LocalDateTime followedUntil, Set<String> loggedFields, Map<String, Duration> behind) {
        public Result {
            loggedFields = Set.copyOf(loggedFields);
            behind = Collections.unmodifiableMap(new LinkedHashMap<>(behind));
        }
    }

    /**
     * Where the season stands.
     *
     * @param whole the season as its file tells it
     * @param plan the plan that was followed
     * @param now not before the plan's own beginning
     * @param log entries after {@code now} do not count yet; those at the midnight that ends the season count as of its last second
     * @param onlyLogged nothing is taken as carried out that is not logged
     * @throws IllegalArgumentException when the plan begins later, or is not of that season
     */
    public static Result of(Season whole, Plan plan, LocalDateTime now, News news, SeasonLog log, boolean onlyLogged) {
        return new SoFar(whole, plan, now, news, log, onlyLogged).result();
    }

    /** The midnight that ends the season is on no day of it: what happened then counts as of the second before. */
    private Entry onADayOfTheSeason(Entry entry) {
        return entry.at().equals(whole.end())
                ? new Entry(entry.number(), whole.end().minusSeconds(1), entry.fact(), entry.note())
                : entry;
    }

    private Result result() {
        Season planned = plan.start().map(start -> start.remaining(whole)).orElse(whole);
        PlanStart atNow = StandingAt.of(planned, plan, now);
        List<Rain> rain = rain(planned);
        List<Outage> outages = outages(planned);
        LocalDateTime until = onlyLogged ? now : followedUntil(planned, rain, outages);
        PlanStart done = until.equals(now) ? atNow : StandingAt.of(planned, plan, until);
        Set<String> logged = loggedFields();
        Map<String, Duration> behind = onlyLogged
                ? Map.of()
                : new Delays(plan, until, logged).of(sums.behind(plan.start().map(PlanStart::now)));
        Season lasting = planned.change()
                .outages(outages)
                .standing(Optional.of(Standing.at(now)))
                .season();
        Standing standing = Delays.added(lasting, standing(done.standing(), atNow.standing(), until), behind);
        LotsLeft lots = new LotsLeft(whole, done, sums, entries, onlyLogged, news.spoiledLots());
        return new Result(
                new PlanStart(
                        standing,
                        planted(done, logged),
                        lots.lots(),
                        notInTheFile(rain).toList(),
                        outages,
                        sums.judged(),
                        onlyLogged ? List.of() : loads.batches(done.batches(), standing),
                        new FromLog(asKept(sums.rains()).toList(), List.copyOf(loggedOutages()), lots.byLogKg()),
                        Optional.empty()),
                until,
                logged,
                behind);
    }

    /** As plans keep it, so that what a plan knows of is told from what is new to it; but for rain of the season file. */
    private Stream<Rain> asKept(List<Rain> rain) {
        return notInTheFile(rain).map(fall -> new Rain(fall.date(), fall.fromS(), Rounded.millimetres(fall.mm())));
    }

    private Stream<Rain> notInTheFile(List<Rain> rain) {
        return rain.stream().filter(fall -> !whole.rain().contains(fall));
    }

    private List<Rain> rain(Season planned) {
        List<Rain> saidBefore = saidBefore().rain();
        Stream<Rain> known = planned.rain().stream().filter(fall -> !saidBefore.contains(fall));
        return Stream.of(known, asKept(news.rain()), asKept(sums.rains()))
                .flatMap(falls -> falls)
                .distinct()
                .toList();
    }

    /** What the log said when the plan was made: it is asked again, as lines may have become void. */
    private FromLog saidBefore() {
        return plan.start().map(PlanStart::fromLog).orElse(FromLog.NOTHING);
    }

    private List<Outage> outages(Season planned) {
        Set<Outage> all = new LinkedHashSet<>(planned.outages());
        saidBefore().outages().forEach(all::remove);
        all.addAll(news.outages());
        all.addAll(loggedOutages());
        return List.copyOf(all);
    }

    /** A machine of which nobody knows when it works again is down until the season's end. */
    private Set<Outage> loggedOutages() {
        Set<Outage> all = new LinkedHashSet<>();
        for (Breakdown down : sums.breakdowns()) {
            LocalDateTime until = down.until().orElse(whole.end());
            if (until.isAfter(down.from())) {
                all.add(new Outage(down.machine(), down.from(), until));
            }
        }
        return all;
    }

    private LocalDateTime followedUntil(Season planned, List<Rain> rain, List<Outage> outages) {
        LocalDateTime begins = plan.start().map(PlanStart::now).orElse(whole.start());
        LocalDateTime first = Stream.of(
                        rain.stream()
                                .filter(fall -> !planned.rain().contains(fall))
                                .filter(fall -> fall.mm() >= whole.drying().ignoreBelowMm())
                                .map(Rain::start),
                        outages.stream()
                                .filter(outage -> !planned.outages().contains(outage))
                                .map(Outage::from),
                        foundUnfit())
                .flatMap(times -> times)
                .min(Comparator.naturalOrder())
                .filter(now::isAfter)
                .orElse(now);
        return first.isBefore(begins) ? begins : first;
    }

    /** When somebody said of ground that it is not fit, which the plan did not know. */
    private Stream<LocalDateTime> foundUnfit() {
        Map<String, List<Judgement>> known = plan.start().map(PlanStart::judged).orElse(Map.of());
        return sums.judged().entrySet().stream()
                .flatMap(field -> field.getValue().stream()
                        .filter(judgement -> !judgement.isFit()
                                && !known.getOrDefault(field.getKey(), List.of())
                                        .contains(judgement)))
                .map(Judgement::said);
    }

    private Set<String> loggedFields() {
        return entries.stream()
                .flatMap(entry ->
                        entry.fact() instanceof Fact.Planted planted ? Stream.of(planted.field()) : Stream.empty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private List<PlanStart.Planted> planted(PlanStart done, Set<String> logged) {
        List<PlanStart.Planted> parts = new ArrayList<>();
        if (!onlyLogged) {
            done.planted().stream()
                    .filter(part -> !logged.contains(part.field()))
                    .forEach(parts::add);
        }
        logged.forEach(field -> sums.plantedByDay(field)
                .forEach((date, ha) -> parts.add(new PlanStart.Planted(field, date, Rounded.hectares(ha)))));
        return parts;
    }

    private Standing standing(Standing followed, Standing atNow, LocalDateTime until) {
        Map<String, Standing.OfPlanter> planters = new LinkedHashMap<>();
        followed.planters().forEach((id, planter) -> planters.put(id, planter(id, planter, until)));
        Map<String, Standing.OfRig> rigs = new LinkedHashMap<>();
        followed.rigs().forEach((id, rig) -> rigs.put(id, rig(id, rig, until)));
        return new Standing(now, planters, rigs, drawn(followed, until), Map.of(), atNow.loads(), atNow.batches());
    }

    private Standing.OfPlanter planter(String id, Standing.OfPlanter planter, LocalDateTime until) {
        Optional<LastSeen> seen = seen(id, until);
        if (onlyLogged) {
            String home = whole.applicator(id).at();
            return new Standing.OfPlanter(
                    seen.map(LastSeen::place).orElse(home),
                    now,
                    Optional.empty(),
                    Optional.empty(),
                    lines(id, Optional.empty(), seen));
        }
        return new Standing.OfPlanter(
                seen.map(LastSeen::place).orElse(planter.at()),
                notBeforeNow(planter.freeFrom()),
                planter.filledOn(),
                loads.tank(id, planter.tank(), until),
                lines(id, planter.lines(), seen));
    }

    /** Mix went through the lines of a planter that planted since. */
    private Optional<Standing.Lines> lines(String planter, Optional<Standing.Lines> followed, Optional<LastSeen> seen) {
        return whole.applicator(planter).flushS() == 0
                ? Optional.empty()
                : seen.flatMap(last -> whole.fields().stream()
                                .filter(field -> field.id().equals(last.place()))
                                .map(field -> new Standing.Lines(field.recipe(), last.at()))
                                .findFirst())
                        .or(() -> followed);
    }

    private Standing.OfRig rig(String id, Standing.OfRig rig, LocalDateTime until) {
        Optional<LastSeen> seen = seen(id, until);
        if (onlyLogged) {
            String home = whole.rig(id).at();
            return new Standing.OfRig(
                    seen.map(LastSeen::place).orElse(home),
                    now,
                    0,
                    Optional.empty(),
                    false,
                    Map.of(),
                    setUpAt(id, Optional.empty(), seen));
        }
        return new Standing.OfRig(
                seen.map(LastSeen::place).orElse(rig.at()),
                notBeforeNow(rig.freeFrom()),
                rig.waterL(),
                rig.mix().map(loads::mix),
                rig.cleanDue(),
                compostOnBoard(id, rig, until),
                setUpAt(id, rig.setUpAt(), seen));
    }

    private Map<String, Double> compostOnBoard(String id, Standing.OfRig followed, LocalDateTime until) {
        List<Fact.BatchMade> logged = entries.stream()
                .filter(entry -> plan.start()
                        .filter(start -> !entry.at().isAfter(start.now()))
                        .isEmpty())
                .flatMap(entry -> entry.fact() instanceof Fact.BatchMade batch ? Stream.of(batch) : Stream.empty())
                .filter(batch -> batch.rig().equals(id))
                .toList();
        CompostOnBoard onBoard =
                logged.isEmpty() ? CompostOnBoard.of(followed) : CompostOnBoard.less(logged, plan, id, until);
        news.spoiledLots().forEach(onBoard::drop);
        return onBoard.kg();
    }

    /** A rig that was at work since is set up. */
    private Optional<LocalDateTime> setUpAt(String rig, Optional<LocalDateTime> followed, Optional<LastSeen> seen) {
        return whole.rig(rig).kept().equals(KeptTime.NONE)
                ? Optional.empty()
                : seen.map(LastSeen::at).or(() -> followed);
    }

    /** Where the log saw a machine later than the plan was followed. */
    private Optional<LastSeen> seen(String machine, LocalDateTime until) {
        return whole.oneWith(machine).stream()
                .flatMap(id -> sums.lastSeen(id).stream())
                .max(Comparator.comparing(LastSeen::at))
                .filter(last -> onlyLogged || last.at().isAfter(until));
    }

    private LocalDateTime notBeforeNow(LocalDateTime time) {
        return time.isBefore(now) ? now : time;
    }

    private Map<String, Double> drawn(Standing followed, LocalDateTime until) {
        Map<String, Double> drawn = new LinkedHashMap<>();
        if (!onlyLogged && until.toLocalDate().equals(now.toLocalDate())) {
            drawn.putAll(followed.drawnL());
        }
        whole.waterPoints().forEach(point -> {
            double logged = sums.drawnL(point.id(), now.toLocalDate());
            if (logged > 0) {
                drawn.put(point.id(), Rounded.litres(logged));
            }
        });
        return drawn;
    }
}

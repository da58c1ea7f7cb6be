package freshfurrow.model.learn;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The entries of a log that say how long work took, without those that contradict others. Of two that do, nobody knows which is right, so
 * neither teaches anything.
 */
final class SoundWork {
    /** Times of a log are read off clocks, to the minute: those of two entries may be off by as much, and so may how long one took. */
    private static final Duration CLOCKS = Duration.ofMinutes(2);

    private final Season season;
    private final List<TimedWork> timed = new ArrayList<>();
    /** By the number of the entry. */
    private final Map<Integer, LeftOut> wrong = new HashMap<>();

    private SoundWork(Season season) {
        this.season = season;
    }

    /** @param standing entries that count, by time */
    static List<TimedWork> of(Season season, List<Entry> standing, LeftOutCounts leftOut) {
        SoundWork work = new SoundWork(season);
        standing.stream().filter(entry -> TimedWork.isTimed(entry.fact())).forEach(entry -> work.take(entry, leftOut));
        work.findByLoad(standing);
        work.findOverlaps();
        EnumMap<LeftOut, Integer> counts = new EnumMap<>(LeftOut.class);
        work.wrong.values().forEach(why -> counts.merge(why, 1, Integer::sum));
        counts.forEach(leftOut::count);
        return work.timed.stream()
                .filter(one -> !work.wrong.containsKey(one.entry().number()))
                .toList();
    }

    private void take(Entry entry, LeftOutCounts leftOut) {
        if (entry.took().isEmpty()) {
            leftOut.count(LeftOut.NO_TIME);
        } else if (TimedWork.machine(entry.fact()).isEmpty()) {
            leftOut.count(LeftOut.NO_MACHINE);
        } else {
            timed.add(new TimedWork(
                    entry,
                    TimedWork.machine(entry.fact()).orElseThrow(),
                    entry.took().orElseThrow()));
        }
    }

    /** A machine, with what is mounted on it, does one thing at a time. */
    private void findOverlaps() {
        Map<Set<String>, List<TimedWork>> byMachine = new HashMap<>();
        timed.forEach(one -> byMachine
                .computeIfAbsent(new TreeSet<>(season.oneWith(one.machine())), machines -> new ArrayList<>())
                .add(one));
        for (List<TimedWork> its : byMachine.values()) {
            its.sort(Comparator.comparing(TimedWork::begin));
            TimedWork last = its.get(0);
            for (TimedWork next : its.subList(1, its.size())) {
                if (isTooEarly(next.begin(), last.entry().at())) {
                    contradicts(last.entry(), LeftOut.OVERLAP);
                    contradicts(next.entry(), LeftOut.OVERLAP);
                }
                last = next.entry().at().isAfter(last.entry().at()) ? next : last;
            }
        }
    }

    private void findByLoad(List<Entry> standing) {
        Map<String, List<Entry>> batches = new HashMap<>();
        Map<String, List<Entry>> transfers = new HashMap<>();
        for (Entry entry : standing) {
            if (entry.fact() instanceof Fact.BatchMade batch) {
                batch.loads().forEach(load -> put(batches, load, entry));
            } else if (entry.fact() instanceof Fact.Transferred transferred) {
                transferred.load().ifPresent(load -> put(transfers, load, entry));
            }
        }
        transfers.values().stream()
                .filter(same -> same.size() > 1)
                .forEach(same -> same.forEach(entry -> contradicts(entry, LeftOut.TWO_TRANSFERS)));
        for (TimedWork one : timed) {
            if (one.entry().fact() instanceof Fact.Transferred transferred) {
                transferred.load().ifPresent(load -> after(one, batches.getOrDefault(load, List.of())));
            } else if (one.entry().fact() instanceof Fact.Planted planted) {
                planted.load().ifPresent(load -> after(one, transfers.getOrDefault(load, List.of())));
            }
        }
    }

    private static void put(Map<String, List<Entry>> entries, String load, Entry entry) {
        entries.computeIfAbsent(load, id -> new ArrayList<>()).add(entry);
    }

    private void after(TimedWork work, List<Entry> before) {
        for (Entry entry : before) {
            if (isTooEarly(work.begin(), entry.at())) {
                contradicts(work.entry(), LeftOut.OUT_OF_ORDER);
                contradicts(entry, LeftOut.OUT_OF_ORDER);
            }
        }
    }

    /** What says no time is left out for that already. */
    private void contradicts(Entry entry, LeftOut why) {
        if (entry.took().isPresent()) {
            wrong.putIfAbsent(entry.number(), why);
        }
    }

    private static boolean isTooEarly(LocalDateTime begin, LocalDateTime end) {
        return begin.isBefore(end.minus(CLOCKS));
    }
}

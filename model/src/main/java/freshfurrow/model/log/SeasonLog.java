package freshfurrow.model.log;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A season's log.
 *
 * @param entries in the order of their lines, void ones too
 */
public record SeasonLog(List<Entry> entries) {
    /** Nothing has happened yet. */
    public static final SeasonLog EMPTY = new SeasonLog(List.of());

    private static final Comparator<Entry> BY_TIME =
            Comparator.comparing(Entry::at).thenComparingInt(Entry::number);

    public SeasonLog {
        entries = List.copyOf(entries);
    }

    /** The entries that count, by time: void entries and those that void them are left out. */
    public List<Entry> standing() {
        Set<Integer> gone = entries.stream()
                .map(SeasonLog::voidedBy)
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
        return entries.stream()
                .filter(entry -> !(entry.fact() instanceof Fact.Voided) && !gone.contains(entry.number()))
                .sorted(BY_TIME)
                .toList();
    }

    /** The number for an entry to come. */
    public int nextNumber() {
        return 1 + entries.stream().mapToInt(Entry::number).max().orElse(0);
    }

    private static Optional<Integer> voidedBy(Entry entry) {
        return entry.fact() instanceof Fact.Voided voided ? Optional.of(voided.entry()) : Optional.empty();
    }
}

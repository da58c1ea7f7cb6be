package freshfurrow.model.log;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A planter fill as the log knows it.
 *
 * @param batches entries of the batches that went into it, by time; none when no batch was logged for it
 * @param planted entries of what was planted from it, by time
 */
public record LoadMade(String id, List<Entry> batches, List<Entry> planted) {
    public LoadMade {
        batches = List.copyOf(batches);
        planted = List.copyOf(planted);
    }

    /** When extraction of its oldest batch ended, which is when its hold time begins; empty when no batch was logged. */
    public Optional<LocalDateTime> oldestBatchEnd() {
        return batches.stream().map(Entry::at).findFirst();
    }
}

package freshfurrow.model.learn;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * An entry that says how long work of a machine took.
 *
 * @param machine id
 */
record TimedWork(Entry entry, String machine, Duration took) {
    /** When it began, if it went on without a break; where it did not, it began sooner. */
    LocalDateTime begin() {
        return entry.at().minus(took);
    }

    /** The day on which it began. */
    LocalDate day() {
        return begin().toLocalDate();
    }

    /** Whether learning goes by how long such work takes. */
    static boolean isTimed(Fact fact) {
        return fact instanceof Fact.BatchMade
                || fact instanceof Fact.Transferred
                || fact instanceof Fact.Planted
                || fact instanceof Fact.Driven;
    }

    /** Which machine did it, where it is known. */
    static Optional<String> machine(Fact fact) {
        if (fact instanceof Fact.BatchMade batch) {
            return Optional.of(batch.rig());
        }
        if (fact instanceof Fact.Transferred transferred) {
            return Optional.of(transferred.rig());
        }
        if (fact instanceof Fact.Driven driven) {
            return Optional.of(driven.machine());
        }
        return fact instanceof Fact.Planted planted ? planted.planter() : Optional.empty();
    }
}

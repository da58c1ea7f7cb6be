package freshfurrow.model.log;

import java.time.LocalDate;

/**
 * What became of a lot of compost so far, kg each, 0 or more.
 *
 * @param from first day on which it may be used
 * @param inKg what there was and what came
 * @param usedKg what went into batches
 * @param spoiledKg what was found to be of no use
 */
public record LotStock(String lot, LocalDate from, double inKg, double usedKg, double spoiledKg) {
    /** What is left, kg; 0 when more was logged than there was, as scales and piles differ. */
    public double leftKg() {
        return Math.max(0, inKg - usedKg - spoiledKg);
    }

    LotStock plusIn(double kg) {
        return new LotStock(lot, from, inKg + kg, usedKg, spoiledKg);
    }

    LotStock plusUsed(double kg) {
        return new LotStock(lot, from, inKg, usedKg + kg, spoiledKg);
    }

    LotStock plusSpoiled(double kg) {
        return new LotStock(lot, from, inKg, usedKg, spoiledKg + kg);
    }
}

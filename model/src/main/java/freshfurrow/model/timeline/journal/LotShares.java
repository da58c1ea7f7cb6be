package freshfurrow.model.timeline.journal;

import static freshfurrow.model.quantity.Factors.G_PER_KG;
import static freshfurrow.model.quantity.Factors.MG_PER_G;

import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What each batch takes from which lot, in whole grams. Batches that are made one after the other use the lots up one after the
 * other: as planters are served in the order in which they ask, a batch may be reckoned after one that is made later. It is the sum of all
 * batches that is rounded, so that no parts of a gram add up to what no batch takes.
 */
public final class LotShares {
    private final SeasonTables tables;
    private long takenMg;

    LotShares(SeasonTables tables) {
        this.tables = tables;
    }

    /** Of the batch that is made next, kg by lot. */
    Map<String, Double> next(long mg) {
        Map<String, Double> kilograms = new LinkedHashMap<>();
        long untilMg = takenMg + mg;
        long lotFrom = 0;
        for (int lot = 0; lot < tables.compost().count(); lot++) {
            long lotUntil = lotFrom + tables.compost().mg(lot);
            long grams = grams(Math.min(untilMg, lotUntil)) - grams(Math.max(takenMg, lotFrom));
            if (grams > 0) {
                kilograms.put(tables.compost().id(lot), grams / G_PER_KG);
            }
            lotFrom = lotUntil;
        }
        takenMg = untilMg;
        return kilograms;
    }

    /** Rounded. */
    public static long grams(long mg) {
        return (mg + MG_PER_G / 2) / MG_PER_G;
    }
}

package freshfurrow.cli.card;

import freshfurrow.model.mixing.Buckets;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.timeline.OneLoad;
import java.util.ArrayList;
import java.util.List;

/** The batches of a load in the order in which they are made, in one go. */
final class BatchTable {
    private BatchTable() {}

    static List<String> lines(OneLoad load, CardUnits units, double bucketKg, DrumClock clock) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("No.", "From", "To", "Compost", "Buckets", "Drum water"));
        int from = 0;
        for (OneLoad.DrumBatch batch : load.batches()) {
            int to = from + batch.durationS();
            rows.add(List.of(
                    Integer.toString(rows.size()),
                    clock.at(from),
                    clock.at(to),
                    units.show(Kind.MASS, batch.compostKg()),
                    buckets(Buckets.of(batch.compostKg(), bucketKg), units),
                    units.show(Kind.VOLUME, batch.waterL())));
            from = to + load.cleanS();
        }
        return Columns.of(rows);
    }

    /** As {@code 2}, or {@code 2 + 3.5 lb}. */
    static String buckets(Buckets buckets, CardUnits units) {
        String rest = units.show(Kind.MASS, buckets.restKg());
        if (buckets.restKg() == 0) {
            return Integer.toString(buckets.full());
        }
        return buckets.full() == 0 ? rest : buckets.full() + " + " + rest;
    }
}

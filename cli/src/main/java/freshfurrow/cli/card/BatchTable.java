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

    /** As {@code 2}, or {@code 2 + 3.5 lb}, as finely as compost is weighed. */
    static String buckets(Buckets buckets, CardUnits units) {
        double tenths = Math.round(units.figure(Kind.MASS, buckets.restKg()) * 10) / 10.0;
        String rest = CardUnits.number(tenths) + " " + units.symbol(Kind.MASS);
        if (buckets.restKg() == 0) {
            return buckets.full() + " full";
        }
        return buckets.full() == 0 ? rest : buckets.full() + " full and " + rest + " more";
    }
}

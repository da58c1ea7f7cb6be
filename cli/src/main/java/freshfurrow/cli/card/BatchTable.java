package freshfurrow.cli.card;

import freshfurrow.model.mixing.Buckets;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.timeline.OneLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The batches of a load in the order in which they are made, in one go. */
final class BatchTable {
    private BatchTable() {}

    static List<String> lines(OneLoad load, CardUnits units, OptionalDouble bucketKg, DrumClock clock) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("No.", "From", "To", "Compost", bucketKg.stream().mapToObj(kg -> "Buckets"), "Drum water"));
        int from = 0;
        for (OneLoad.DrumBatch batch : load.batches()) {
            int to = from + batch.durationS();
            rows.add(row(
                    Integer.toString(rows.size()),
                    clock.at(from),
                    clock.at(to),
                    units.show(Kind.MASS, batch.compostKg()),
                    bucketKg.stream().mapToObj(kg -> buckets(Buckets.of(batch.compostKg(), kg), units)),
                    units.show(Kind.VOLUME, batch.waterL())));
            from = to + load.cleanS();
        }
        return Columns.of(rows);
    }

    /** @param bucketsIfKnown no cell where no full bucket was weighed */
    private static List<String> row(
            String number, String from, String to, String compost, Stream<String> bucketsIfKnown, String water) {
        return Stream.of(Stream.of(number, from, to, compost), bucketsIfKnown, Stream.of(water))
                .flatMap(cells -> cells)
                .toList();
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

package freshfurrow.model.log;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lots of compost as a log leaves them. A lot that the season expects after its first day is, once deliveries of it are
 * logged, what was delivered; to a lot that was there from the start deliveries are added.
 */
final class LotStocks {
    private final Map<String, LotStock> stocks = new LinkedHashMap<>();

    /** @param standing entries that hold, by time */
    static Map<String, LotStock> of(Season season, List<Entry> standing) {
        LotStocks lots = new LotStocks();
        for (CompostLot lot : season.compost()) {
            lots.stocks.put(lot.id(), start(lot, season.first(), standing));
        }
        standing.forEach(entry -> lots.count(entry.fact()));
        return lots.stocks;
    }

    private static LotStock start(CompostLot lot, LocalDate seasonBegin, List<Entry> standing) {
        Optional<LocalDate> delivered = standing.stream()
                .filter(entry -> entry.fact() instanceof Fact.CompostDelivered delivery
                        && delivery.lot().equals(lot.id()))
                .map(entry -> entry.at().toLocalDate())
                .findFirst();
        boolean replaced = delivered.isPresent() && lot.from().isAfter(seasonBegin);
        return replaced
                ? new LotStock(lot.id(), delivered.get(), 0, 0, 0)
                : new LotStock(lot.id(), lot.from(), lot.massKg(), 0, 0);
    }

    private void count(Fact fact) {
        if (fact instanceof Fact.CompostDelivered delivered) {
            stocks.computeIfPresent(delivered.lot(), (id, stock) -> stock.plusIn(delivered.kg()));
        } else if (fact instanceof Fact.BatchMade batch) {
            batch.kgByLot().forEach((lot, kg) -> stocks.computeIfPresent(lot, (id, stock) -> stock.plusUsed(kg)));
        } else if (fact instanceof Fact.CompostSpoiled spoiled) {
            stocks.computeIfPresent(
                    spoiled.lot(), (id, stock) -> stock.plusSpoiled(spoiled.kg().orElse(stock.leftKg())));
        }
    }
}

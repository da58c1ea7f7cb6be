package freshfurrow.model.progress;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.LotStock;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is left of lots of compost. A lot from which batches were logged has what they leave, unless rigs fetch it; others have what the plan
 * leaves, as if the log had said nothing before, with all that the log says now of deliveries and losses.
 */
final class LotsLeft {
    /** Less is rounding. */
    private static final double LEAST_KG = 0.0005;

    private final List<CompostLot> lots = new ArrayList<>();
    private final Map<String, Double> byLogKg = new LinkedHashMap<>();

    /**
     * Works out what is left.
     *
     * @param done what the plan leaves
     * @param entries of the log that count
     * @param onlyLogged nothing counts of the plan
     * @param spoiled ids of lots that are of no use any more, which no log says
     */
    LotsLeft(Season whole, PlanStart done, LogSums sums, List<Entry> entries, boolean onlyLogged, Set<String> spoiled) {
        Map<String, Double> plannedKg = new LinkedHashMap<>();
        done.lots().forEach(lot -> plannedKg.put(lot.id(), lot.massKg()));
        Map<String, LotStock> stocks = sums.lots();
        Set<String> used = whole.saysWhereCompostLies() ? Set.of() : used(entries);
        for (CompostLot lot : whole.compost()) {
            LotStock stock = stocks.get(lot.id());
            double changeKg = stock.inKg() - lot.massKg() - stock.spoiledKg();
            double withoutLogKg = onlyLogged
                    ? lot.massKg()
                    : plannedKg.getOrDefault(lot.id(), 0.0) - done.fromLog().lotKg(lot.id());
            double kg = Math.max(
                    0,
                    Rounded.kilograms(
                            onlyLogged || used.contains(lot.id())
                                    ? stock.leftKg()
                                    : Math.min(stock.leftKg(), withoutLogKg + changeKg)));
            boolean isSpoiled = spoiled.contains(lot.id());
            if (kg > 0 && !isSpoiled) {
                lots.add(new CompostLot(lot.id(), kg, stock.from()));
            }
            double byLog = isSpoiled ? changeKg : kg - withoutLogKg;
            if (Math.abs(byLog) >= LEAST_KG) {
                byLogKg.put(lot.id(), byLog);
            }
        }
    }

    private static Set<String> used(List<Entry> entries) {
        Set<String> used = new HashSet<>();
        entries.forEach(entry -> {
            if (entry.fact() instanceof Fact.BatchMade batch) {
                used.addAll(batch.kgByLot().keySet());
            }
        });
        return used;
    }

    List<CompostLot> lots() {
        return lots;
    }

    /** By how much the log changes what is left of lots, by id, kg. */
    Map<String, Double> byLogKg() {
        return byLogKg;
    }
}

package freshfurrow.model.read;

import static freshfurrow.model.log.Column.AMOUNT;
import static freshfurrow.model.log.Column.LOT;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The compost of a batch: one lot with the amount in its own cell, or several in one cell, as {@code windrow 20 lb; delivery 10
 * lb}.
 */
final class LotCell {
    private static final String REMEDY = "write it like windrow, or like windrow 20 lb; delivery 10 lb";

    private final Keys keys;
    private final Collection<String> lots;
    private final Problems problems;

    LotCell(Keys keys, Collection<String> lots) {
        this.keys = keys;
        this.lots = lots;
        this.problems = keys.problems();
    }

    Optional<Map<String, Double>> kgByLot() {
        LogCells cells = new LogCells(keys);
        Optional<String> text = cells.needed(LOT, REMEDY).map(String::strip);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.get().indexOf(' ') < 0 && text.get().indexOf(';') < 0) {
            Optional<String> lot = cells.id(LOT, "compost lot", lots);
            Optional<Double> kg = cells.amount(Kind.MASS, LogRow.MASS);
            return lot.flatMap(id -> kg.map(mass -> Map.of(id, mass)));
        }
        if (cells.has(AMOUNT)) {
            cells.problem(AMOUNT, "is given, and amounts of single lots too", "leave it empty");
        }
        return several(text.get());
    }

    private Optional<Map<String, Double>> several(String text) {
        Map<String, Double> kgByLot = new LinkedHashMap<>();
        int before = problems.count();
        for (String part : text.split(";", -1)) {
            String[] words = part.strip().split(" ", 2);
            if (words.length != 2) {
                keys.problem(LOT.title(), "'" + part.strip() + "' is not a lot with its amount", REMEDY);
                continue;
            }
            Place place = keys.at(LOT.title());
            Map<String, Node> entries = Map.of(
                    LOT.title(),
                    new Node.Text(place, words[0]),
                    AMOUNT.title(),
                    new Node.Text(place, words[1].strip()));
            LogCells one = new LogCells(Keys.of(new Node.Mapping(place, entries), problems, keys.units()));
            Optional<String> lot = one.id(LOT, "compost lot", lots);
            Optional<Double> kg = one.amount(Kind.MASS, LogRow.MASS);
            if (lot.isPresent() && kgByLot.putIfAbsent(lot.get(), kg.orElse(0.0)) != null) {
                keys.problem(LOT.title(), "names " + lot.get() + " twice", "add up its amounts");
            }
        }
        return problems.count() > before ? Optional.empty() : Optional.of(kgByLot);
    }
}

package freshfurrow.model.write;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.FactKind;
import freshfurrow.model.quantity.DisplayUnits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Work that was done as the cells of a line of a log, in units that people of the season use. */
public final class LineOfFact {
    private static final int DECIMALS = 3;

    /** A field may be planted in a hundred pieces, of which each is rounded. */
    private static final int DECIMALS_OF_AREAS = 4;

    /** Of amounts so small that the others would tell too little. */
    private static final int MORE_DECIMALS = 6;

    private static final double SMALL = 0.1;

    private final DisplayUnits units;

    public LineOfFact(DisplayUnits units) {
        this.units = units;
    }

    /**
     * The cells of a line, but for its number.
     *
     * @param at when it ended
     * @throws IllegalArgumentException when it is no work of a machine
     */
    public Map<Column, String> cells(LocalDateTime at, Fact fact) {
        if (fact instanceof Fact.Planted planted) {
            return planted(at, planted);
        }
        if (fact instanceof Fact.BatchMade batch) {
            return batch(at, batch);
        }
        if (fact instanceof Fact.WaterDrawn drawn) {
            return drawn(at, drawn);
        }
        throw new IllegalArgumentException("no work of a machine: " + fact);
    }

    private Map<Column, String> drawn(LocalDateTime at, Fact.WaterDrawn drawn) {
        Map<Column, String> cells = cells(at, FactKind.DRAWN);
        cells.put(Column.PLACE, drawn.point());
        cells.put(Column.MACHINE, drawn.rig());
        cells.put(Column.AMOUNT, volume(drawn.litres()));
        return cells;
    }

    private Map<Column, String> batch(LocalDateTime at, Fact.BatchMade batch) {
        Map<Column, String> cells = cells(at, FactKind.BATCH);
        batch.place().ifPresent(place -> cells.put(Column.PLACE, place));
        cells.put(Column.MACHINE, batch.rig());
        put(cells, Column.LOAD, String.join(" ", batch.loads()));
        if (batch.kgByLot().size() == 1) {
            batch.kgByLot().forEach((lot, kg) -> {
                cells.put(Column.LOT, lot);
                cells.put(Column.AMOUNT, mass(kg));
            });
        } else {
            cells.put(
                    Column.LOT,
                    batch.kgByLot().entrySet().stream()
                            .map(lot -> lot.getKey() + " " + mass(lot.getValue()))
                            .collect(Collectors.joining("; ")));
        }
        return cells;
    }

    private Map<Column, String> planted(LocalDateTime at, Fact.Planted planted) {
        Map<Column, String> cells = cells(at, FactKind.PLANTED);
        cells.put(Column.PLACE, planted.field());
        cells.put(Column.AMOUNT, area(planted.areaHa()));
        put(cells, Column.MACHINE, planted.planter());
        put(cells, Column.LOAD, planted.withoutExtract() ? Optional.of(Fact.Planted.NO_LOAD) : planted.load());
        return cells;
    }

    private static Map<Column, String> cells(LocalDateTime at, FactKind kind) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        cells.put(Column.AT, at.toString());
        cells.put(Column.FACT, kind.word());
        return cells;
    }

    private static void put(Map<Column, String> cells, Column column, Optional<String> text) {
        text.ifPresent(its -> cells.put(column, its));
    }

    private static void put(Map<Column, String> cells, Column column, String text) {
        put(cells, column, Optional.of(text).filter(its -> !its.isEmpty()));
    }

    private String area(double hectares) {
        return figure(units.area().fromHectares(hectares), DECIMALS_OF_AREAS) + " "
                + units.area().symbol();
    }

    private String volume(double litres) {
        return figure(units.volume().fromLitres(litres), DECIMALS) + " "
                + units.volume().symbol();
    }

    private String mass(double kilograms) {
        return figure(units.mass().fromKilograms(kilograms), DECIMALS) + " "
                + units.mass().symbol();
    }

    private static String figure(double figure, int decimals) {
        return BigDecimal.valueOf(figure)
                .setScale(figure < SMALL ? MORE_DECIMALS : decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}

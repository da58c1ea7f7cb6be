package freshfurrow.model.read;

import static freshfurrow.model.log.Column.AMOUNT;
import static freshfurrow.model.log.Column.AT;
import static freshfurrow.model.log.Column.ENTRY;
import static freshfurrow.model.log.Column.FACT;
import static freshfurrow.model.log.Column.LOAD;
import static freshfurrow.model.log.Column.LOT;
import static freshfurrow.model.log.Column.MACHINE;
import static freshfurrow.model.log.Column.NOTE;
import static freshfurrow.model.log.Column.PLACE;
import static freshfurrow.model.log.Column.TOOK;
import static freshfurrow.model.log.Column.UNTIL;
import static freshfurrow.model.log.Column.VOIDS;
import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.FactKind;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/** One row of a log into an entry, or into all that is wrong with it by itself. */
final class LogRow {
    static final Range MASS = Range.between(0.001, 10_000_000, "0.01 lb (1 g) to 10,000 t");

    private static final Range AREA = Range.between(0.0001, 20_000, "1 m2 to 49,000 ac (20,000 ha)");
    private static final Range VOLUME = Range.between(0.1, 200_000, "0.03 to 50,000 gal (0.1 to 200,000 L)");
    private static final Range RAIN = Range.between(0.1, 2_000, "0.004 to 78 in (0.1 to 2,000 mm)");
    private static final Range TOOK_S = Range.between(1, DAY_S, "1 s to 24 h");
    private static final Range BEHIND = Range.from0(DAY_S, "0 min to 24 h");
    private static final String ALL = "all";

    private final SeasonIds ids;
    private final Problems problems;
    private final UnitsSeen units;

    LogRow(Season season, Problems problems) {
        this.ids = SeasonIds.of(season);
        this.units = UnitsSeen.of(season.units());
        this.problems = problems;
    }

    Optional<LoggedLine> read(Node.Mapping row) {
        int before = problems.count();
        Keys keys = Keys.of(row, problems, units);
        LogCells cells = new LogCells(keys);
        Optional<Integer> number = cells.number(ENTRY, "number the entries 1, 2, 3 and on");
        Optional<LocalDateTime> at = cells.moment(AT);
        Optional<FactKind> kind = kind(cells);
        String note = cells.note();
        kind.ifPresent(known -> refuseOtherCells(row, known));
        Optional<Fact> fact = kind.flatMap(known -> fact(known, cells, keys));
        Optional<Duration> took = cells.time(TOOK, TOOK_S);
        if (problems.count() > before || number.isEmpty() || at.isEmpty() || fact.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LoggedLine(new Entry(number.get(), at.get(), fact.get(), took, note), cells));
    }

    private static Optional<FactKind> kind(LogCells cells) {
        List<String> words = FactKind.words();
        String remedy = "write one of " + String.join(", ", words);
        Optional<String> word = cells.needed(FACT, remedy);
        Optional<FactKind> kind = word.flatMap(FactKind::of);
        if (word.isPresent() && kind.isEmpty()) {
            cells.problem(
                    FACT,
                    "'" + word.get() + "' is not a fact that a log knows",
                    Nearest.to(word.get(), words)
                            .map(nearest -> "did you mean " + nearest + "?")
                            .orElse(remedy));
        }
        return kind;
    }

    private void refuseOtherCells(Node.Mapping row, FactKind kind) {
        row.entries().forEach((title, cell) -> Column.of(title)
                .filter(column -> !kind.takes(column))
                .ifPresent(column -> problems.add(
                        cell.place(),
                        "says " + cell.noun() + ", which does not go with " + kind.word(),
                        "leave the cell empty")));
    }

    private Optional<Fact> fact(FactKind kind, LogCells cells, Keys keys) {
        return switch (kind) {
            case PLANTED -> planted(cells);
            case BATCH -> batch(cells, keys);
            case TRANSFER -> transfer(cells);
            case DRIVE -> drive(cells);
            case DRAWN -> drawn(cells);
            case DELIVERED -> both(lot(cells), cells.amount(Kind.MASS, MASS), Fact.CompostDelivered::new);
            case SPOILED -> both(lot(cells), spoiled(cells), Fact.CompostSpoiled::new);
            case RAIN -> cells.amount(Kind.RAIN, RAIN).map(Fact.RainMeasured::new);
            case DOWN -> down(cells);
            case BEHIND -> behind(cells);
            case FIT -> field(cells).map(id -> new Fact.GroundJudged(id, true, Optional.empty()));
            case UNFIT -> unfit(cells);
            case NOTE_ONLY -> cells.needed(NOTE, "write the note").map(text -> new Fact.Noted());
            case VOID ->
                both(
                        cells.number(VOIDS, "write the number of the entry that was wrong"),
                        cells.needed(NOTE, "write why the entry is void"),
                        (entry, why) -> new Fact.Voided(entry));
        };
    }

    private Optional<Fact> planted(LogCells cells) {
        Optional<String> field = field(cells);
        Optional<Double> area = cells.amount(Kind.AREA, AREA);
        Optional<String> planter = cells.optionalId(MACHINE, "planter", ids.planters());
        Optional<String> named = oneLoad(cells);
        boolean without = named.filter(Fact.Planted.NO_LOAD::equals).isPresent();
        Optional<String> load = named.filter(id -> !without);
        return both(field, area, (id, ha) -> new Fact.Planted(id, ha, planter, load, without));
    }

    private Optional<Fact> batch(LogCells cells, Keys keys) {
        Optional<String> rig = cells.id(MACHINE, "rig", ids.rigs());
        Optional<String> place = cells.optionalId(PLACE, "place", ids.places());
        List<String> loads = cells.loads();
        return both(
                rig,
                new LotCell(keys, ids.lots()).kgByLot(),
                (id, kgByLot) -> new Fact.BatchMade(id, kgByLot, loads, place));
    }

    private Optional<Fact> transfer(LogCells cells) {
        Optional<String> rig = cells.id(MACHINE, "rig", ids.rigs());
        Optional<Double> litres = cells.amount(Kind.VOLUME, VOLUME);
        Optional<String> load = oneLoad(cells);
        return both(rig, litres, (id, amount) -> new Fact.Transferred(id, amount, load));
    }

    private Optional<Fact> drive(LogCells cells) {
        Optional<String> machine = cells.id(MACHINE, "machine", ids.machines());
        return both(machine, cells.way(ids.places()), (id, way) -> new Fact.Driven(id, way.get(0), way.get(1)));
    }

    private static Optional<String> oneLoad(LogCells cells) {
        List<String> loads = cells.loads();
        if (loads.size() > 1) {
            cells.problem(LOAD, "names " + loads.size() + " loads", "write one line for each load");
        }
        return loads.stream().findFirst();
    }

    private Optional<Fact> drawn(LogCells cells) {
        Optional<String> point = cells.id(PLACE, "water point", ids.waterPoints());
        Optional<String> rig = cells.id(MACHINE, "rig", ids.rigs());
        Optional<Double> litres = cells.amount(Kind.VOLUME, VOLUME);
        return litres.flatMap(amount -> both(point, rig, (from, to) -> new Fact.WaterDrawn(from, to, amount)));
    }

    private Optional<Fact> down(LogCells cells) {
        Optional<String> machine = cells.id(MACHINE, "machine", ids.machines());
        Optional<LocalDateTime> until = until(cells);
        return machine.map(id -> new Fact.MachineDown(id, until));
    }

    private Optional<Fact> behind(LogCells cells) {
        Optional<String> machine = cells.id(MACHINE, "machine", ids.machines());
        Optional<Double> seconds = cells.amount(Kind.TIME, BEHIND);
        return both(machine, seconds, (id, s) -> new Fact.MachineBehind(id, Duration.ofSeconds(Math.round(s))));
    }

    private Optional<Fact> unfit(LogCells cells) {
        Optional<String> field = field(cells);
        Optional<LocalDateTime> until = until(cells);
        return field.map(id -> new Fact.GroundJudged(id, false, until));
    }

    private static Optional<LocalDateTime> until(LogCells cells) {
        return cells.has(UNTIL) ? cells.dayOrMoment(UNTIL) : Optional.empty();
    }

    private Optional<String> field(LogCells cells) {
        return cells.id(PLACE, "field", ids.fields());
    }

    private Optional<String> lot(LogCells cells) {
        return cells.id(LOT, "compost lot", ids.lots());
    }

    private static Optional<OptionalDouble> spoiled(LogCells cells) {
        if (cells.text(AMOUNT).filter(ALL::equals).isPresent()) {
            return Optional.of(OptionalDouble.empty());
        }
        return cells.amount(Kind.MASS, MASS).map(OptionalDouble::of);
    }

    private static <A, B> Optional<Fact> both(Optional<A> first, Optional<B> second, BiFunction<A, B, Fact> fact) {
        return first.flatMap(a -> second.map(b -> fact.apply(a, b)));
    }
}

package freshfurrow.model.write;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.Fact;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;

/** Facts out of a seed that can follow one another, each as a fact and, written by hand, as the cells of a line. */
final class RandomFacts {
    private final Season season;
    private final Random random;
    private final Map<String, Double> leftHa = new HashMap<>();
    private LocalDateTime now;

    RandomFacts(Season season, long seed) {
        this.season = season;
        random = new Random(seed);
        now = season.first().atStartOfDay();
        season.fields().forEach(field -> leftHa.put(field.id(), field.areaHa()));
    }

    record Written(LocalDateTime at, Fact fact, Optional<Duration> took, String note, Map<Column, String> cells) {}

    Written next() {
        now = now.plusMinutes(1 + random.nextInt(30));
        Map<Column, String> cells = new EnumMap<>(Column.class);
        cells.put(
                Column.AT,
                random.nextBoolean() ? now.toString() : now.toString().replace('T', ' '));
        Fact fact =
                switch (random.nextInt(12)) {
                    case 0 -> planted(cells);
                    case 1 -> batch(cells);
                    case 2 -> drawn(cells);
                    case 3 -> delivered(cells);
                    case 4 -> spoiled(cells);
                    case 5 -> rain(cells);
                    case 6 -> down(cells);
                    case 7 -> judged(cells);
                    case 8 -> behind(cells);
                    case 9 -> transfer(cells);
                    case 10 -> drive(cells);
                    default -> noted(cells);
                };
        if (random.nextInt(4) == 0) {
            cells.put(Column.NOTE, oneOf(List.of("dry", "said \"wait\", then went", "größer; 2 Säcke", "1,2,3")));
        }
        return new Written(now, fact, took(cells), cells.getOrDefault(Column.NOTE, ""), cells);
    }

    /** Work says how long it took half of the time. */
    private Optional<Duration> took(Map<Column, String> cells) {
        if (!List.of("planted", "batch", "transfer", "drive").contains(cells.get(Column.FACT))
                || random.nextBoolean()) {
            return Optional.empty();
        }
        int seconds = 1 + random.nextInt(86_400);
        cells.put(Column.TOOK, seconds + " s");
        return Optional.of(Duration.ofSeconds(seconds));
    }

    private Fact transfer(Map<Column, String> cells) {
        Rig rig = oneOf(season.rigs());
        double litres = 1 + random.nextDouble() * rig.nurseTankL();
        Optional<String> load = random.nextBoolean() ? Optional.of("T" + random.nextInt(1000)) : Optional.empty();
        cells.put(Column.FACT, "transfer");
        cells.put(Column.MACHINE, rig.id());
        cells.put(Column.AMOUNT, litres + " L");
        load.ifPresent(id -> cells.put(Column.LOAD, id));
        return new Fact.Transferred(rig.id(), litres, load);
    }

    private Fact drive(Map<Column, String> cells) {
        String machine = oneOf(season.applicators()).id();
        String from = oneOf(season.waterPoints()).id();
        String to = oneOf(season.fields()).id();
        cells.put(Column.FACT, "drive");
        cells.put(Column.MACHINE, machine);
        cells.put(Column.PLACE, from + oneOf(List.of(" ", ", ", ";")) + to);
        return new Fact.Driven(machine, from, to);
    }

    private Fact planted(Map<Column, String> cells) {
        Field field = oneOf(season.fields());
        double left = leftHa.get(field.id());
        if (left < 0.01) {
            return noted(cells);
        }
        double ha = random.nextBoolean() ? left : Math.max(0.001, left * random.nextDouble());
        leftHa.merge(field.id(), -ha, Double::sum);
        Optional<String> planter =
                random.nextBoolean() ? Optional.of(oneOf(season.applicators()).id()) : Optional.empty();
        Optional<String> load = random.nextBoolean() ? Optional.of("L" + random.nextInt(1000)) : Optional.empty();
        cells.put(Column.FACT, "planted");
        cells.put(Column.PLACE, field.id());
        cells.put(Column.AMOUNT, ha + " ha");
        planter.ifPresent(id -> cells.put(Column.MACHINE, id));
        boolean without = load.isEmpty() && random.nextBoolean();
        load.or(() -> without ? Optional.of("none") : Optional.empty()).ifPresent(id -> cells.put(Column.LOAD, id));
        return new Fact.Planted(field.id(), ha, planter, load, without);
    }

    private Fact batch(Map<Column, String> cells) {
        Rig rig = oneOf(season.rigs());
        Map<String, Double> kgByLot = new LinkedHashMap<>();
        season.compost().stream()
                .limit(1 + random.nextInt(2))
                .forEach(lot -> kgByLot.put(lot.id(), rig.batchCompostKg() * (0.1 + random.nextDouble()) / 2));
        cells.put(Column.FACT, "batch");
        cells.put(Column.MACHINE, rig.id());
        if (kgByLot.size() == 1) {
            kgByLot.forEach((lot, kg) -> {
                cells.put(Column.LOT, lot);
                cells.put(Column.AMOUNT, kg + " kg");
            });
        } else {
            cells.put(
                    Column.LOT,
                    kgByLot.entrySet().stream()
                            .map(part -> part.getKey() + " " + part.getValue() + " kg")
                            .collect(Collectors.joining("; ")));
        }
        Optional<String> place =
                random.nextBoolean() ? Optional.of(oneOf(season.fields()).id()) : Optional.empty();
        place.ifPresent(id -> cells.put(Column.PLACE, id));
        // Loads of their own, as planting from a load may not come before its batches.
        List<String> loads = List.of("M" + random.nextInt(1000), "M" + (1000 + random.nextInt(1000)))
                .subList(0, random.nextInt(3));
        if (!loads.isEmpty()) {
            cells.put(Column.LOAD, String.join(oneOf(List.of(" ", ", ", ";")), loads));
        }
        return new Fact.BatchMade(rig.id(), kgByLot, loads, place);
    }

    private Fact drawn(Map<Column, String> cells) {
        Rig rig = oneOf(season.rigs());
        double litres = 1 + random.nextDouble() * (rig.nurseTankL() - 1);
        String point = oneOf(season.waterPoints()).id();
        cells.put(Column.FACT, "drawn");
        cells.put(Column.PLACE, point);
        cells.put(Column.MACHINE, rig.id());
        cells.put(Column.AMOUNT, litres + "L");
        return new Fact.WaterDrawn(point, rig.id(), litres);
    }

    private Fact delivered(Map<Column, String> cells) {
        CompostLot lot = oneOf(season.compost());
        cells.put(Column.FACT, "delivered");
        cells.put(Column.LOT, lot.id());
        cells.put(Column.AMOUNT, "2 t");
        return new Fact.CompostDelivered(lot.id(), 2000);
    }

    private Fact spoiled(Map<Column, String> cells) {
        CompostLot lot = oneOf(season.compost());
        OptionalDouble kg = random.nextBoolean() ? OptionalDouble.of(1 + random.nextInt(50)) : OptionalDouble.empty();
        cells.put(Column.FACT, "spoiled");
        cells.put(Column.LOT, lot.id());
        cells.put(Column.AMOUNT, kg.isPresent() ? kg.getAsDouble() + " kg" : "all");
        return new Fact.CompostSpoiled(lot.id(), kg);
    }

    private Fact rain(Map<Column, String> cells) {
        double mm = 0.5 + random.nextInt(100);
        cells.put(Column.FACT, "rain");
        cells.put(Column.AMOUNT, String.format(Locale.ROOT, "%.1f mm", mm));
        return new Fact.RainMeasured(mm);
    }

    private Fact down(Map<Column, String> cells) {
        String machine = oneOf(season.applicators()).id();
        Optional<LocalDateTime> until =
                random.nextBoolean() ? Optional.of(now.plusHours(1 + random.nextInt(100))) : Optional.empty();
        cells.put(Column.FACT, "down");
        cells.put(Column.MACHINE, machine);
        until.ifPresent(time -> cells.put(Column.UNTIL, time.toString()));
        return new Fact.MachineDown(machine, until);
    }

    private Fact behind(Map<Column, String> cells) {
        String machine = oneOf(season.rigs()).id();
        int minutes = random.nextInt(300);
        cells.put(Column.FACT, "behind");
        cells.put(Column.MACHINE, machine);
        cells.put(Column.AMOUNT, minutes + " min");
        return new Fact.MachineBehind(machine, Duration.ofMinutes(minutes));
    }

    private Fact judged(Map<Column, String> cells) {
        String field = oneOf(season.fields()).id();
        boolean fit = random.nextBoolean();
        Optional<LocalDateTime> until = fit || random.nextBoolean()
                ? Optional.empty()
                : Optional.of(now.toLocalDate().plusDays(1 + random.nextInt(5)).atStartOfDay());
        cells.put(Column.FACT, fit ? "fit" : "unfit");
        cells.put(Column.PLACE, field);
        until.ifPresent(time -> cells.put(
                Column.UNTIL, random.nextBoolean() ? time.toLocalDate().toString() : time.toString()));
        return new Fact.GroundJudged(field, fit, until);
    }

    private static Fact noted(Map<Column, String> cells) {
        cells.put(Column.FACT, "note");
        cells.put(Column.NOTE, "windy");
        return new Fact.Noted();
    }

    private <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}

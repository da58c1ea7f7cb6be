package freshfurrow.cli.command;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.FactKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be logged, a command for each kind of fact. */
abstract class LogFacts {
    /**
     * Adds lines to the log, all of them or none.
     *
     * @return the exit code
     */
    abstract int add(List<Map<Column, String>> lines);

    private int add(Map<Column, String> cells) {
        return add(List.of(cells));
    }

    @Command(
            name = "planted",
            header = "A field or part of it was planted.",
            customSynopsis = "freshfurrow log SEASON planted [OPTIONS] FIELD AREA",
            description = "%nThe areas of a field add up until it is finished. --at is the end of planting.%n",
            footer = {
                "  freshfurrow log season.yaml planted N80 41ac",
                "  freshfurrow log season.yaml planted N80 16.6ha --planter P1 --load L0001",
                "  freshfurrow log season.yaml planted N80 41ac --at 2027-04-23T15:10",
                "  freshfurrow log season.yaml planted N80 41ac --without-extract",
                "  freshfurrow log season.yaml planted N80 41ac --planter P1 --took 3.1h"
            })
    int planted(
            @Parameters(paramLabel = "FIELD", index = "0", description = "id of the field") String field,
            @Parameters(
                            paramLabel = "AREA",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much of it, like 41ac or 16.6ha")
                    List<String> area,
            @Option(names = "--planter", paramLabel = "ID", description = "which planter planted it")
                    Optional<String> planter,
            @ArgGroup @Nullable OutOf outOf,
            @Mixin TookOption took,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.PLANTED);
        cells.put(Column.PLACE, field);
        cells.put(Column.AMOUNT, String.join(" ", area));
        planter.ifPresent(id -> cells.put(Column.MACHINE, id));
        if (outOf != null) {
            cells.put(Column.LOAD, outOf.load.orElse(Fact.Planted.NO_LOAD));
        }
        took.put(cells);
        return add(cells);
    }

    /** What a field was planted with. */
    static final class OutOf {
        @Option(names = "--load", paramLabel = "ID", description = "the load that was used, as named in the plan")
        Optional<String> load = Optional.empty();

        @Option(names = "--without-extract", description = "it was planted without extract")
        boolean withoutExtract;
    }

    @Command(
            name = "batch",
            header = "A batch was made.",
            customSynopsis = "freshfurrow log SEASON batch [OPTIONS] RIG --lot ID --compost MASS",
            description = "%n--at is the end of extraction, when the hold time starts.%n",
            footer = {
                "  freshfurrow log season.yaml batch R1 --lot windrow --compost 24lb --load L0001",
                "  freshfurrow log season.yaml batch R1 --lot 'windrow 6kg' --lot 'barn 5kg'",
                "  freshfurrow log season.yaml batch R1 --lot windrow --compost 24lb --took 18min"
            })
    int batch(
            @Parameters(paramLabel = "RIG", description = "id of the rig") String rig,
            @Option(
                            names = "--lot",
                            paramLabel = "ID",
                            required = true,
                            description =
                                    "the compost lot; for several lots, each with its amount, like 'windrow 14lb' or 'windrow 6kg'")
                    List<String> lots,
            @Option(names = "--compost", paramLabel = "MASS", description = "how much compost, if it is from one lot")
                    Optional<String> compost,
            @Option(
                            names = "--load",
                            paramLabel = "ID",
                            description = "the load it goes into; for several, 'L0001, L0002'")
                    Optional<String> load,
            @Option(
                            names = "--place",
                            paramLabel = "ID",
                            description = "where it was made: a field, place or water point")
                    Optional<String> place,
            @Mixin TookOption took,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.BATCH);
        cells.put(Column.MACHINE, rig);
        cells.put(Column.LOT, String.join("; ", lots));
        compost.ifPresent(mass -> cells.put(Column.AMOUNT, mass));
        load.ifPresent(ids -> cells.put(Column.LOAD, ids));
        place.ifPresent(id -> cells.put(Column.PLACE, id));
        took.put(cells);
        return add(cells);
    }

    @Command(
            name = "drawn",
            header = "A rig drew water.",
            customSynopsis = "freshfurrow log SEASON drawn [OPTIONS] POINT AMOUNT --rig ID",
            description =
                    "%n--at is the end of the draw. All draws of a day count against the limit of the water point.%n",
            footer = {
                "  freshfurrow log season.yaml drawn well 1100gal --rig R1",
                "  freshfurrow log season.yaml drawn well 4200L --rig R1"
            })
    int drawn(
            @Parameters(paramLabel = "POINT", index = "0", description = "id of the water point") String point,
            @Parameters(
                            paramLabel = "AMOUNT",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much, like 1100gal or 4200L")
                    List<String> amount,
            @Option(names = "--rig", paramLabel = "ID", required = true, description = "which rig drew it") String rig,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.DRAWN);
        cells.put(Column.PLACE, point);
        cells.put(Column.AMOUNT, String.join(" ", amount));
        cells.put(Column.MACHINE, rig);
        return add(cells);
    }

    @Command(
            name = "delivered",
            header = "Compost was delivered.",
            customSynopsis = "freshfurrow log SEASON delivered [OPTIONS] LOT MASS",
            description =
                    "%nFor a lot that the season file expects after the first day of the season, what was delivered replaces what was expected. To any other lot it is added.%n",
            footer = {
                "  freshfurrow log season.yaml delivered windrow 900lb",
                "  freshfurrow log season.yaml delivered windrow 400kg"
            })
    int delivered(
            @Parameters(paramLabel = "LOT", index = "0", description = "id of the lot") String lot,
            @Parameters(
                            paramLabel = "MASS",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much, like 900lb or 400kg")
                    List<String> mass,
            @Mixin LineOptions line) {
        return addOfLot(FactKind.DELIVERED, lot, mass, line);
    }

    @Command(
            name = "spoiled",
            header = "Compost spoiled.",
            customSynopsis = "freshfurrow log SEASON spoiled [OPTIONS] LOT MASS",
            description = "%nSpoiled compost can no longer be used for batches.%n",
            footer = {
                "  freshfurrow log season.yaml spoiled windrow 200lb --note 'sour smell'",
                "  freshfurrow log season.yaml spoiled windrow all"
            })
    int spoiled(
            @Parameters(paramLabel = "LOT", index = "0", description = "id of the lot") String lot,
            @Parameters(
                            paramLabel = "MASS",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much, like 200lb or 90kg, or all for whatever is left")
                    List<String> mass,
            @Mixin LineOptions line) {
        return addOfLot(FactKind.SPOILED, lot, mass, line);
    }

    @Command(
            name = "rain",
            header = "Rain was measured.",
            customSynopsis = "freshfurrow log SEASON rain [OPTIONS] DEPTH",
            description = "%n--at is when it started.%n",
            footer = {
                "  freshfurrow log season.yaml rain 0.8in --at 2027-05-03T14:00",
                "  freshfurrow log season.yaml rain 20mm --at 2027-05-03T14:00"
            })
    int rain(
            @Parameters(
                            paramLabel = "DEPTH",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much, like 0.8in or 20mm")
                    List<String> depth,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.RAIN);
        cells.put(Column.AMOUNT, String.join(" ", depth));
        return add(cells);
    }

    @Command(
            name = "down",
            header = "A planter, sprayer or rig broke down.",
            customSynopsis = "freshfurrow log SEASON down [OPTIONS] MACHINE",
            description = "%n--at is when it broke down.%n",
            footer = {"  freshfurrow log season.yaml down R1 \\", "      --at 2027-05-04T08:00 --until 2027-05-05T12:00"
            })
    int down(
            @Parameters(paramLabel = "MACHINE", description = "id of the planter, sprayer or rig") String machine,
            @Option(
                            names = "--until",
                            paramLabel = "TIME",
                            description = "when it works again, like 2027-05-05T12:00 (default: not known)")
                    Optional<String> until,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.DOWN);
        cells.put(Column.MACHINE, machine);
        until.ifPresent(time -> cells.put(Column.UNTIL, time));
        return add(cells);
    }

    @Command(
            name = "note",
            header = "Anything else worth keeping.",
            customSynopsis = "freshfurrow log SEASON note [OPTIONS] TEXT",
            description = "%nFor whatever the other facts do not cover.%n",
            footer = "  freshfurrow log season.yaml note 'strainer torn, new one fitted'")
    int note(
            @Parameters(paramLabel = "TEXT", arity = "1..*", hideParamSyntax = true, description = "what to note")
                    List<String> text,
            @Mixin MomentOption moment) {
        Map<Column, String> cells = moment.cells(FactKind.NOTE_ONLY);
        cells.put(Column.NOTE, String.join(" ", text));
        return add(cells);
    }

    @Command(
            name = "void",
            header = "Cancel an earlier entry that was wrong.",
            customSynopsis = "freshfurrow log SEASON void [OPTIONS] ENTRY --because WHY",
            description = "%nThe entry stays in the log but no longer counts.%n",
            footer = "  freshfurrow log season.yaml void 7 --because 'that was S110'")
    int voidEntry(
            @Parameters(paramLabel = "ENTRY", description = "number of the entry, as list shows it") String entry,
            @Option(names = "--because", paramLabel = "WHY", required = true, description = "what was wrong")
                    String why,
            @Mixin MomentOption moment) {
        Map<Column, String> cells = moment.cells(FactKind.VOID);
        cells.put(Column.VOIDS, entry);
        cells.put(Column.NOTE, why);
        return add(cells);
    }

    /** What {@code void} was called before. */
    @Command(
            name = FactKind.OLD_VOID,
            hidden = true,
            header = "The old name of void.",
            customSynopsis = "freshfurrow log SEASON void [OPTIONS] ENTRY --because WHY",
            description = "%nUse void instead.%n",
            footer = "  freshfurrow log season.yaml void 7 --because 'that was S110'")
    int takeBack(
            @Parameters(paramLabel = "ENTRY", description = "number of the entry, as list shows it") String entry,
            @Option(names = "--because", paramLabel = "WHY", required = true, description = "what was wrong")
                    String why,
            @Mixin MomentOption moment) {
        return voidEntry(entry, why, moment);
    }

    private int addOfLot(FactKind kind, String lot, List<String> mass, LineOptions line) {
        Map<Column, String> cells = line.cells(kind);
        cells.put(Column.LOT, lot);
        cells.put(Column.AMOUNT, String.join(" ", mass));
        return add(cells);
    }
}

package freshfurrow.cli.command;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be logged, a command for each kind of fact. */
abstract class LogFacts {
    /**
     * Adds a line to the log.
     *
     * @return the exit code
     */
    abstract int add(Map<Column, String> cells);

    @Command(
            name = "planted",
            header = "A field, or a part of it, was planted.",
            customSynopsis = "freshfurrow log SEASON planted [OPTIONS] FIELD AREA",
            description = "%nAreas of a field add up until it is planted in whole. --at is the end of the planting.%n",
            footer = {
                "  freshfurrow log season.yaml planted N80 41ac",
                "  freshfurrow log season.yaml planted N80 41ac --planter P1 --load L0001",
                "  freshfurrow log season.yaml planted N80 41ac --at 2027-04-23T15:10"
            })
    int planted(
            @Parameters(paramLabel = "FIELD", index = "0", description = "id of the field") String field,
            @Parameters(
                            paramLabel = "AREA",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much of it, as 41ac")
                    List<String> area,
            @Option(names = "--planter", paramLabel = "ID", description = "which planter planted it")
                    Optional<String> planter,
            @Option(names = "--load", paramLabel = "ID", description = "the load it was planted from, as in the plan")
                    Optional<String> load,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.PLANTED);
        cells.put(Column.PLACE, field);
        cells.put(Column.AMOUNT, String.join(" ", area));
        planter.ifPresent(id -> cells.put(Column.MACHINE, id));
        load.ifPresent(id -> cells.put(Column.LOAD, id));
        return add(cells);
    }

    @Command(
            name = "batch",
            header = "A batch was extracted.",
            customSynopsis = "freshfurrow log SEASON batch [OPTIONS] RIG --lot ID --compost MASS",
            description = "%n--at is the end of the extraction, when the hold time begins.%n",
            footer = {
                "  freshfurrow log season.yaml batch R1 --lot windrow --compost 30lb --load L0001",
                "  freshfurrow log season.yaml batch R1 --lot 'windrow 20lb' --lot 'barn 10lb'"
            })
    int batch(
            @Parameters(paramLabel = "RIG", description = "id of the rig") String rig,
            @Option(
                            names = "--lot",
                            paramLabel = "ID",
                            required = true,
                            description = "the lot of compost; of several lots each with its amount, as 'windrow 20lb'")
                    List<String> lots,
            @Option(names = "--compost", paramLabel = "MASS", description = "how much compost, of one lot")
                    Optional<String> compost,
            @Option(
                            names = "--load",
                            paramLabel = "ID",
                            description = "the load it goes into; of several, 'L0001, L0002'")
                    Optional<String> load,
            @Option(
                            names = "--place",
                            paramLabel = "ID",
                            description = "where it was made: a field, place or water point")
                    Optional<String> place,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.BATCH);
        cells.put(Column.MACHINE, rig);
        cells.put(Column.LOT, String.join("; ", lots));
        compost.ifPresent(mass -> cells.put(Column.AMOUNT, mass));
        load.ifPresent(ids -> cells.put(Column.LOAD, ids));
        place.ifPresent(id -> cells.put(Column.PLACE, id));
        return add(cells);
    }

    @Command(
            name = "drawn",
            header = "A rig drew water.",
            customSynopsis = "freshfurrow log SEASON drawn [OPTIONS] POINT AMOUNT --rig ID",
            description =
                    "%n--at is the end of the drawing. Amounts of a day count against the limit of the water point.%n",
            footer = "  freshfurrow log season.yaml drawn well 1100gal --rig R1")
    int drawn(
            @Parameters(paramLabel = "POINT", index = "0", description = "id of the water point") String point,
            @Parameters(
                            paramLabel = "AMOUNT",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much, as 1100gal")
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
            header = "Compost came.",
            customSynopsis = "freshfurrow log SEASON delivered [OPTIONS] LOT MASS",
            description =
                    "%nOf a lot that the season file expects after the first day of the season, what was delivered counts instead of what was expected. To any other lot it is added.%n",
            footer = "  freshfurrow log season.yaml delivered windrow 900lb")
    int delivered(
            @Parameters(paramLabel = "LOT", index = "0", description = "id of the lot") String lot,
            @Parameters(
                            paramLabel = "MASS",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much, as 900lb")
                    List<String> mass,
            @Mixin LineOptions line) {
        return addOfLot(FactKind.DELIVERED, lot, mass, line);
    }

    @Command(
            name = "spoiled",
            header = "Compost was found to be of no use.",
            customSynopsis = "freshfurrow log SEASON spoiled [OPTIONS] LOT MASS",
            description = "%nWhat is spoiled is not there for batches any more.%n",
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
                            description = "how much, as 200lb, or all for what is left")
                    List<String> mass,
            @Mixin LineOptions line) {
        return addOfLot(FactKind.SPOILED, lot, mass, line);
    }

    @Command(
            name = "rain",
            header = "Rain was measured.",
            customSynopsis = "freshfurrow log SEASON rain [OPTIONS] DEPTH",
            description = "%n--at is when it began.%n",
            footer = "  freshfurrow log season.yaml rain 0.8in --at 2027-05-03T14:00")
    int rain(
            @Parameters(
                            paramLabel = "DEPTH",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much, as 0.8in or 20mm")
                    List<String> depth,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.RAIN);
        cells.put(Column.AMOUNT, String.join(" ", depth));
        return add(cells);
    }

    @Command(
            name = "down",
            header = "A planter or rig broke down.",
            customSynopsis = "freshfurrow log SEASON down [OPTIONS] MACHINE",
            description = "%n--at is when it broke down.%n",
            footer = {"  freshfurrow log season.yaml down R1 \\", "      --at 2027-05-04T08:00 --until 2027-05-05T12:00"
            })
    int down(
            @Parameters(paramLabel = "MACHINE", description = "id of the planter or rig") String machine,
            @Option(
                            names = "--until",
                            paramLabel = "TIME",
                            description = "when it works again, as 2027-05-05T12:00 (default: nobody knows)")
                    Optional<String> until,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.DOWN);
        cells.put(Column.MACHINE, machine);
        until.ifPresent(time -> cells.put(Column.UNTIL, time));
        return add(cells);
    }

    @Command(
            name = "note",
            header = "Something else worth keeping.",
            customSynopsis = "freshfurrow log SEASON note [OPTIONS] TEXT",
            description = "%nFor whatever no other word of the log says.%n",
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
            name = "takeback",
            header = "An earlier entry was wrong and does not count any more.",
            customSynopsis = "freshfurrow log SEASON takeback [OPTIONS] ENTRY --because WHY",
            description = "%nThe entry stays in the log, and so does the reason.%n",
            footer = "  freshfurrow log season.yaml takeback 7 --because 'that was S110'")
    int takeback(
            @Parameters(paramLabel = "ENTRY", description = "number of the entry, as list shows it") String entry,
            @Option(names = "--because", paramLabel = "WHY", required = true, description = "what was wrong")
                    String why,
            @Mixin MomentOption moment) {
        Map<Column, String> cells = moment.cells(FactKind.TAKEBACK);
        cells.put(Column.TAKES_BACK, entry);
        cells.put(Column.NOTE, why);
        return add(cells);
    }

    private int addOfLot(FactKind kind, String lot, List<String> mass, LineOptions line) {
        Map<Column, String> cells = line.cells(kind);
        cells.put(Column.LOT, lot);
        cells.put(Column.AMOUNT, String.join(" ", mass));
        return add(cells);
    }
}

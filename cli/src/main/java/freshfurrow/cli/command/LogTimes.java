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

/** Work that is logged for the time that it took. */
abstract class LogTimes extends LogFacts {
    @Command(
            name = "transfer",
            header = "A rig pumped a load into a planter or sprayer.",
            customSynopsis = "freshfurrow log SEASON transfer [OPTIONS] RIG AMOUNT",
            description =
                    "%n--at is its end, --took the time for which it was pumped, without connecting and disconnecting. No replan needs it; learn does.%n",
            footer = {
                "  freshfurrow log season.yaml transfer R1 620gal --load L0001 --took 9.5min",
                "  freshfurrow log season.yaml transfer R1 2300L --load L0001 --took 9.5min"
            })
    int transfer(
            @Parameters(paramLabel = "RIG", index = "0", description = "id of the rig") String rig,
            @Parameters(
                            paramLabel = "AMOUNT",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "how much mix, like 620gal or 2300L")
                    List<String> amount,
            @Option(names = "--load", paramLabel = "ID", description = "the load, as named in the plan")
                    Optional<String> load,
            @Mixin TookOption took,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.TRANSFER);
        cells.put(Column.MACHINE, rig);
        cells.put(Column.AMOUNT, String.join(" ", amount));
        load.ifPresent(id -> cells.put(Column.LOAD, id));
        took.put(cells);
        return add(List.of(cells));
    }

    @Command(
            name = "drive",
            header = "A machine drove from one place to another.",
            customSynopsis = "freshfurrow log SEASON drive [OPTIONS] MACHINE FROM TO",
            description =
                    "%n--at is when it arrived, --took the time on the road, without folding, gates and waiting.%n",
            footer = "  freshfurrow log season.yaml drive R1 well N80 --took 7min")
    int drive(
            @Parameters(paramLabel = "MACHINE", index = "0", description = "id of the planter, sprayer or rig")
                    String machine,
            @Parameters(
                            paramLabel = "FROM",
                            index = "1",
                            description = "where it set off: a field, place or water point")
                    String from,
            @Parameters(paramLabel = "TO", index = "2", description = "where it arrived") String to,
            @Mixin TookOption took,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.DRIVE);
        cells.put(Column.MACHINE, machine);
        cells.put(Column.PLACE, from + " " + to);
        took.put(cells);
        return add(List.of(cells));
    }
}

package freshfurrow.cli.command;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What people say of a season under way, which counts over what the program works out. */
abstract class LogSayings extends LogFacts {
    @Command(
            name = "fit",
            header = "Ground is fit for machines.",
            customSynopsis = "freshfurrow log SEASON fit [OPTIONS] FIELD...",
            description =
                    "%nWhat you saw counts over all rain that had begun by --at. Rain that begins later closes the field again.%n",
            footer = {
                "  freshfurrow log season.yaml fit N80 S110",
                "  freshfurrow log season.yaml fit N80 --at 2027-05-04T07:00"
            })
    int fit(
            @Parameters(paramLabel = "FIELD", arity = "1..*", hideParamSyntax = true, description = "ids of the fields")
                    List<String> fields,
            @Mixin LineOptions line) {
        return judged(fields, line.cells(FactKind.FIT));
    }

    @Command(
            name = "unfit",
            header = "Ground is not fit for machines.",
            customSynopsis = "freshfurrow log SEASON unfit [OPTIONS] FIELD...",
            description =
                    "%nThe field is closed until then, whatever rain had begun by --at. Rain that begins later counts as always.%n",
            footer = {
                "  freshfurrow log season.yaml unfit N80 --until 2027-05-06",
                "  freshfurrow log season.yaml unfit N80 S110"
            })
    int unfit(
            @Parameters(paramLabel = "FIELD", arity = "1..*", hideParamSyntax = true, description = "ids of the fields")
                    List<String> fields,
            @Option(
                            names = "--until",
                            paramLabel = "TIME",
                            description =
                                    "from when on it will be fit, like 2027-05-06 or 2027-05-06T10:00 (default: when somebody logs that it is)")
                    Optional<String> until,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.UNFIT);
        until.ifPresent(time -> cells.put(Column.UNTIL, time));
        return judged(fields, cells);
    }

    private int judged(List<String> fields, Map<Column, String> cells) {
        return add(fields.stream()
                .distinct()
                .map(field -> with(cells, Column.PLACE, field))
                .toList());
    }

    private static Map<Column, String> with(Map<Column, String> cells, Column column, String text) {
        Map<Column, String> more = new EnumMap<>(cells);
        more.put(column, text);
        return more;
    }
}

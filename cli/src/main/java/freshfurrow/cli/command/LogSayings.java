package freshfurrow.cli.command;

import freshfurrow.model.log.Column;
import freshfurrow.model.log.FactKind;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What people say of a season under way, which counts over what the program works out. */
abstract class LogSayings extends LogTimes {
    /**
     * Adds what the plan says was done.
     *
     * @return the exit code
     */
    abstract int addAsPlanned(Optional<LocalDateTime> until, List<String> except);

    @Command(
            name = "asplanned",
            header = "All was done as the plan says.",
            customSynopsis = "freshfurrow log SEASON asplanned [OPTIONS]",
            description =
                    "%nAdds a line for all that the newest plan says was drawn, extracted and planted by --until and the log lacks: all of them or none. Of planting that goes on then, the share by time.%n",
            footer = {
                "  freshfurrow log season.yaml asplanned --until 2027-05-04T18:00",
                "  freshfurrow log season.yaml asplanned --until 2027-05-04T18:00 \\",
                "      --except S110,R1"
            })
    int asPlanned(
            @Option(
                            names = "--until",
                            paramLabel = "TIME",
                            converter = MomentConverter.class,
                            description = "up to when, like 2027-05-04T18:00 (default: now, on a day of the season)")
                    Optional<LocalDateTime> until,
            @Option(
                            names = "--except",
                            paramLabel = "ID",
                            split = ",",
                            description =
                                    "fields whose planting, and machines whose work, was otherwise; log that yourself")
                    List<String> except) {
        return addAsPlanned(until, except == null ? List.of() : except);
    }

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

    @Command(
            name = "behind",
            header = "A machine is behind the plan.",
            customSynopsis = "freshfurrow log SEASON behind [OPTIONS] MACHINE TIME",
            description =
                    "%nBy so much of its working time. The next replan takes what the plan says of it as done that much later. 0min when it has caught up.%n",
            footer = "  freshfurrow log season.yaml behind P1 50min")
    int behind(
            @Parameters(paramLabel = "MACHINE", index = "0", description = "id of the planter, sprayer or rig")
                    String machine,
            @Parameters(
                            paramLabel = "TIME",
                            index = "1",
                            arity = "1..2",
                            hideParamSyntax = true,
                            description = "by how much, like 50min or 1.5h")
                    List<String> time,
            @Mixin LineOptions line) {
        Map<Column, String> cells = line.cells(FactKind.BEHIND);
        cells.put(Column.MACHINE, machine);
        cells.put(Column.AMOUNT, String.join(" ", time));
        return add(List.of(cells));
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

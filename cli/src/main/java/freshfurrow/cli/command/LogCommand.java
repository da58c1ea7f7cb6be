package freshfurrow.cli.command;

import freshfurrow.app.log.AddedEntries;
import freshfurrow.app.log.LoggedSeason;
import freshfurrow.cli.text.LogReport;
import freshfurrow.model.log.Column;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "log",
        header = "Log what was done in a season, and list it.",
        description =
                "%nThe log is log.csv beside the season file, one fact per line. A line is checked, then added whole or not at all. It is never changed: a later line voids a wrong one. Without a fact, the log is listed. docs/season-log.md has more.%n",
        footer = {
            "  freshfurrow log scenarios/first-season planted N80 41ac --at 2027-04-23T15:10",
            "  freshfurrow log scenarios/metric planted M01 4.2ha --at 2027-04-19T15:10",
            "  freshfurrow log season.yaml batch R1 --lot windrow --compost 24lb --load L0001",
            "  freshfurrow log season.yaml void 7 --because 'other field'",
            "  freshfurrow log season.yaml list"
        })
final class LogCommand extends LogSayings implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private LogArguments log = new LogArguments();

    @Override
    public Integer call() {
        LoggedSeason logged = log.logbook().list();
        Output.print(spec, LogReport.list(logged.season(), logged.log()));
        return Freshfurrow.OK;
    }

    @Command(
            name = "list",
            header = "List the log and what it adds up to.",
            customSynopsis = "freshfurrow log SEASON list [OPTIONS]",
            description = "%nAll entries in the order of the log, void ones too; then what the others add up to.%n",
            footer = "  freshfurrow log season.yaml list")
    int list() {
        return call();
    }

    @Override
    int add(List<Map<Column, String>> lines) {
        AddedEntries added = log.logbook().add(lines);
        Output.print(spec, LogReport.added(added.season(), added.log(), added.entries()));
        return Freshfurrow.OK;
    }

    @Override
    int addAsPlanned(Optional<LocalDateTime> until, List<String> except) {
        AddedEntries added = log.logbook().addAsPlanned(until, except);
        Output.print(spec, LogReport.addedTogether(added.season(), added.log(), added.entries()));
        return Freshfurrow.OK;
    }
}

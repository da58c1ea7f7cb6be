package freshfurrow.cli.command;

import freshfurrow.app.input.Chosen;
import freshfurrow.cli.text.TraceText;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "trace",
        header = "Follow a field back to its compost, or a lot of compost on to its fields.",
        description =
                "%nThe record out of the season's log: what was planted, from which load, out of which batches and lots, with times, amounts and age at use. What the log leaves out and the plan has is told as planned, not logged.%n",
        footer = {
            "  freshfurrow trace season.yaml --field N80",
            "  freshfurrow trace season.yaml --lot windrow --plan plans/001.json"
        })
final class TraceCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private LogArguments log = new LogArguments();

    @Option(names = "--field", paramLabel = "ID", description = "the field to trace")
    private Optional<String> field = Optional.empty();

    @Option(names = "--lot", paramLabel = "ID", description = "the lot of compost to trace")
    private Optional<String> lot = Optional.empty();

    @Override
    public Integer call() {
        if (field.isPresent() == lot.isPresent()) {
            throw new ParameterException(spec.commandLine(), "Trace what? Give either --field or --lot.");
        }
        Reading.Valid valid = log.season();
        Season season = valid.season();
        field.ifPresent(id -> Chosen.among(
                "field", field, season.fields().stream().map(Field::id).toList()));
        lot.ifPresent(id -> Chosen.among(
                "lot", lot, season.compost().stream().map(CompostLot::id).toList()));
        SeasonLog read = log.read(valid);
        TraceText trace = new TraceText(season, read, log.plan(valid));
        Output.print(spec, field.map(trace::field).orElseGet(() -> trace.lot(lot.orElseThrow())));
        return Freshfurrow.OK;
    }
}

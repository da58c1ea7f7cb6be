package freshfurrow.cli.command;

import freshfurrow.app.log.Logbook;
import freshfurrow.app.log.Trace;
import freshfurrow.cli.text.TraceText;
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
        header = "Trace a field back to its compost, or a compost lot to its fields.",
        description =
                "%nShows from the season's log what was planted, from which load, and from which batches and lots, with times, amounts and age at use. Anything that only the plan has is marked as planned, not logged.%n",
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

    @Option(names = "--lot", paramLabel = "ID", description = "the compost lot to trace")
    private Optional<String> lot = Optional.empty();

    @Override
    public Integer call() {
        if (field.isPresent() == lot.isPresent()) {
            throw new ParameterException(spec.commandLine(), "Give either --field or --lot.");
        }
        Logbook logbook = log.logbook();
        Output.print(spec, field.map(id -> text(logbook.ofField(id)).field(id)).orElseGet(() -> {
            String id = lot.orElseThrow();
            return text(logbook.ofLot(id)).lot(id);
        }));
        return Freshfurrow.OK;
    }

    private static TraceText text(Trace trace) {
        return new TraceText(trace.season(), trace.log(), trace.plan());
    }
}

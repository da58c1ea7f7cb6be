package freshfurrow.cli.command;

import freshfurrow.solver.PlanningOptions;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** On how many threads a plan is searched for. */
final class ThreadsOption {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--threads",
            paramLabel = "N",
            defaultValue = "" + PlanningOptions.DEFAULT_THREADS,
            description =
                    "threads to search with, 1 or more; more than 2 gain nothing, and with --steps the plan is the same (default: ${DEFAULT-VALUE})")
    private int threads;

    /** @throws ParameterException when it is below 1 */
    int count() {
        if (threads < 1) {
            throw new ParameterException(spec.commandLine(), "--threads must be 1 or more, not " + threads);
        }
        return threads;
    }
}

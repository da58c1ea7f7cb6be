package freshfurrow.cli.command;

import java.util.Optional;
import java.util.OptionalLong;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Options of commands that search for a plan, by which the same search can be made again. */
final class SearchOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--steps", paramLabel = "N", description = "how many changes to try, 0 or more")
    private Optional<Long> steps = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "any whole number; a different one makes a different search (default: ${DEFAULT-VALUE})")
    private long seed;

    /** @throws ParameterException when it is below 0 */
    OptionalLong steps() {
        if (steps.isEmpty()) {
            return OptionalLong.empty();
        }
        if (steps.get() < 0) {
            throw new ParameterException(spec.commandLine(), "--steps must be 0 or more, not " + steps.get());
        }
        return OptionalLong.of(steps.get());
    }

    long seed() {
        return seed;
    }
}

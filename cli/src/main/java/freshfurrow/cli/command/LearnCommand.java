package freshfurrow.cli.command;

import freshfurrow.app.learn.Learned;
import freshfurrow.app.learn.LearnedVariant;
import freshfurrow.cli.words.LessonsText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "learn",
        header = "Compare the season file with what the log says.",
        description =
                "%nHolds the times in the log against those of the season file: batch time and transfer rate of each rig, field capacity of each planter and sprayer, road speed of each machine, drying days of each drainage class. Says of each whether it differs by more than chance. --out writes those that do as a variant. docs/learn.md has more.%n",
        footer = {
            "  freshfurrow learn scenarios/first-season",
            "  freshfurrow learn season.yaml --out learned.yaml",
            "  freshfurrow plan season.yaml --variant learned.yaml --out learned-plan"
        })
final class LearnCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private LogArguments log = new LogArguments();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "the variant to write, with the figures that differ (default: none is written)")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--force", description = "replace an existing file")
    private boolean force;

    @Override
    public Integer call() {
        Learned learned = log.learned();
        Output.print(spec, new LessonsText(learned).lines());
        out.ifPresent(file -> {
            LearnedVariant.write(learned, file, force);
            Output.print(spec, List.of("Written to " + file + "; plan with it by --variant " + file + "."));
        });
        return Freshfurrow.OK;
    }
}

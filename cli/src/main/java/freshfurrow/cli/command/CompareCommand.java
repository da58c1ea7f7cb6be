package freshfurrow.cli.command;

import freshfurrow.app.springs.Compared;
import freshfurrow.app.springs.ComparisonOrder;
import freshfurrow.app.springs.SeasonComparison;
import freshfurrow.app.springs.SpringRange;
import freshfurrow.cli.text.ComparisonReport;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "compare",
        header = "Compare variants of a season over many springs of its weather record.",
        description =
                "%nPlans the season and each variant, runs each plan through the same springs, deciding each day only on the weather so far, and shows side by side when planting finishes, what is late or unplanted, fills, waiting, work, driving and cost. The same --seed, --steps and springs give the same file, byte for byte, with any number of threads.%n",
        footer = {
            "  freshfurrow compare season.yaml --variant two-rigs.yaml",
            "  freshfurrow compare season.yaml --variant two-rigs.yaml \\",
            "      --variant two-rigs.yaml,long-hold.yaml",
            "  freshfurrow compare season.yaml --variant two-rigs.yaml \\",
            "      --springs 1-500 --out part1",
            "  freshfurrow compare --merge part1 part2 --out both"
        })
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "SEASON",
            arity = "0..1",
            description = "a season file, or a folder with season.yaml; its weather record makes the springs")
    private Optional<Path> season = Optional.empty();

    @Option(
            names = "--variant",
            paramLabel = "FILE[,FILE]",
            description =
                    "a JSON merge patch (RFC 7396) for the season file, or several, applied in order; repeat the option for more variants")
    private List<String> variants = new ArrayList<>();

    @Option(
            names = "--reserve",
            paramLabel = "TIME",
            split = ",",
            converter = ReserveConverter.class,
            description =
                    "a reserve to try for all recipes, like 20min, or several with commas between; needs times that vary (spread in the season file)")
    private List<Duration> reserves = new ArrayList<>();

    @Option(
            names = "--springs",
            paramLabel = "N|A-B",
            converter = SpringRangeConverter.class,
            defaultValue = "100",
            description =
                    "how many springs, or which: first the years of the record, then generated ones (default: ${DEFAULT-VALUE})")
    private SpringRange springs = new SpringRange(1, 100);

    @Option(
            names = "--forecast",
            paramLabel = "DAYS",
            defaultValue = "0",
            description = "days of weather known ahead, counting today, 0 to 14 (default: ${DEFAULT-VALUE})")
    private int forecast;

    @Option(
            names = "--replan",
            paramLabel = "DAYS",
            defaultValue = "0",
            description = "replan every so many days, 0 to keep to the plan; slow (default: ${DEFAULT-VALUE})")
    private int replan;

    @Option(
            names = "--foresight",
            description =
                    "also plan the first ten springs with their weather known beforehand: a bound that nobody can reach; slow")
    private boolean foresight;

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "20000",
            description = "how many changes to try for each plan, 0 or more (default: ${DEFAULT-VALUE})")
    private long steps;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "any whole number; a different one makes different plans and springs (default: ${DEFAULT-VALUE})")
    private long seed;

    @Option(names = "--threads", paramLabel = "N", description = "threads to use (default: one per core)")
    private Optional<Integer> threads = Optional.empty();

    @Option(
            names = "--merge",
            paramLabel = "PART",
            arity = "1..*",
            description = "join slices of the same comparison: compare.json files, or folders with one")
    private List<Path> parts = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "folder for compare.json and compare.html, created if missing (default: folder compare beside the season file, or here with --merge)")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--force", description = "replace an existing comparison")
    private boolean force;

    @Override
    public Integer call() {
        refuseNonsense();
        Compared compared = parts.isEmpty() ? compare() : SeasonComparison.join(parts, out, force);
        List<String> lines = new ArrayList<>(ComparisonReport.lines(compared.springs()));
        lines.add("");
        lines.add("Written to " + compared.file() + ", with compare.html beside it for a browser");
        Output.print(spec, lines);
        return Freshfurrow.OK;
    }

    private void refuseNonsense() {
        if (season.isPresent() == !parts.isEmpty()) {
            throw mistake("Give either a SEASON to compare or slices to --merge");
        }
        if (!parts.isEmpty() && !variants.isEmpty()) {
            throw mistake("--merge takes the variants from its slices; leave out --variant");
        }
        if (!parts.isEmpty() && !reserves.isEmpty()) {
            throw mistake("--merge takes the reserves from its slices; leave out --reserve");
        }
        if (steps < 0) {
            throw mistake("--steps must be 0 or more, not " + steps);
        }
        if (forecast < 0 || forecast > 14) {
            throw mistake("--forecast must be 0 to 14 days, not " + forecast);
        }
        if (replan < 0 || replan > 60) {
            throw mistake("--replan must be 0 to 60 days, not " + replan);
        }
        if (threads.orElse(1) < 1) {
            throw mistake("--threads must be 1 or more, not " + threads.orElse(1));
        }
    }

    private ParameterException mistake(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private Compared compare() {
        ComparisonOrder order = new ComparisonOrder(
                season.orElseThrow(),
                variants.stream().map(CompareCommand::patches).toList(),
                springs,
                forecast,
                replan,
                foresight,
                steps,
                seed,
                threads.orElseGet(() -> Runtime.getRuntime().availableProcessors()),
                reserves);
        SpringsLine progress = new SpringsLine();
        try {
            return SeasonComparison.compare(order, out, force, progress);
        } finally {
            progress.clear();
        }
    }

    private static List<Path> patches(String variant) {
        return Stream.of(variant.split(",", -1)).map(Path::of).toList();
    }
}

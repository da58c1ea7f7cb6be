package freshfurrow.cli.command;

import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.BegunFiles;
import freshfurrow.app.begin.ExampleFarm;
import freshfurrow.app.begin.NewSeason;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.begin.UnitSystem;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.model.read.Problem;
import java.io.BufferedReader;
import java.io.Console;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "begin",
        header = "Begin a season: write a commented season file from plain questions.",
        description =
                "%nAsks one question after the other; Enter takes the default in brackets, and the file says what is a default. Figures may be typed as people write them: 10 min, 600 gal or 2300 L, 80 acres or 32 ha. With --units nothing is asked, and an example of an invented farm is written, to be changed. Files that exist already are not replaced. 'freshfurrow desk DIR' asks the same in a browser.%n",
        footer = {"  freshfurrow begin my-season", "  freshfurrow begin my-season --units metric"})
final class BeginCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "DIR", index = "0", description = "folder for the season; it is made where there is none")
    private Path folder = Path.of("");

    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            converter = UnitSystemConverter.class,
            description = "write an example in these units, us or metric, and ask nothing")
    private Optional<UnitSystem> units = Optional.empty();

    @Override
    public Integer call() {
        BegunFiles files = BegunFiles.of(new GivenSeason(folder, List.of()));
        files.refuseObstructed();
        Surroundings here = new Surroundings(LocalDate.now(ZoneId.systemDefault()), ZoneId.systemDefault());
        Optional<Answers> answers = units.map(ExampleFarm::in).or(() -> new Questionnaire(
                        new Prompts(input(), spec.commandLine().getOut()), here)
                .answers());
        if (answers.isEmpty()) {
            Output.warn(
                    spec,
                    "The answers ended before the last question, so nothing was written; answer them all, or write an example with --units us or --units metric");
            return Freshfurrow.PROBLEM;
        }
        NewSeason begun = NewSeason.of(answers.get(), here);
        List<Path> written = files.write(begun);
        Output.print(spec, lines(begun, written));
        return Freshfurrow.OK;
    }

    private List<String> lines(NewSeason begun, List<Path> written) {
        List<String> lines = new ArrayList<>();
        written.forEach(file -> lines.add("Written: " + file));
        if (begun.problems().isEmpty()) {
            lines.add(
                    "The season can be planned. Look at the defaults in it first, and put your own figures in their place.");
        } else {
            lines.add("Still missing or wrong:");
            begun.problems().stream().map(Problem::toString).forEach(problem -> lines.add("  " + problem));
        }
        lines.add("Next: freshfurrow check " + folder + ", or freshfurrow desk " + folder);
        return lines;
    }

    static BufferedReader input() {
        Charset charset =
                Optional.ofNullable(System.console()).map(Console::charset).orElse(Charset.defaultCharset());
        return new BufferedReader(new InputStreamReader(System.in, charset));
    }
}

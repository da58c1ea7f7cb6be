package freshfurrow.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.BooleanSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command that all others belong to. */
@Command(
        name = "freshfurrow",
        header = "Season plans for growers who wet every seed furrow with fresh compost extract.",
        description =
                "%nReads a season file (fields, planters, rigs, water points, compost, recipes) and plans when each field is planted, how many batches are made for it, how full each load is and where its water comes from, so that every load is in the ground while it is fresh.%n",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        usageHelpAutoWidth = false,
        sortOptions = false,
        abbreviateSynopsis = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:success",
            "1:a problem in the files, findings of an audit, or output that cannot be written",
            "2:invalid command or option",
            "130:stopped with Ctrl-C; plan and replan say what they have written"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  freshfurrow check scenarios/first-season",
            "  freshfurrow plan scenarios/first-season",
            "  freshfurrow plan --help"
        })
public final class Freshfurrow implements Runnable {
    static final int OK = 0;
    static final int PROBLEM = 1;

    private static final List<Class<?>> COMMANDS = List.of(
            BeginCommand.class,
            ImportCommand.class,
            DeskCommand.class,
            CheckCommand.class,
            WeatherCommand.class,
            PlanCommand.class,
            SeasonsCommand.class,
            ReplanCommand.class,
            DayCommand.class,
            PageCommand.class,
            SheetsCommand.class,
            ExportCommand.class,
            WhyCommand.class,
            AuditCommand.class,
            LogCommand.class,
            TraceCommand.class,
            LearnCommand.class,
            CompareCommand.class,
            SupplyCommand.class,
            MixCommand.class,
            CalibrateCommand.class,
            CompletionCommand.class);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /**
     * Runs a command line.
     *
     * @return the exit code: 0, 1 or 2
     */
    public static int run(String... args) {
        return run(commandLine(args), System.out::checkError, args);
    }

    /**
     * Runs a command line that prints elsewhere than to standard output and standard error.
     *
     * @return the exit code: 0, 1 or 2
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return run(commandLine(args).setOut(out).setErr(err), out::checkError, args);
    }

    private static int run(CommandLine commandLine, BooleanSupplier outputLost, String... args) {
        try {
            int exitCode = commandLine.execute(args);
            return outputLost.getAsBoolean() ? onLostOutput(commandLine, exitCode) : exitCode;
        } catch (OutOfMemoryError | StackOverflowError e) {
            Output.print(commandLine.getErr(), Failures.lines(e));
            return PROBLEM;
        }
    }

    /** A command line of all commands. */
    static CommandLine commandLine() {
        return commandLine(COMMANDS);
    }

    /** A command line of the command that the first word names, or of all: to set up each takes long enough for a grower to notice. */
    static CommandLine commandLine(String... args) {
        return commandLine(COMMANDS.stream()
                .filter(command -> args.length > 0 && name(command).equals(args[0]))
                .findAny()
                .<List<Class<?>>>map(List::of)
                .orElse(COMMANDS));
    }

    private static CommandLine commandLine(List<Class<?>> commands) {
        CommandLine commandLine = new CommandLine(new Freshfurrow());
        commands.forEach(command -> commandLine.addSubcommand(command));
        return commandLine
                .setParameterExceptionHandler(Freshfurrow::onMistake)
                .setExecutionExceptionHandler(Freshfurrow::onFailure);
    }

    private static String name(Class<?> command) {
        return command.getAnnotation(Command.class).name();
    }

    private static int onLostOutput(CommandLine commandLine, int exitCode) {
        Output.print(
                commandLine.getErr(),
                List.of("Standard output was closed or is full, so some of this could not be printed;"
                        + " any files have been written."));
        return exitCode == OK ? PROBLEM : exitCode;
    }

    private static int onMistake(ParameterException mistake, String[] args) {
        CommandLine command = mistake.getCommandLine();
        PrintWriter err = command.getErr();
        Output.print(err, String.valueOf(mistake.getMessage()).lines().toList());
        UnmatchedArgumentException.printSuggestions(mistake, err);
        err.println("See '" + command.getCommandSpec().qualifiedName() + " --help'.");
        err.flush();
        return CommandLine.ExitCode.USAGE;
    }

    private static int onFailure(Exception failure, CommandLine command, ParseResult parsed) {
        Output.print(command.getErr(), Failures.lines(failure));
        return PROBLEM;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Give a command.");
    }
}

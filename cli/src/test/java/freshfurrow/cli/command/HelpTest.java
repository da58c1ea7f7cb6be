package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

final class HelpTest {
    private static final int COLUMNS = 80;
    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

    static Stream<CommandLine> commands() {
        return andBelow(Freshfurrow.commandLine());
    }

    private static Stream<CommandLine> andBelow(CommandLine command) {
        return Stream.concat(
                Stream.of(command), command.getSubcommands().values().stream().flatMap(HelpTest::andBelow));
    }

    /** Every example of every help, a command of more than one line put together. */
    static Stream<String> examples() {
        return commands()
                .flatMap(command -> Stream.of(String.join("\n", exampleLines(command))
                        .replaceAll("\\\\\n *", "")
                        .split("\n", -1)))
                .map(String::strip);
    }

    private static List<String> exampleLines(CommandLine command) {
        return command.getUsageMessage(Ansi.OFF)
                .lines()
                .dropWhile(line -> !line.equals("Examples:"))
                .skip(1)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpIsMadeWithoutAComplaint(CommandLine command) {
        PrintStream usual = System.err;
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        try {
            command.getUsageMessage(Ansi.OFF);
        } finally {
            System.setErr(usual);
        }
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpHasExamplesThatBreakOnlyWhereAShellReadsOn(CommandLine command) {
        assertThat(exampleLines(command)).isNotEmpty().allSatisfy(line -> assertThat(line)
                .hasSizeLessThanOrEqualTo(COLUMNS)
                .startsWith("  "));
    }

    @Test
    void anExampleThatGoesOnIsIndentedFurther() {
        assertThat(examples()).allSatisfy(example -> assertThat(example).matches("(source <\\(\\./)?freshfurrow .*"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsACommandLineThatMakesSense(String example) {
        String[] words = WORD.matcher(
                        example.replaceFirst("source <\\(\\./([^)]*)\\)", "$1").replaceFirst(" >.*", ""))
                .results()
                .skip(1)
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .toArray(String[]::new);
        assertThatCode(() -> Freshfurrow.commandLine().parseArgs(words)).doesNotThrowAnyException();
    }
}

package freshfurrow.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The launcher for Windows does what the one for Linux and macOS does; both are read, as no test runs on Windows. */
final class LaunchersTest {
    private static final Path TOP = Path.of("..");
    private static final String HOME = "HOME";

    private final List<String> shell = lines("freshfurrow");
    private final List<String> windows = lines("freshfurrow.cmd");

    @Test
    void bothStartTheSameJarWithTheSameArchiveAndOptionsAndHandDownAllArguments() {
        String started =
                startedByShell(line(shell, line -> line.startsWith("exec ")).substring("exec ".length()));

        assertThat(started)
                .isEqualTo("java @HOME/launcher/java.options -XX:SharedArchiveFile=HOME/cli/target/freshfurrow.jsa"
                        + " -jar HOME/cli/target/freshfurrow.jar ARGUMENTS");
        assertThat(startedByWindows(line(windows, line -> line.contains(" -jar "))))
                .isEqualTo(started);
    }

    @Test
    void bothBuildAlikeAndReadAndPrintNothingOfThePersonsMeanwhile() {
        String shellBuild = line(shell, line -> line.contains("Build.java"));
        String windowsBuild = line(windows, line -> line.contains("Build.java"));

        assertThat(startedByShell(shellBuild)).isEqualTo("java HOME/launcher/Build.java HOME </dev/null >&2 || exit 1");
        assertThat(startedByWindows(windowsBuild)).isEqualTo("java HOME/launcher/Build.java HOME. <nul 1>&2");
        assertThat(after(windows, windowsBuild)).isEqualTo("if errorlevel 1 exit /b 1");
    }

    @Test
    void bothAnswerWithTheExitCodeOfTheProgram() {
        assertThat(shell.get(shell.size() - 1)).startsWith("exec ");
        assertThat(after(windows, line(windows, line -> line.contains(" -jar "))))
                .isEqualTo("exit /b %errorlevel%");
    }

    @Test
    void bothTakeTheJavaOfJavaHomeAndSaySoWhereThereIsNone() {
        assertThat(shell).contains("if [ -n \"$JAVA_HOME\" ] && [ -x \"$JAVA_HOME/bin/java\" ]; then");
        assertThat(windows)
                .contains("if defined JAVA_HOME if exist \"%JAVA_HOME%\\bin\\java.exe\""
                        + " set \"JAVA=%JAVA_HOME%\\bin\\java.exe\"");
        String words = "freshfurrow needs Java 17 or later; install a JDK or set JAVA_HOME.";
        assertThat(line(shell, line -> line.contains(words))).isEqualTo("echo \"" + words + "\" >&2");
        assertThat(line(windows, line -> line.contains(words))).isEqualTo("echo " + words + " 1>&2");
        assertThat(after(shell, line(shell, line -> line.contains(words)))).isEqualTo("exit 1");
        assertThat(after(windows, line(windows, line -> line.contains(words)))).isEqualTo("exit /b 1");
    }

    @Test
    void bothLookForTheSameFilesBeforeTheyBuild() {
        List<String> names = List.of("freshfurrow.jar", "freshfurrow.jsa", "freshfurrow.ready");
        assertThat(files(shell, "(?m)^\\w+=(\\$home/cli/target/\\S+)$")).containsExactlyElementsOf(names);
        assertThat(files(windows, "(?m)^set \"\\w+=(%HOME_DIR%cli\\\\target\\\\[^\"]+)\"$"))
                .containsExactlyElementsOf(names);
        assertThat(windows).contains("if not exist \"%ARCHIVE%\" set \"BUILD=1\"");
    }

    private static List<String> files(List<String> lines, String paths) {
        return Pattern.compile(paths)
                .matcher(String.join("\n", lines))
                .results()
                .map(path -> path.group(1).replaceFirst(".*[/\\\\]", ""))
                .toList();
    }

    /** A command line with its variables put in and without quotes. */
    private String startedByShell(String line) {
        Map<String, String> values = values(shell, "(?m)^(\\w+)=(\\$home\\S+)$");
        values.put("home", HOME);
        values.put("java", "java");
        values.put("@", "ARGUMENTS");
        return filled(line, "\\$(\\w+|@)", values);
    }

    private String startedByWindows(String line) {
        Map<String, String> values = values(windows, "(?m)^set \"(\\w+)=(%HOME_DIR%[^\"]+|java)\"$");
        values.put("HOME_DIR", HOME + "\\");
        values.put("*", "ARGUMENTS");
        return filled(line.replace("%*", "%*%"), "%(\\w+|\\*)%", values)
                .replace('\\', '/')
                .replace("HOME/.", "HOME.");
    }

    private static Map<String, String> values(List<String> lines, String assignment) {
        Map<String, String> values = new HashMap<>();
        Pattern.compile(assignment)
                .matcher(String.join("\n", lines))
                .results()
                .forEach(set -> values.put(set.group(1), set.group(2)));
        return values;
    }

    private static String filled(String line, String variable, Map<String, String> values) {
        String before = "";
        String now = line.replace("\"", "");
        while (!now.equals(before)) {
            before = now;
            now = Pattern.compile(variable)
                    .matcher(now)
                    .replaceAll((MatchResult use) -> Matcher.quoteReplacement(values.getOrDefault(use.group(1), "?")));
        }
        return now;
    }

    private static String line(List<String> lines, Predicate<String> wanted) {
        List<String> found = lines.stream().filter(wanted).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static String after(List<String> lines, String line) {
        return lines.get(lines.indexOf(line) + 1);
    }

    private static List<String> lines(String launcher) {
        try (Stream<String> lines = Files.lines(TOP.resolve(launcher))) {
            return lines.map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#") && !line.startsWith("rem "))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package freshfurrow.cli.command;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** Lines to standard output and standard error. */
final class Output {
    private Output() {}

    static void print(CommandSpec spec, List<String> lines) {
        print(spec.commandLine().getOut(), lines);
    }

    static void warn(CommandSpec spec, String line) {
        print(spec.commandLine().getErr(), List.of(line));
    }

    private static void print(PrintWriter writer, List<String> lines) {
        lines.forEach(writer::println);
        writer.flush();
    }
}

package freshfurrow.cli.command;

import freshfurrow.model.text.Unseen;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Lines to standard output and standard error. Names come from files of others, so that nothing in a line may steer a
 * terminal.
 */
final class Output {
    private Output() {}

    static void print(CommandSpec spec, List<String> lines) {
        print(spec.commandLine().getOut(), lines);
    }

    static void warn(CommandSpec spec, String line) {
        print(spec.commandLine().getErr(), List.of(line));
    }

    static void print(PrintWriter writer, List<String> lines) {
        lines.forEach(line -> writer.println(Unseen.marked(line)));
        writer.flush();
    }
}

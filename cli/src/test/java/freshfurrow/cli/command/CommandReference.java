package freshfurrow.cli.command;

import java.util.List;
import java.util.function.Predicate;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The reference of commands as a document, made from the commands themselves. */
final class CommandReference {
    private static final String HEAD = """
            # Commands

            Every command and option, as `freshfurrow COMMAND --help` prints it. This page is made from the commands.

            | exit code | meaning |
            | --- | --- |
            | 0 | success |
            | 1 | a problem in the files, findings of an audit, or output that cannot be written |
            | 2 | invalid command or option |
            | 130 | stopped with Ctrl-C; `plan` and `replan` say what they have written |

            A season is a file, or a folder with `season.yaml`; a plan is a file, or a folder with `plan.json`. Every command has `--help` and `--version`.
            Existing files are replaced only with `--force`: [how files are written](written-files.md).

            """;

    private CommandReference() {}

    static String document() {
        CommandLine all = Freshfurrow.commandLine();
        StringBuilder text = new StringBuilder(HEAD).append("| command | what it does |\n| --- | --- |\n");
        all.getSubcommands()
                .forEach((name, command) ->
                        text.append("| [`%s`](#%s) | %s |\n".formatted(name, name, header(command))));
        all.getSubcommands().forEach((name, command) -> {
            text.append("\n## ").append(name).append("\n\n").append(block(command));
            command.getSubcommands().forEach((fact, its) -> {
                if (!its.getCommandSpec().usageMessage().hidden()) {
                    text.append("\n### ")
                            .append(name)
                            .append(" SEASON ")
                            .append(fact)
                            .append("\n\n")
                            .append(block(its));
                }
            });
        });
        return text.toString();
    }

    private static String header(CommandLine command) {
        return String.join(" ", command.getCommandSpec().usageMessage().header());
    }

    private static String block(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        Predicate<String> shown = section -> !List.of(
                        UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST_HEADING,
                        UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST)
                .contains(section);
        command.setHelpSectionKeys(
                spec.usageMessage().sectionKeys().stream().filter(shown).toList());
        return "```text\n"
                + command.getUsageMessage(Help.Ansi.OFF)
                        .replaceAll("(?m)^  -[hV], .*\n", "")
                        .stripTrailing() + "\n```\n";
    }
}

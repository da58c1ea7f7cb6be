package freshfurrow.cli.command;

import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "completion",
        header = "Print a script that completes commands and options in bash and zsh.",
        footer = {
            "  source <(./freshfurrow completion)",
            "  freshfurrow completion \\",
            "      > ~/.local/share/bash-completion/completions/freshfurrow"
        })
final class CompletionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Output.print(spec, script().lines().toList());
        return Freshfurrow.OK;
    }

    /** In digits that shells read: the library writes numbers in those of the machine's language. */
    private static String script() {
        Locale usual = Locale.getDefault(Locale.Category.FORMAT);
        Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
        try {
            return AutoComplete.bash("freshfurrow", Freshfurrow.commandLine());
        } finally {
            Locale.setDefault(Locale.Category.FORMAT, usual);
        }
    }
}

package freshfurrow.cli.command;

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
        String script = AutoComplete.bash("freshfurrow", Freshfurrow.commandLine());
        Output.print(spec, script.lines().toList());
        return Freshfurrow.OK;
    }
}

package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class HelpIT {
    @Test
    void helpNamesEveryCommandAndExitCode() throws Exception {
        Launcher.Result help = Launcher.run("--help");
        assertThat(help.out()).isEqualTo("""
                        Season plans for furrows wetted with fresh compost extract.
                        Usage: freshfurrow [-hV] [COMMAND]

                        Reads a season file (fields, planters, rigs, water points, compost, recipes)
                        and plans which field is planted when, how many batches are extracted for it,
                        how full each load is and where its water comes from, so that every load is in
                        the ground fresh.

                          -h, --help      Show this help message and exit.
                          -V, --version   Print version information and exit.
                        Commands:
                          check       Read a season, list every problem in it, and sum it up.
                          weather     Print a season's workable days by week, over the springs of its
                                        weather record.
                          plan        Plan a season, audit the plan, write it with its page, and print
                                        the season by day.
                          replan      Plan what is left of a season again, after rain, a breakdown or a
                                        look into the log.
                          day         Print the crew's sheet for one day of a plan.
                          page        Make the page of a plan: one file for any browser, without a
                                        network.
                          sheets      Write the crews' sheets to print: a page a day and machine.
                          export      Write a plan as calendar, tables and map for other programs.
                          why         Tell why a field is planted when it is, and what would change it.
                          audit       Check a plan against its season, from first principles.
                          log         Write down what was done in a season, and list it.
                          trace       Follow a field back to its compost, or a lot of compost on to its
                                        fields.
                          compare     Compare variants of a season over many springs of its weather
                                        record.
                          supply      Compost and water to have, and when, so that they are enough in
                                        most springs.
                          mix         Print a card for mixing one load: compost, batches, water, times
                                        and use-by.
                          calibrate   Print a card for setting a planter's outlets: flows, catches,
                                        speeds, pressure.
                          completion  Print a script that completes commands and options in bash and
                                        zsh.

                        Exit codes:
                          0     all is well
                          1     a problem in what was read, or findings of an audit, or a file or
                                  standard output that cannot be written
                          2     a command line that makes no sense
                          130   stopped with Ctrl-C; plan and replan then say what they have written

                        Examples:
                          freshfurrow check scenarios/first-season
                          freshfurrow plan scenarios/first-season
                          freshfurrow plan --help
                        """);
        assertThat(help.exitCode()).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "weather",
                "plan",
                "replan",
                "day",
                "page",
                "sheets",
                "export",
                "why",
                "audit",
                "log",
                "trace",
                "compare",
                "supply",
                "mix",
                "calibrate",
                "completion"
            })
    void helpOfACommandHasExamplesAndExitCodes(String command) throws Exception {
        Launcher.Result help = Launcher.run(command, "--help");
        assertThat(help.out()).contains("Usage: freshfurrow " + command, "Exit codes:", "Examples:", "  freshfurrow ");
        assertThat(help.exitCode()).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"list", "planted", "batch", "drawn", "delivered", "spoiled", "rain", "down", "note", "void"})
    void helpOfAFactToLogSaysThatItStandsBehindTheSeason(String fact) throws Exception {
        Launcher.Result help = Launcher.run("log", "season.yaml", fact, "--help");
        assertThat(help.out()).contains("Usage: freshfurrow log SEASON " + fact, "Examples:", "  freshfurrow log ");
        assertThat(help.exitCode()).isZero();
    }

    @Test
    void versionIsThatOfTheBuild() throws Exception {
        assertThat(Launcher.run("--version").out()).matches("freshfurrow \\d+\\.\\d+\\.\\d+\\R");
    }

    @Test
    void completionIsAScriptThatTheShellAccepts() throws Exception {
        Launcher.Result script = Launcher.run("completion");
        assertThat(script.out()).contains("complete -F", "--variant");
        Process bash = Launcher.start(Launcher.projectFolder(), Map.of(), List.of("bash", "-n", "-c", script.out()));
        assertThat(Launcher.result(bash)).isEqualTo(new Launcher.Result(0, "", ""));
    }
}

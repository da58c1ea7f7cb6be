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
        Launcher.Result help = InProcess.run("--help");
        assertThat(help.out()).isEqualTo("""
                        Season plans for growers who wet every seed furrow with fresh compost extract.
                        Usage: freshfurrow [-hV] [COMMAND]

                        Reads a season file (fields, planters, rigs, water points, compost, recipes)
                        and plans when each field is planted, how many batches are made for it, how
                        full each load is and where its water comes from, so that every load is in the
                        ground while it is fresh.

                          -h, --help      Show this help message and exit.
                          -V, --version   Print version information and exit.
                        Commands:
                          begin       Begin a season: write a commented season file from plain
                                        questions.
                          import      Read fields in from a map or a table of another program.
                          desk        Work on a season in a browser.
                          check       List every problem in a season, or summarize it.
                          weather     Print a season's workable days by week, from its weather record.
                          plan        Plan a season, audit the plan, write it with its page, and print
                                        it by day.
                          seasons     Plan many seasons: all of a folder, or those that a file lists.
                          replan      Replan the rest of a season after rain, a breakdown or new log
                                        entries.
                          day         Print the day sheet for one day of a plan.
                          page        Make the page of a plan: one file that opens in any browser, even
                                        offline.
                          sheets      Write crew sheets to print: one page per machine per day.
                          export      Write a plan as a calendar, tables and a map for other programs.
                          why         Explain why a field is planted when it is, and what would change
                                        it.
                          audit       Check a plan against the rules of its season.
                          log         Log what was done in a season, and list it.
                          trace       Trace a field back to its compost, or a compost lot to its fields.
                          learn       Compare the season file with what the log says.
                          compare     Compare variants of a season over many springs of its weather
                                        record.
                          supply      Find how much compost and water is enough in most springs, and by
                                        when.
                          mix         Print a mixing card for one load.
                          calibrate   Print a calibration card for a planter, a boom or a hose.
                          completion  Print a script that completes commands and options in bash and
                                        zsh.

                        Exit codes:
                          0     success
                          1     a problem in the files, findings of an audit, or output that cannot be
                                  written
                          2     invalid command or option
                          130   stopped with Ctrl-C; plan and replan say what they have written

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
                "begin",
                "import",
                "desk",
                "check",
                "weather",
                "plan",
                "seasons",
                "replan",
                "day",
                "page",
                "sheets",
                "export",
                "why",
                "audit",
                "log",
                "trace",
                "learn",
                "compare",
                "supply",
                "mix",
                "calibrate",
                "completion"
            })
    void helpOfACommandHasExamplesAndExitCodes(String command) throws Exception {
        Launcher.Result help = InProcess.run(command, "--help");
        assertThat(help.out()).contains("Usage: freshfurrow " + command, "Exit codes:", "Examples:", "  freshfurrow ");
        assertThat(help.exitCode()).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "list",
                "planted",
                "batch",
                "transfer",
                "drive",
                "drawn",
                "delivered",
                "spoiled",
                "rain",
                "down",
                "note",
                "void"
            })
    void helpOfAFactToLogSaysThatItStandsBehindTheSeason(String fact) throws Exception {
        Launcher.Result help = InProcess.run("log", "season.yaml", fact, "--help");
        assertThat(help.out()).contains("Usage: freshfurrow log SEASON " + fact, "Examples:", "  freshfurrow log ");
        assertThat(help.exitCode()).isZero();
    }

    @Test
    void versionIsThatOfTheBuild() throws Exception {
        assertThat(InProcess.run("--version").out()).matches("freshfurrow \\d+\\.\\d+\\.\\d+\\R");
    }

    @Test
    void completionIsAScriptThatTheShellAccepts() throws Exception {
        Launcher.Result script = InProcess.run("completion");
        assertThat(script.out()).contains("complete -F", "--variant");
        Process bash = Launcher.start(Launcher.projectFolder(), Map.of(), List.of("bash", "-n", "-c", script.out()));
        assertThat(Launcher.result(bash)).isEqualTo(new Launcher.Result(0, "", ""));
    }
}

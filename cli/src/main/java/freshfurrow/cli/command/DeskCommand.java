package freshfurrow.cli.command;

import freshfurrow.app.input.SeasonClock;
import freshfurrow.desk.Desk;
import freshfurrow.desk.DeskOrder;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "desk",
        header = "Work on a season in a browser.",
        description =
                "%nStarts a server on this computer and opens the browser: change the season in forms, plan it, try things out, tick off the day's work, ask why. In a folder without a season it begins one. The desk works on the same files as all other commands. Only this computer reaches it, and only by its link, unless it is shared. It ends with Ctrl-C, or with the button on its page.%n",
        footer = {"  freshfurrow desk scenarios/first-season", "  freshfurrow desk season.yaml --port 8080 --no-browser"
        })
final class DeskCommand implements Callable<Integer> {
    private static final int LAST_PORT = 65_535;
    private static final int SHARED_PORT = 8713;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "0",
            description = "port to listen on, 1 to 65535 (default: any that is free; with --share always " + SHARED_PORT
                    + ", so that phones find it again)")
    private int port;

    @Option(
            names = "--share",
            description =
                    "let phones on the farm's own network open it too, by a code on its page: crews see the day's work and log, and change nothing else. What they send is not encrypted, so share it on a network of your own only")
    private boolean share;

    @Option(names = "--no-browser", description = "only print the link")
    private boolean noBrowser;

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > LAST_PORT) {
            throw new ParameterException(spec.commandLine(), "--port must be 1 to " + LAST_PORT + ", not " + port);
        }
        try (Desk desk = Desk.open(new DeskOrder(
                season.given(), new SeasonClock(Clock.systemUTC()), port == 0 && share ? SHARED_PORT : port, share))) {
            Output.print(spec, lines(desk));
            if (!noBrowser) {
                OwnBrowser.open(desk.link());
            }
            desk.awaitEnd();
            return Freshfurrow.OK;
        } catch (IOException e) {
            throw new WrongArgument(
                    List.of("The desk cannot be opened: " + e.getMessage() + "; choose another with --port"));
        }
    }

    private static List<String> lines(Desk desk) {
        List<String> lines = new ArrayList<>();
        lines.add("The desk is open on this computer: " + desk.link());
        desk.crewLinks().forEach(link -> lines.add("For phones on the farm's network: " + link));
        lines.add("It ends with Ctrl-C, or with the button on its page.");
        return lines;
    }
}

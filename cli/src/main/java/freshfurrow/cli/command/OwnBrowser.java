package freshfurrow.cli.command;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The browser that the computer opens links with. */
final class OwnBrowser {
    private OwnBrowser() {}

    /** Opens a link in it; does nothing where there is none: the link is printed as well. */
    static void open(String link) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> command = system.contains("win")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", link)
                : List.of(system.contains("mac") ? "open" : "xdg-open", link);
        try {
            new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            return; // no such program: people open the link themselves
        }
    }
}

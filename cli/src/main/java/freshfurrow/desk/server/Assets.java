package freshfurrow.desk.server;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/** The fixed parts of the desk's pages. There are no others, whatever a request names. */
final class Assets {
    private static final String PAGE = "text/html; charset=utf-8";

    /** Names in a path, and where they lie. */
    private static final Map<String, String> FILES = Map.ofEntries(
            own("desk.css"),
            own("icon.svg"),
            own("desk.js"),
            own("server.js"),
            own("make.js"),
            own("here.js"),
            own("schema.js"),
            own("inputs.js"),
            own("begin.js"),
            own("beginFields.js"),
            own("beginMap.js"),
            own("season.js"),
            own("planning.js"),
            own("trial.js"),
            own("taps.js"),
            own("happenings.js"),
            own("stopped.js"),
            own("today.js"),
            own("asking.js"),
            own("learning.js"),
            own("sharing.js"),
            Map.entry("page.css", "/freshfurrow/cli/page/page.css"),
            Map.entry("d3.min.js", "/freshfurrow/cli/page/d3/d3.min.js"));

    private Assets() {}

    private static Map.Entry<String, String> own(String name) {
        return Map.entry(name, "/freshfurrow/desk/" + name);
    }

    static void send(Context request) {
        String name = request.pathParam("name");
        String file = FILES.get(name);
        if (file == null) {
            throw new Unanswered(404, "The desk has no such file.");
        }
        request.contentType(type(name)).result(bytes(file));
    }

    private static String type(String name) {
        return switch (name.substring(name.lastIndexOf('.'))) {
            case ".css" -> "text/css; charset=utf-8";
            case ".svg" -> "image/svg+xml";
            default -> "text/javascript; charset=utf-8";
        };
    }

    static void sendPage(Context request) {
        request.contentType(PAGE).result(bytes("/freshfurrow/desk/desk.html"));
    }

    /** From a link that comes from elsewhere to the page: a cookie of this site is sent along only from this site. */
    static void sendOn(Context request) {
        request.contentType(PAGE)
                .result(
                        "<!doctype html><html lang=\"en\"><title>Desk</title>"
                                + "<link rel=\"icon\" href=\"/desk/icon.svg\" type=\"image/svg+xml\">"
                                + "<meta http-equiv=\"refresh\" content=\"0;url=/\"><p><a href=\"/\">To the desk</a></p></html>\n");
    }

    private static byte[] bytes(String file) {
        try (InputStream in = Assets.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without its " + file);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

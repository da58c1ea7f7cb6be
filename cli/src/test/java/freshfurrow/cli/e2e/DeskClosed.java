package freshfurrow.cli.e2e;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Opens a desk by the link that it prints, and closes it again as the button on its page does. */
final class DeskClosed implements Consumer<String> {
    private static final Pattern LINK = Pattern.compile("(http://localhost:\\d+)/open\\?key=\\S+(?=\\s)");

    private boolean closed;

    /** @param printed all that the command has printed so far */
    @Override
    public void accept(String printed) {
        Matcher link = LINK.matcher(printed);
        if (closed || !link.find()) {
            return;
        }
        closed = true;
        HttpClient browser = HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        send(browser, HttpRequest.newBuilder(URI.create(link.group())).build());
        send(
                browser,
                HttpRequest.newBuilder(URI.create(link.group(1) + "/api/end"))
                        .header("Origin", link.group(1))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString("{}"))
                        .build());
    }

    private static void send(HttpClient browser, HttpRequest request) {
        try {
            int status = browser.send(request, BodyHandlers.ofString()).statusCode();
            if (status != 200) {
                throw new IllegalStateException(request.uri() + " was answered with " + status);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** What was printed without the port and the key of the link, which are others each time. */
    static String withoutLinks(String printed) {
        return LINK.matcher(printed).replaceAll("LINK");
    }
}

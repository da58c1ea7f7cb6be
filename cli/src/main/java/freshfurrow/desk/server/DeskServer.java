package freshfurrow.desk.server;

import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.refusal.Refused;
import freshfurrow.desk.words.DeskWords;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** Answers browsers, until it is closed. */
public final class DeskServer implements AutoCloseable {
    /** Scripts, styles and pictures of the desk's own, and no others; nothing may put it in a frame but the desk itself. */
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

    /** Pages that are files of their own elsewhere bring a policy, which names their one script and style; this goes with it. */
    private static final String POLICY_OF_OWN_PAGES = "frame-ancestors 'self'";

    private static final String EVENTS = "/api/events";
    private static final int MOST_THREADS = 24;

    /** What is being answered when the desk is closed is answered; no page waits longer than that. */
    private static final long MOST_MS_TO_END_ANSWERS = 2_000;

    private static final int SERVER_ERROR = 500;

    private final Javalin server;
    private final Keys keys;
    private final Events events;
    private final int port;

    private DeskServer(Javalin server, Keys keys, Events events, int port) {
        this.server = server;
        this.keys = keys;
        this.events = events;
        this.port = port;
    }

    /** A new secret by which a crew opens a desk. */
    public static String newCrewKey() {
        return Keys.drawn();
    }

    /**
     * Begins to answer.
     *
     * @throws IOException when it cannot listen there
     */
    public static DeskServer open(Doors doors, Events events, List<Part> parts) throws IOException {
        int free = doors.port() == 0 ? free(doors.address()) : doors.port();
        Javalin javalin = Javalin.create(DeskServer::settings);
        DeskServer desk = new DeskServer(javalin, Keys.with(doors.crewKey()), events, free);
        Guard guard = new Guard(desk.keys, doors.names(), free);
        javalin.before(request -> {
            headers(request);
            guard.check(request);
        });
        javalin.get("/open", request -> {
            guard.letIn(request);
            Assets.sendOn(request);
        });
        Routes routes = new Routes(javalin);
        routes.show("/", Role.CREW, Assets::sendPage);
        javalin.get("/desk/{name}", Assets::send);
        javalin.before(EVENTS, request -> Guard.require(request, Role.CREW));
        javalin.sse(EVENTS, events::join);
        parts.forEach(part -> part.answers(routes));
        failures(javalin);
        try {
            javalin.start(doors.address(), free);
        } catch (JavalinBindException e) {
            throw new IOException("port " + free + " is taken by another program", e);
        }
        return desk;
    }

    private static int free(String address) throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName(address))) {
            return socket.getLocalPort();
        }
    }

    private static void settings(JavalinConfig config) {
        config.showJavalinBanner = false;
        config.startupWatcherEnabled = false;
        config.http.maxRequestSize = Integer.MAX_VALUE; // each route has its own
        QueuedThreadPool threads = new QueuedThreadPool(MOST_THREADS);
        threads.setDaemon(true);
        config.jetty.threadPool = threads;
        config.jetty.modifyServer(jetty -> jetty.setStopTimeout(MOST_MS_TO_END_ANSWERS));
        config.jetty.modifyHttpConfiguration(http -> {
            http.setDelayDispatchUntilContent(false); // what is refused is refused unread
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
        });
    }

    private static void headers(Context request) {
        request.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "no-referrer")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Cache-Control", "no-store");
    }

    private static void failures(Javalin javalin) {
        javalin.exception(Unanswered.class, (refusal, request) -> {
            ObjectNode answer = Json.object();
            answer.set("problems", Json.list(List.of(refusal.reason())));
            refusal.describe(answer);
            request.status(refusal.status());
            Routes.send(request, answer);
        });
        javalin.exception(Refused.class, (refusal, request) -> {
            request.status(409);
            problems(request, DeskWords.lines(refusal.refusal()));
        });
        javalin.exception(Exception.class, (failure, request) -> {
            request.status(SERVER_ERROR);
            problems(request, DeskWords.own(failure));
        });
        javalin.error(404, request -> {
            if (request.resultInputStream() == null) {
                problems(request, List.of("The desk has nothing there."));
            }
        });
    }

    private static void problems(Context request, List<String> problems) {
        Routes.send(request, Json.object().set("problems", Json.list(problems)));
    }

    /** A page that stands for itself, as the page of a plan. */
    public static void sendOwnPage(Context request, String page) {
        request.header("Content-Security-Policy", POLICY_OF_OWN_PAGES)
                .contentType("text/html; charset=utf-8")
                .result(page);
    }

    /** What opens the desk for a role under a name. */
    public String link(String name, Role role) {
        return "http://" + name + ":" + port + "/open?key=" + keys.of(role);
    }

    public int port() {
        return port;
    }

    @Override
    public void close() {
        events.close();
        server.stop();
    }
}

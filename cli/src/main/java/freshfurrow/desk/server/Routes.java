package freshfurrow.desk.server;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.Javalin;
import io.javalin.http.Context;

/** What the desk answers, and to whom. */
public final class Routes {
    /** More than any form fills. */
    public static final int FORM_BYTES = 1 << 20;

    private final Javalin server;

    Routes(Javalin server) {
        this.server = server;
    }

    /** Answers a question with JSON. */
    @FunctionalInterface
    public interface Answer {
        JsonNode to(Context request);
    }

    /** Answers whoever asks, by their role. */
    @FunctionalInterface
    public interface AnswerByRole {
        JsonNode to(Role by);
    }

    /** Does what it is told, and answers with JSON. */
    @FunctionalInterface
    public interface Deed {
        JsonNode of(ObjectNode order, Role by);
    }

    /** Answers with something else than JSON. */
    @FunctionalInterface
    public interface Sheet {
        void to(Context request);
    }

    public void get(String path, Role least, Answer answer) {
        server.get(path, request -> {
            Guard.require(request, least);
            send(request, answer.to(request));
        });
    }

    /** Answers everyone who is let in. */
    public void getByRole(String path, AnswerByRole answer) {
        server.get(path, request -> send(request, answer.to(Guard.require(request, Role.CREW))));
    }

    /** A page or a file. */
    public void show(String path, Role least, Sheet sheet) {
        server.get(path, request -> {
            Guard.require(request, least);
            sheet.to(request);
        });
    }

    public void post(String path, Role least, Deed deed) {
        post(path, least, FORM_BYTES, deed);
    }

    /**
     * Does what it is told.
     *
     * @param mostBytes of what is sent; more is refused unread
     */
    public void post(String path, Role least, int mostBytes, Deed deed) {
        server.post(path, request -> {
            Role role = Guard.require(request, least);
            if (request.req().getContentLengthLong() > mostBytes) {
                throw new Unanswered(413, "More was sent than the desk takes at once.");
            }
            send(request, deed.of(Json.read(request.body()), role));
        });
    }

    static void send(Context request, JsonNode answer) {
        request.contentType("application/json").result(answer.toString());
    }
}

package freshfurrow.desk.server;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Who is let in. A page of another site, opened in the same browser, can send requests to this computer too; so the name and port that
 * a request was sent to, the site that it comes from, and a secret are all looked at before anything else is.
 */
final class Guard {
    private static final String ROLE = "role";

    /** As long as a season lasts: half a year. */
    private static final int COOKIE_S = 180 * 24 * 3600;

    private final Keys keys;
    private final Set<String> hosts = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    private final String cookieName;

    /**
     * Lets in those that name the desk rightly.
     *
     * @param names under which it is reached
     */
    Guard(Keys keys, Set<String> names, int port) {
        this.keys = keys;
        names.forEach(name -> hosts.add(name + ":" + port));
        // cookies of a computer are shared by all of its ports
        cookieName = "desk-" + port;
    }

    /** Before anything else; throws when the request is not to be answered. */
    void check(Context request) {
        refuseStrangers(request);
        keys.role(request.cookie(cookieName)).ifPresent(role -> request.attribute(ROLE, role));
    }

    /**
     * Lets in whoever has the secret of a role.
     *
     * @throws Unanswered when it is none
     */
    void letIn(Context request) {
        String secret = String.valueOf(request.queryParam("key"));
        if (keys.role(secret).isEmpty()) {
            throw Unanswered.closed();
        }
        Cookie cookie = new Cookie(cookieName, secret);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setPath("/");
        cookie.setMaxAge(COOKIE_S);
        request.cookie(cookie);
    }

    /** @throws Unanswered unless whoever asks has that role */
    static Role require(Context request, Role least) {
        Role role = Optional.ofNullable(request.<Role>attribute(ROLE)).orElseThrow(Unanswered::closed);
        if (!role.may(least)) {
            throw new Unanswered(403, "Only at the desk itself can this be done.");
        }
        return role;
    }

    private void refuseStrangers(Context request) {
        String host = request.header("Host");
        if (host == null || !hosts.contains(host)) {
            throw new Unanswered(421, "The desk is not reached by that name.");
        }
        String method = request.req().getMethod();
        if (!method.equals("GET") && !method.equals("HEAD") && !method.equals("POST")) {
            throw new Unanswered(405, "The desk answers GET and POST only.");
        }
        String origin = request.header("Origin");
        boolean isPost = method.equals("POST");
        if (isPost
                ? !("http://" + host).equalsIgnoreCase(origin)
                : origin != null && !("http://" + host).equalsIgnoreCase(origin)) {
            throw new Unanswered(403, "The request comes from another site.");
        }
        if (isPost && !isJson(request)) {
            throw new Unanswered(415, "The desk takes JSON only.");
        }
        if (isPost && request.req().getContentLengthLong() < 0) {
            throw new Unanswered(411, "The request does not say how long it is.");
        }
    }

    private static boolean isJson(Context request) {
        String type = request.contentType();
        return type != null && type.split(";", 2)[0].strip().equalsIgnoreCase("application/json");
    }
}

package freshfurrow.desk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A request sent byte by byte, as no browser would send it. */
final class RawRequest {
    private static final Pattern LENGTH = Pattern.compile("(?i)\r\nContent-Length: (\\d+)");

    private final int port;
    private final String method;
    private final String path;
    private final Map<String, String> headers = new LinkedHashMap<>();
    private String body = "";

    RawRequest(int port, String method, String path) {
        this.port = port;
        this.method = method;
        this.path = path;
        headers.put("Host", "localhost:" + port);
        headers.put("Connection", "close");
    }

    /** What a page of the desk sends. */
    static RawRequest post(int port, String path, String body) {
        return new RawRequest(port, "POST", path)
                .with("Origin", "http://localhost:" + port)
                .with("Content-Type", "application/json")
                .body(body);
    }

    RawRequest with(String header, String value) {
        headers.put(header, value);
        return this;
    }

    RawRequest without(String header) {
        headers.remove(header);
        return this;
    }

    RawRequest body(String text) {
        body = text;
        headers.put("Content-Length", String.valueOf(text.getBytes(StandardCharsets.UTF_8).length));
        return this;
    }

    /** What came back. */
    record Response(int status, String head, String body) {
        Optional<String> cookie() {
            return head.lines()
                    .filter(line -> line.startsWith("Set-Cookie: "))
                    .map(line -> line.substring("Set-Cookie: ".length()).split(";", 2)[0])
                    .findFirst();
        }
    }

    Response send() {
        StringBuilder request = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
        headers.forEach(
                (name, value) -> request.append(name).append(": ").append(value).append("\r\n"));
        request.append("\r\n").append(body);
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.toString().getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().flush();
            String answer = answer(socket.getInputStream());
            int end = answer.indexOf("\r\n\r\n");
            return new Response(
                    Integer.parseInt(answer.split(" ", 3)[1]),
                    answer.substring(0, end).replace("\r\n", "\n"),
                    answer.substring(end + 4));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As much as the answer says that there is: a server may keep the connection. */
    private static String answer(InputStream in) throws IOException {
        ByteArrayOutputStream read = new ByteArrayOutputStream();
        while (true) {
            String so = read.toString(StandardCharsets.UTF_8);
            int end = so.indexOf("\r\n\r\n");
            Matcher length = LENGTH.matcher(so);
            if (end >= 0 && length.find() && read.size() >= end + 4 + Integer.parseInt(length.group(1))) {
                return so;
            }
            int next = in.read();
            if (next < 0) {
                return so;
            }
            read.write(next);
            read.writeBytes(in.readNBytes(in.available()));
        }
    }
}

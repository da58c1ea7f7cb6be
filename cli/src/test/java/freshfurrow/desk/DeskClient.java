package freshfurrow.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.net.URI;

/** A window of a browser at a desk, as far as what it sends and is answered. */
final class DeskClient {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final int port;
    private final String cookie;

    /** @param link that opens the desk */
    DeskClient(String link) {
        URI uri = URI.create(link);
        port = uri.getPort();
        cookie = new RawRequest(port, "GET", uri.getPath() + "?" + uri.getQuery())
                .send()
                .cookie()
                .orElseThrow();
    }

    /** What came back: its status and its JSON. */
    record Answer(int status, JsonNode json) {
        String problems() {
            return json.path("problems").toString();
        }
    }

    Answer ask(String path) {
        return answer(new RawRequest(port, "GET", path).with("Cookie", cookie).send());
    }

    /** @param what JSON, in which ' stands for " */
    Answer tell(String path, String what) {
        return answer(RawRequest.post(port, path, what.replace('\'', '"'))
                .with("Cookie", cookie)
                .send());
    }

    private static Answer answer(RawRequest.Response response) {
        try {
            return new Answer(response.status(), MAPPER.readTree(response.body()));
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}

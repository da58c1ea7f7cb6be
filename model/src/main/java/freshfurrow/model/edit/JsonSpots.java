package freshfurrow.model.edit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Where the parts of a JSON text stand. */
final class JsonSpots {
    private final JsonParser parser;

    private JsonSpots(JsonParser parser) {
        this.parser = parser;
    }

    /** @param text that was read without a problem */
    static Spot of(String text) {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            return new JsonSpots(parser).spot();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Spot spot() throws IOException {
        int start = start();
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            List<Spot.Entry> entries = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                int key = start();
                String name = parser.currentName();
                parser.nextToken();
                entries.add(new Spot.Entry(key, key, Quotes.DOUBLE, name, spot()));
            }
            return new Spot.Mapping(start, end(), true, entries);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Spot> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(spot());
            }
            return new Spot.Sequence(start, end(), true, items);
        }
        return new Spot.Scalar(start, end(), token == JsonToken.VALUE_STRING ? Quotes.DOUBLE : Quotes.NONE);
    }

    private int start() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    private int end() throws IOException {
        parser.finishToken();
        return (int) parser.currentLocation().getCharOffset();
    }
}

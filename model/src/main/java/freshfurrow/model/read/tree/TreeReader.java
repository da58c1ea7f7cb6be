package freshfurrow.model.read.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;

/** Reads YAML and JSON into {@link Node}s. */
public final class TreeReader {
    private static final int DEEPEST = 20;
    private static final StreamReadConstraints CONSTRAINTS =
            StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build();

    private final TextFile file;
    private final JsonParser parser;

    private TreeReader(TextFile file, JsonParser parser) {
        this.file = file;
        this.parser = parser;
    }

    /**
     * A YAML file, or a JSON file, which YAML includes.
     *
     * @throws FileProblem when it is not well-formed, or uses anchors, aliases, tags, a key twice or several documents
     */
    public static Node yaml(TextFile file) throws FileProblem {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        return read(
                file,
                AnchoredYaml.factory(YAMLFactory.builder()
                        .loaderOptions(options)
                        .streamReadConstraints(CONSTRAINTS)
                        .enable(YAMLParser.Feature.EMPTY_STRING_AS_NULL)));
    }

    /**
     * A JSON file.
     *
     * @throws FileProblem when it is not well-formed or has a key twice
     */
    public static Node json(TextFile file) throws FileProblem {
        return read(
                file, JsonFactory.builder().streamReadConstraints(CONSTRAINTS).build());
    }

    private static Node read(TextFile file, JsonFactory factory) throws FileProblem {
        try (JsonParser parser = factory.createParser(file.text())) {
            return new TreeReader(file, parser).document();
        } catch (JsonProcessingException e) {
            throw malformed(file, e);
        } catch (IOException e) {
            throw new FileProblem(new Place(file.name(), 0, ""), "cannot be read: " + e.getMessage(), "try again");
        }
    }

    private static FileProblem malformed(TextFile file, JsonProcessingException e) {
        JsonLocation location = e.getLocation();
        String reason = reason(e.getOriginalMessage());
        if (reason.contains("nesting depth")) {
            return new FileProblem(
                    new Place(file.name(), line(location), ""),
                    "nests deeper than " + DEEPEST + " levels",
                    "a season needs no more than a few levels; check the brackets and the indentation");
        }
        return new FileProblem(
                new Place(file.name(), line(location), ""),
                "is not well-formed: " + reason.replaceAll("\\s+", " "),
                "check indentation, quotes, colons and brackets here and just above");
    }

    /** The line of the message that says what is wrong rather than where or while doing what. */
    private static String reason(String message) {
        if (message.startsWith("Expected a field name")) {
            return "a key must be one word";
        }
        return message.replaceAll("\\[Source: [^\\n]*?line: (\\d+), column: \\d+\\]", "line $1")
                .replaceAll(": enable `[^\\n]*", "")
                .lines()
                .filter(line -> !line.startsWith("while ") && !line.startsWith(" "))
                .findFirst()
                .orElse("cannot be understood");
    }

    private static int line(JsonLocation location) {
        return location == null ? 0 : Math.max(0, location.getLineNr());
    }

    private Node document() throws IOException, FileProblem {
        if (parser.nextToken() == null) {
            throw new FileProblem(new Place(file.name(), 0, ""), "is empty", "write key: value pairs into it");
        }
        Node root = node(new Place(file.name(), line(), ""));
        if (parser.nextToken() != null) {
            throw new FileProblem(
                    new Place(file.name(), line(), ""),
                    "has more text after the end of its first document",
                    "keep one document per file");
        }
        return root;
    }

    private Node node(Place place) throws IOException, FileProblem {
        refuseReferences(place);
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> mapping(place);
            case START_ARRAY -> sequence(place);
            case VALUE_NULL -> new Node.Nothing(place);
            default -> new Node.Text(place, parser.getText());
        };
    }

    private Node mapping(Place place) throws IOException, FileProblem {
        Map<String, Node> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            Place at = place.under(key, line());
            refuseReferences(at);
            parser.nextToken();
            Node before = entries.put(key, node(at));
            if (before != null) {
                throw new FileProblem(
                        at, "is repeated here, first in line " + before.place().line(), "keep one of the two");
            }
        }
        return new Node.Mapping(place, entries);
    }

    private Node sequence(Place place) throws IOException, FileProblem {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(new Place(place.file(), line(), place.path() + "[" + (items.size() + 1) + "]")));
        }
        return new Node.Sequence(place, items);
    }

    private void refuseReferences(Place place) throws IOException, FileProblem {
        if (!(parser instanceof AnchoredYaml yaml)) {
            return;
        }
        if (yaml.isReference()) {
            throw new FileProblem(place, "uses a YAML anchor or alias", "write the value out where it is used");
        }
        if (yaml.getTypeId() != null) {
            throw new FileProblem(place, "uses a YAML tag", "write the value without the exclamation mark");
        }
    }

    private int line() {
        return line(parser.currentTokenLocation());
    }
}

package freshfurrow.model.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** YAML files as JSON, read by Jackson's own rules rather than by ours. */
final class Json {
    private Json() {}

    static JsonNode tree(Path yaml) {
        try {
            return new YAMLMapper().readTree(yaml.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String of(Path yaml) {
        return tree(yaml).toPrettyString();
    }
}

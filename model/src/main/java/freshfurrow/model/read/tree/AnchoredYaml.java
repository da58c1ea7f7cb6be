package freshfurrow.model.read.tree;

import com.fasterxml.jackson.core.ObjectCodec;
import com.fasterxml.jackson.core.io.IOContext;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactoryBuilder;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.Reader;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.NodeEvent;

/** A YAML parser that knows of every anchor; Jackson's own forgets those of scalars. */
final class AnchoredYaml extends YAMLParser {
    private AnchoredYaml(
            IOContext context,
            int features,
            int yamlFeatures,
            LoaderOptions options,
            @Nullable ObjectCodec codec,
            Reader reader) {
        super(context, features, yamlFeatures, options, codec, reader);
    }

    static YAMLFactory factory(YAMLFactoryBuilder settings) {
        return new Factory(settings);
    }

    /** Whether the current token is an alias or has an anchor. */
    boolean isReference() {
        return _lastEvent instanceof NodeEvent node && node.getAnchor() != null;
    }

    private static final class Factory extends YAMLFactory {
        private static final long serialVersionUID = 1;

        Factory(YAMLFactoryBuilder settings) {
            super(settings);
        }

        @Override
        protected YAMLParser _createParser(Reader reader, IOContext context) {
            return new AnchoredYaml(
                    context, _parserFeatures, _yamlParserFeatures, _loaderOptions, _objectCodec, reader);
        }
    }
}

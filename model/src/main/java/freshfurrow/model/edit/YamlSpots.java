package freshfurrow.model.edit;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Where the parts of a YAML text stand. */
final class YamlSpots {
    private final String text;
    /** Marks count code points: those before the first character that is more than one are the same as characters. */
    private int seenPoints;

    private int seenChars;

    private YamlSpots(String text) {
        this.text = text;
    }

    /** @param text that was read without a problem, so that it has no anchors and no tags */
    static Spot of(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        Node root = new Yaml(new SafeConstructor(options)).compose(new StringReader(text));
        return new YamlSpots(text).spot(root);
    }

    private Spot spot(Node node) {
        if (node instanceof MappingNode mapping) {
            return mapping(mapping);
        }
        if (node instanceof SequenceNode sequence) {
            return sequence(sequence);
        }
        ScalarNode scalar = (ScalarNode) node;
        int start = at(scalar.getStartMark());
        int end = at(scalar.getEndMark());
        Quotes quotes = quotes(scalar);
        return new Spot.Scalar(start, quotes == Quotes.BLOCK ? withoutBlanks(start, end) : end, quotes);
    }

    private Spot mapping(MappingNode node) {
        boolean flow = node.getFlowStyle() == FlowStyle.FLOW;
        int start = at(node.getStartMark());
        List<Spot.Entry> entries = new ArrayList<>();
        for (NodeTuple tuple : node.getValue()) {
            ScalarNode key = (ScalarNode) tuple.getKeyNode();
            int keyStart = at(key.getStartMark());
            int keyEnd = at(key.getEndMark());
            entries.add(new Spot.Entry(keyStart, keyEnd, quotes(key), key.getValue(), spot(tuple.getValueNode())));
        }
        int end = flow || entries.isEmpty()
                ? at(node.getEndMark())
                : entries.get(entries.size() - 1).end();
        return new Spot.Mapping(start, end, flow, entries);
    }

    private Spot sequence(SequenceNode node) {
        boolean flow = node.getFlowStyle() == FlowStyle.FLOW;
        int start = at(node.getStartMark());
        List<Spot> items = new ArrayList<>();
        for (Node item : node.getValue()) {
            items.add(spot(item));
        }
        int end = flow || items.isEmpty()
                ? at(node.getEndMark())
                : items.get(items.size() - 1).end();
        return new Spot.Sequence(start, end, flow, items);
    }

    private static Quotes quotes(ScalarNode scalar) {
        return switch (scalar.getScalarStyle()) {
            case DOUBLE_QUOTED -> Quotes.DOUBLE;
            case SINGLE_QUOTED -> Quotes.SINGLE;
            case LITERAL, FOLDED -> Quotes.BLOCK;
            default -> Quotes.NONE;
        };
    }

    /** A block of lines ends for the parser where the next key starts. */
    private int withoutBlanks(int start, int end) {
        int last = end;
        while (last > start && Character.isWhitespace(text.charAt(last - 1))) {
            last--;
        }
        return last;
    }

    private int at(Mark mark) {
        int points = mark.getIndex();
        if (points < seenPoints) {
            seenPoints = 0;
            seenChars = 0;
        }
        seenChars = text.offsetByCodePoints(seenChars, points - seenPoints);
        seenPoints = points;
        return seenChars;
    }
}

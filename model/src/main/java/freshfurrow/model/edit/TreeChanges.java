package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which characters of a YAML or JSON text have to change for an edit. */
final class TreeChanges {
    private final String text;
    private final Lines lines;
    private final NewText writer;
    private final BlockEdits block;

    TreeChanges(String text, NewText writer) {
        this.text = text;
        this.writer = writer;
        lines = new Lines(text);
        block = new BlockEdits(text);
    }

    /** Where a part stands: behind which key, if it is no item and no root, and whether in brackets or braces. */
    private record Held(Optional<Spot.Entry> entry, Spot spot, boolean inFlow) {}

    /**
     * The changes.
     *
     * @param path of the edit, of which the tree has all parts that its kind needs
     * @throws FileProblem when a value cannot be written
     */
    List<Change> of(Spot root, List<String> path, Edit edit) throws FileProblem {
        Held at = new Held(Optional.empty(), root, false);
        for (int depth = 0; depth < path.size(); depth++) {
            String key = path.get(depth);
            boolean last = depth == path.size() - 1;
            boolean inFlow = at.inFlow() || isFlow(at.spot());
            if (at.spot() instanceof Spot.Mapping map) {
                int index = index(map, key);
                if (index < 0) {
                    return add(map, key, TreeText.under(path.subList(depth + 1, path.size()), value(edit)), at);
                }
                if (last && edit instanceof Edit.Remove) {
                    return remove(at, map.entries().size(), index);
                }
                Spot.Entry entry = map.entries().get(index);
                at = new Held(Optional.of(entry), entry.value(), inFlow);
            } else if (at.spot() instanceof Spot.Sequence list) {
                int index = Integer.parseInt(key) - 1;
                if (last && edit instanceof Edit.Remove) {
                    return remove(at, list.items().size(), index);
                }
                at = new Held(Optional.empty(), list.items().get(index), inFlow);
            } else {
                return replace(at, TreeText.under(path.subList(depth, path.size()), value(edit)));
            }
        }
        return edit instanceof Edit.Append append ? append(at, append.item()) : replace(at, value(edit));
    }

    /** What is to stand at the path of an edit where nothing stands yet. */
    static Value value(Edit edit) {
        return edit instanceof Edit.Append append ? new Value.Items(List.of(append.item())) : ((Edit.Set) edit).value();
    }

    private static int index(Spot.Mapping map, String key) {
        for (int i = 0; i < map.entries().size(); i++) {
            if (map.entries().get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isFlow(Spot spot) {
        return spot instanceof Spot.Mapping map ? map.flow() : spot instanceof Spot.Sequence list && list.flow();
    }

    private List<Change> add(Spot.Mapping map, String key, Value value, Held at) throws FileProblem {
        if (map.flow()) {
            int column = lines.column(map.start()) + 1;
            String entry = writer.entry(key, value, column);
            return FlowEdits.in(text, map).append(entry);
        }
        if (map.entries().isEmpty()) {
            return replace(at, TreeText.under(List.of(key), value));
        }
        int column = lines.column(map.entries().get(0).start());
        return List.of(block.append(map.end(), writer.lines(key, value, column)));
    }

    private List<Change> append(Held at, Value item) throws FileProblem {
        if (at.spot() instanceof Spot.Sequence list) {
            int column = lines.column(list.start());
            if (list.flow()) {
                return FlowEdits.in(text, list).append(writer.inFlow(item, column + 1));
            }
            return List.of(block.append(list.end(), itemLine(list, item, column)));
        }
        Spot.Scalar scalar = (Spot.Scalar) at.spot();
        if (isNothing(scalar)) {
            return replace(at, new Value.Items(List.of(item)));
        }
        String written = text.substring(scalar.start(), scalar.end());
        String before = scalar.quotes() == Quotes.NONE ? writer.scalar(written, true, Quotes.NONE) : written;
        String added = writer.inFlow(item, 0);
        return List.of(new Change(scalar.start(), scalar.end(), "[" + before + ", " + added + "]"));
    }

    /** An item like the last: its keys on lines of their own where that has them so. */
    private String itemLine(Spot.Sequence list, Value item, int column) throws FileProblem {
        int index = list.items().size() - 1;
        Spot last = list.items().get(index);
        int dash = block.dash(list, index);
        String blanks = lines.sameLine(dash, last.start()) ? text.substring(dash + 1, last.start()) : " ";
        String start = " ".repeat(column) + "-" + blanks;
        if (last instanceof Spot.Mapping map && !map.flow() && item instanceof Value.Entries entries) {
            return start + writer.entryLines(entries, start.length()).strip();
        }
        return start + writer.behindKey(item, start.length());
    }

    private List<Change> remove(Held at, int size, int index) throws FileProblem {
        if (at.spot() instanceof Spot.Mapping map) {
            if (map.flow()) {
                return FlowEdits.in(text, map).remove(index);
            }
            return size == 1 ? replaceSpot(at, "{}") : List.of(block.remove(map, index));
        }
        Spot.Sequence list = (Spot.Sequence) at.spot();
        if (list.flow()) {
            return FlowEdits.in(text, list).remove(index);
        }
        return size == 1 ? replaceSpot(at, "[]") : List.of(block.remove(list, index));
    }

    private List<Change> replace(Held at, Value value) throws FileProblem {
        if (value instanceof Value.Text its && at.spot() instanceof Spot.Scalar scalar) {
            return replaceSpot(at, writer.scalar(its.text(), at.inFlow(), before(scalar)));
        }
        boolean lists = value instanceof Value.Items || value instanceof Value.Entries;
        if (lists && !at.inFlow() && at.entry().isPresent() && isNothing(at.spot())) {
            return replaceNothing(at.entry().get(), value);
        }
        int column = lines.column(at.spot().start()) + 1;
        return replaceSpot(at, at.inFlow() ? writer.inFlow(value, column) : writer.behindKey(value, column));
    }

    private static Quotes before(Spot.Scalar scalar) {
        return scalar.quotes() == Quotes.BLOCK ? Quotes.NONE : scalar.quotes();
    }

    /** Behind a key of a block that holds nothing: lines as for a new key; a comment behind the key stays. */
    private List<Change> replaceNothing(Spot.Entry entry, Value value) throws FileProblem {
        int colon = text.indexOf(':', entry.keyEnd());
        String behind = writer.behindColon(value, lines.column(entry.start()), lines.column(colon + 1));
        List<Change> changes = new ArrayList<>();
        changes.add(Change.delete(colon + 1, entry.end()));
        changes.add(Change.insert(behind.startsWith(" ") ? entry.end() : lines.end(entry.end()), behind));
        return changes;
    }

    private List<Change> replaceSpot(Held at, String replacement) {
        Spot spot = at.spot();
        Optional<Spot.Entry> entry = at.entry();
        if (entry.isPresent()
                && !isFlow(spot)
                && !(spot instanceof Spot.Scalar)
                && !lines.sameLine(entry.get().start(), spot.start())) {
            return block.replaceUnderKey(entry.get().keyEnd(), spot, replacement);
        }
        return List.of(new Change(spot.start(), spot.end(), spaced(at, replacement)));
    }

    /** With a blank behind a colon or dash where nothing stood, and the colon where even that was missing. */
    private String spaced(Held at, String replacement) {
        Spot spot = at.spot();
        if (spot.end() > spot.start() || spot.start() == 0) {
            return replacement;
        }
        boolean colonMissing = at.entry().isPresent()
                && text.substring(at.entry().get().keyEnd(), spot.start()).indexOf(':') < 0;
        char before = text.charAt(spot.start() - 1);
        String blank = before == ':' || before == '-' || before == ',' ? " " : "";
        return (colonMissing ? ": " : blank) + replacement;
    }

    /** Nothing at all, or one of the words that say so. */
    private boolean isNothing(Spot spot) {
        return spot instanceof Spot.Scalar scalar
                && scalar.quotes() == Quotes.NONE
                && text.substring(scalar.start(), scalar.end()).matches("|~|null|Null|NULL");
    }
}

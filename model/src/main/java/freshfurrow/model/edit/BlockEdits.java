package freshfurrow.model.edit;

import java.util.List;

/** Lines put behind keys and items of a block, and taken out of it; comments on lines of their own stay. */
final class BlockEdits {
    private final String text;
    private final Lines lines;

    BlockEdits(String text) {
        this.text = text;
        lines = new Lines(text);
    }

    /** More lines behind the line of a position. */
    Change append(int end, String more) {
        return Change.insert(lines.end(end), lines.lineBreak() + more);
    }

    /** Takes a key with its lines out of those of a mapping, of which it has others. */
    Change remove(Spot.Mapping mapping, int index) {
        Spot.Entry entry = mapping.entries().get(index);
        int next = index + 1 < mapping.entries().size()
                ? mapping.entries().get(index + 1).start()
                : -1;
        return remove(entry.start(), entry.end(), next);
    }

    /** Takes an item with its lines out of those of a sequence, of which it has others. */
    Change remove(Spot.Sequence sequence, int index) {
        int next = index + 1 < sequence.items().size() ? dash(sequence, index + 1) : -1;
        return remove(dash(sequence, index), sequence.items().get(index).end(), next);
    }

    private Change remove(int start, int end, int next) {
        if (lines.startsLine(start)) {
            return lines.deletion(start, end);
        }
        // behind the dash of an item: what is next takes its place, unless comments stand before that
        boolean follows = next >= 0 && lines.start(next) == lines.next(end);
        return Change.delete(start, follows ? next : lines.end(end));
    }

    /** Where the dash of an item is. */
    int dash(Spot.Sequence sequence, int index) {
        int column = lines.column(sequence.start());
        int first =
                index == 0 ? sequence.start() : sequence.items().get(index - 1).end();
        int at = first;
        while (at < sequence.items().get(index).start()) {
            if (text.charAt(at) == '-' && lines.column(at) == column) {
                return at;
            }
            at++;
        }
        return first;
    }

    /** A value that begins on a later line than its key, replaced by one behind the key; comments before it stay. */
    List<Change> replaceUnderKey(int keyEnd, Spot value, String replacement) {
        int colon = text.indexOf(':', keyEnd);
        return List.of(
                Change.insert(colon + 1, " " + replacement),
                Change.delete(lines.endBefore(value.start()), lines.end(value.end())));
    }
}

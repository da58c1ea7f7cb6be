package freshfurrow.model.edit;

import java.util.List;

/** Elements put into brackets or braces, and taken out of them, each with its comma; lines and comments of the others stay. */
final class FlowEdits {
    private final String text;
    private final Lines lines;
    private final int open;
    private final int close;
    private final List<Span> elements;

    /** An item, or a key with its value. */
    record Span(int start, int end) {}

    /**
     * @param open where the opening bracket is
     * @param close where the closing bracket is
     */
    FlowEdits(String text, int open, int close, List<Span> elements) {
        this.text = text;
        lines = new Lines(text);
        this.open = open;
        this.close = close;
        this.elements = elements;
    }

    static FlowEdits in(String text, Spot.Mapping mapping) {
        return new FlowEdits(
                text,
                mapping.start(),
                mapping.end() - 1,
                mapping.entries().stream()
                        .map(entry -> new Span(entry.start(), entry.end()))
                        .toList());
    }

    static FlowEdits in(String text, Spot.Sequence sequence) {
        return new FlowEdits(
                text,
                sequence.start(),
                sequence.end() - 1,
                sequence.items().stream()
                        .map(item -> new Span(item.start(), item.end()))
                        .toList());
    }

    /** One more element behind the last. */
    List<Change> append(String element) {
        if (elements.isEmpty()) {
            String within = text.substring(open + 1, close);
            return within.isBlank()
                    ? List.of(new Change(open + 1, close, element))
                    : List.of(Change.insert(open + 1, within.startsWith("#") ? element + " " : element));
        }
        Span last = elements.get(elements.size() - 1);
        int comma = comma(last.end(), close);
        if (isOneALine()) {
            return appendLine(element, last, comma);
        }
        if (comma >= 0) {
            return List.of(Change.insert(comma + 1, " " + element));
        }
        boolean tooWide = !lines.sameLine(open, last.end())
                && last.end() - lines.start(last.end()) + element.length() + 3 > NewText.WIDEST;
        String between =
                tooWide ? lines.lineBreak() + lines.indentation(elements.get(0).start()) : blanks();
        return List.of(Change.insert(last.end(), "," + between + element));
    }

    private List<Change> appendLine(String element, Span last, int comma) {
        String line = lines.lineBreak() + lines.indentation(last.start()) + element;
        if (lines.sameLine(last.end(), close)) {
            return List.of(comma >= 0 ? Change.insert(comma + 1, line + ",") : Change.insert(last.end(), "," + line));
        }
        int end = lines.end(comma >= 0 ? comma : last.end());
        if (comma >= 0) {
            return List.of(Change.insert(end, line + ","));
        }
        return end == last.end()
                ? List.of(Change.insert(end, "," + line))
                : List.of(Change.insert(last.end(), ","), Change.insert(end, line));
    }

    private boolean isOneALine() {
        if (elements.size() == 1) {
            return !lines.sameLine(open, elements.get(0).start());
        }
        return elements.stream().skip(1).allMatch(element -> lines.startsLine(element.start()));
    }

    /** What stands between a comma and the next element on its line. */
    private String blanks() {
        if (elements.size() < 2) {
            return " ";
        }
        int before = elements.get(elements.size() - 2).end();
        int last = elements.get(elements.size() - 1).start();
        int comma = comma(before, last);
        String between = comma < 0 ? " " : text.substring(comma + 1, last);
        return between.isEmpty() ? "" : " ";
    }

    /** Takes an element out, with its comma; of a line of its own, the line. */
    List<Change> remove(int index) {
        if (elements.size() == 1) {
            return List.of(Change.delete(open + 1, close));
        }
        return index < elements.size() - 1 ? removeInner(index) : removeLast(index);
    }

    private List<Change> removeInner(int index) {
        Span element = elements.get(index);
        int next = elements.get(index + 1).start();
        int comma = comma(element.end(), next);
        if (lines.sameLine(element.end(), next)) {
            return List.of(Change.delete(element.start(), next));
        }
        if (lines.startsLine(element.start()) && lines.sameLine(element.end(), comma)) {
            return List.of(Change.delete(lines.start(element.start()), lines.next(comma)));
        }
        if (index == 0) {
            return List.of(
                    Change.delete(element.start(), lines.next(comma) > lines.start(next) - 1 ? next : comma + 1));
        }
        return List.of(Change.delete(comma(elements.get(index - 1).end(), element.start()) + 1, comma + 1));
    }

    private List<Change> removeLast(int index) {
        Span element = elements.get(index);
        int before = comma(elements.get(index - 1).end(), element.start());
        int trailing = comma(element.end(), close);
        int end = trailing >= 0 ? trailing + 1 : element.end();
        boolean ownLine = lines.startsLine(element.start()) && !lines.sameLine(end, close);
        if (trailing >= 0) {
            return List.of(
                    ownLine
                            ? Change.delete(lines.start(element.start()), lines.next(end))
                            : Change.delete(before + 1, end));
        }
        if (ownLine) {
            return List.of(
                    Change.delete(before, before + 1), Change.delete(lines.start(element.start()), lines.next(end)));
        }
        boolean comment = text.substring(before + 1, element.start()).indexOf('#') >= 0;
        return comment
                ? List.of(Change.delete(before, before + 1), Change.delete(element.start(), end))
                : List.of(Change.delete(before, end));
    }

    /** The comma behind an element, past blanks and comments; -1 when there is none. */
    private int comma(int from, int to) {
        int at = from;
        while (at < to) {
            char character = text.charAt(at);
            if (character == ',') {
                return at;
            }
            at = character == '#' ? lines.end(at) : at + 1;
        }
        return -1;
    }
}

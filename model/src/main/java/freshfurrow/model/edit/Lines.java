package freshfurrow.model.edit;

/** The lines of a text, by positions in it. */
record Lines(String text) {
    /** Where the line of a position starts. */
    int start(int at) {
        int start = at;
        while (start > 0 && !isBreak(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    /** Where the line of a position ends, before its line break. */
    int end(int at) {
        int end = at;
        while (end < text.length() && !isBreak(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /** Where the next line starts; the end of the text when there is none. */
    int next(int at) {
        int end = end(at);
        if (end < text.length()) {
            return text.startsWith("\r\n", end) ? end + 2 : end + 1;
        }
        return end;
    }

    boolean startsLine(int at) {
        return text.substring(start(at), at).isBlank();
    }

    boolean sameLine(int from, int to) {
        return end(from) >= to;
    }

    /** As many blanks as there are characters before a position in its line. */
    String indentation(int at) {
        return " ".repeat(column(at));
    }

    int column(int at) {
        return text.codePointCount(start(at), at);
    }

    /** What the text ends its lines with. */
    String lineBreak() {
        int end = end(0);
        return end < text.length() ? text.substring(end, next(0)) : "\n";
    }

    /** Where the line before that of a position ends; 0 when there is none. */
    int endBefore(int at) {
        int before = Math.max(0, start(at) - 1);
        return before > 0 && text.startsWith("\r\n", before - 1) ? before - 1 : before;
    }

    /** Whole lines to delete; of the last line of a text that does not end in a line break, the one before it goes. */
    Change deletion(int from, int to) {
        int next = next(to);
        return Change.delete(next == end(to) ? endBefore(from) : start(from), next);
    }

    private static boolean isBreak(char character) {
        return character == '\n' || character == '\r';
    }
}

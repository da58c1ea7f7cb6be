package freshfurrow.cli.export;

import java.util.regex.Pattern;

/** Lines of a calendar, folded to 75 octets of UTF-8 (RFC 5545, section 3.1) and never within a character. */
final class ContentLines {
    private static final Pattern LINE_END = Pattern.compile("\r\n");
    private static final int MOST_OCTETS = 75;

    private ContentLines() {}

    /** @param unfolded lines of any length, each with its CRLF */
    static String fold(String unfolded) {
        StringBuilder folded = new StringBuilder(unfolded.length() + unfolded.length() / 32);
        LINE_END.splitAsStream(unfolded).forEach(line -> fold(line, folded));
        return folded.toString();
    }

    private static void fold(String line, StringBuilder folded) {
        int octets = 0;
        for (int at = 0; at < line.length(); at += Character.charCount(line.codePointAt(at))) {
            int character = line.codePointAt(at);
            if (octets + octets(character) > MOST_OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.appendCodePoint(character);
            octets += octets(character);
        }
        folded.append("\r\n");
    }

    private static int octets(int character) {
        if (character < 0x80) {
            return 1;
        }
        if (character < 0x800) {
            return 2;
        }
        return character < 0x10000 ? 3 : 4;
    }
}

package freshfurrow.app.shapefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A piece of well-known text of a coordinate system (OGC 01-009, section 7), as it stands in a .prj file: a keyword with texts, figures
 * and other pieces in brackets.
 */
record Wkt(String keyword, List<String> values, List<Wkt> pieces) {
    private static final int DEEPEST = 20;
    private static final int LONGEST = 1 << 16;

    Wkt {
        values = List.copyOf(values);
        pieces = List.copyOf(pieces);
    }

    /** @throws IllegalArgumentException when it is none */
    static Wkt of(String text) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("too long");
        }
        Reader reader = new Reader(text);
        Wkt whole = reader.piece(0);
        reader.blanks();
        if (reader.at < text.length()) {
            throw new IllegalArgumentException("more behind it");
        }
        return whole;
    }

    /** The first piece of that keyword, here or deeper. */
    Optional<Wkt> find(String wanted) {
        if (keyword.equals(wanted)) {
            return Optional.of(this);
        }
        return pieces.stream().flatMap(piece -> piece.find(wanted).stream()).findFirst();
    }

    /** The piece of that keyword right inside. */
    Optional<Wkt> inside(String wanted) {
        return pieces.stream().filter(piece -> piece.keyword.equals(wanted)).findFirst();
    }

    String name() {
        return values.isEmpty() ? "" : values.get(0);
    }

    /** @throws IllegalArgumentException when there is no figure there */
    double figure(int position) {
        if (position >= values.size()) {
            throw new IllegalArgumentException("no figure in " + keyword);
        }
        return Double.parseDouble(values.get(position));
    }

    /** The figure of a parameter, whatever its letters. */
    OptionalDouble parameter(String wanted) {
        return pieces.stream()
                .filter(piece -> piece.keyword.equals("PARAMETER")
                        && piece.name().toLowerCase(Locale.ROOT).equals(wanted))
                .mapToDouble(piece -> piece.figure(1))
                .findFirst();
    }

    private static final class Reader {
        private final String text;
        private int at;

        Reader(String text) {
            this.text = text;
        }

        Wkt piece(int depth) {
            if (depth > DEEPEST) {
                throw new IllegalArgumentException("too deep");
            }
            String keyword = bare();
            expect('[');
            List<String> values = new ArrayList<>();
            List<Wkt> pieces = new ArrayList<>();
            do {
                blanks();
                if (peek() == '"') {
                    int end = text.indexOf('"', at + 1);
                    if (end < 0) {
                        throw new IllegalArgumentException("no end of a text");
                    }
                    values.add(text.substring(at + 1, end));
                    at = end + 1;
                } else {
                    int before = at;
                    String word = bare();
                    if (peek() == '[' || peek() == '(') {
                        at = before;
                        pieces.add(piece(depth + 1));
                    } else {
                        values.add(word);
                    }
                }
                blanks();
            } while (takes(','));
            expect(']');
            return new Wkt(keyword.toUpperCase(Locale.ROOT), values, pieces);
        }

        private String bare() {
            blanks();
            int start = at;
            while (at < text.length() && "[](),\"".indexOf(text.charAt(at)) < 0) {
                at++;
            }
            String word = text.substring(start, at).strip();
            if (word.isEmpty()) {
                throw new IllegalArgumentException("a word is missing");
            }
            return word;
        }

        private void blanks() {
            while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
                at++;
            }
        }

        private char peek() {
            return at < text.length() ? text.charAt(at) : 0;
        }

        private boolean takes(char character) {
            boolean there = peek() == character;
            at += there ? 1 : 0;
            return there;
        }

        /** Round brackets do as well. */
        private void expect(char bracket) {
            blanks();
            if (!takes(bracket) && !takes(bracket == '[' ? '(' : ')')) {
                throw new IllegalArgumentException(bracket + " is missing");
            }
        }
    }
}

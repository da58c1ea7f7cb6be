package freshfurrow.model.read;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The known word nearest to a mistyped one, by the number of letters to change (Levenshtein 1966), or the one that it begins. */
public final class Nearest {
    private static final int FARTHEST = 3;
    private static final int LEAST_BEGINNING = 3;

    private Nearest() {}

    /** The nearest of the words; where all are too far away to be meant, the only one that begins as the mistyped one does. */
    public static Optional<String> to(String word, Collection<String> known) {
        return near(word, known).or(() -> begun(word, known));
    }

    private static Optional<String> begun(String word, Collection<String> known) {
        String beginning = word.toLowerCase(Locale.ROOT);
        List<String> begun = known.stream()
                .filter(candidate -> candidate.toLowerCase(Locale.ROOT).startsWith(beginning))
                .toList();
        return beginning.length() >= LEAST_BEGINNING && begun.size() == 1
                ? Optional.of(begun.get(0))
                : Optional.empty();
    }

    private static Optional<String> near(String word, Collection<String> known) {
        return known.stream()
                .filter(candidate -> Math.abs(candidate.length() - word.length()) <= FARTHEST)
                .min(Comparator.comparingInt(candidate -> distance(word, candidate)))
                .filter(candidate -> distance(word, candidate) <= Math.min(FARTHEST, Math.max(1, word.length() / 2)));
    }

    private static int distance(String a, String b) {
        String from = a.toLowerCase(Locale.ROOT);
        String to = b.toLowerCase(Locale.ROOT);
        int[] row = new int[to.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int above = row[j];
                int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, 1 + Math.min(above, row[j - 1]));
                diagonal = above;
            }
        }
        return row[to.length()];
    }
}

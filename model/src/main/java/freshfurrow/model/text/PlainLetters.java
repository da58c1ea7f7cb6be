package freshfurrow.model.text;

import java.text.Normalizer;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Names in the letters a to z, as file names and ids have them: {@code Hosszú-dűlő} as {@code Hosszu-dulo}. */
public final class PlainLetters {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    /** Letters that Unicode does not take apart into one of a to z and a mark, as people write them without it; from memory. */
    private static final Map<String, String> WHOLE = Map.ofEntries(
            Map.entry("ß", "ss"),
            Map.entry("ẞ", "SS"),
            Map.entry("æ", "ae"),
            Map.entry("Æ", "Ae"),
            Map.entry("œ", "oe"),
            Map.entry("Œ", "Oe"),
            Map.entry("ø", "o"),
            Map.entry("Ø", "O"),
            Map.entry("ł", "l"),
            Map.entry("Ł", "L"),
            Map.entry("đ", "d"),
            Map.entry("Đ", "D"),
            Map.entry("ð", "d"),
            Map.entry("Ð", "D"),
            Map.entry("þ", "th"),
            Map.entry("Þ", "Th"),
            Map.entry("ħ", "h"),
            Map.entry("Ħ", "H"),
            Map.entry("ı", "i"),
            Map.entry("ŋ", "ng"),
            Map.entry("Ŋ", "Ng"),
            Map.entry("ŧ", "t"),
            Map.entry("Ŧ", "T"),
            Map.entry("º", "o"),
            Map.entry("ª", "a"));

    private PlainLetters() {}

    /** The text without marks on its letters; empty when there are letters in it, as of other scripts, that have no such form. */
    public static Optional<String> of(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
                .replaceAll("")
                .codePoints()
                .mapToObj(Character::toString)
                .forEach(character -> plain.append(WHOLE.getOrDefault(character, character)));
        return plain.codePoints().anyMatch(PlainLetters::isOtherLetter)
                ? Optional.empty()
                : Optional.of(plain.toString());
    }

    private static boolean isOtherLetter(int character) {
        return character > '~'
                && Character.isLetter(character)
                && Character.getType(character) != Character.MODIFIER_LETTER;
    }
}

package freshfurrow.cli.page;

import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text with gaps such as {@code [[title]]}. What fills a gap is never looked through for gaps itself. */
final class Template {
    private static final Pattern GAP = Pattern.compile("\\[\\[([a-z]+)]]");

    private Template() {}

    /** @throws IllegalArgumentException when nothing is there for a gap */
    static String fill(String template, Map<String, String> parts) {
        return GAP.matcher(template).replaceAll(gap -> Matcher.quoteReplacement(part(gap, parts)));
    }

    private static String part(MatchResult gap, Map<String, String> parts) {
        String part = parts.get(gap.group(1));
        if (part == null) {
            throw new IllegalArgumentException("nothing for the gap " + gap.group());
        }
        return part;
    }
}

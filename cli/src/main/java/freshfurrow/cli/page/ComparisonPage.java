package freshfurrow.cli.page;

import freshfurrow.model.compare.ComparedSprings;
import java.util.Map;

/** Variants compared, as one file of HTML that needs no network and nothing beside it. */
public final class ComparisonPage {
    private ComparisonPage() {}

    /** The whole page, ending in a newline. The same comparison always gives the same text. */
    public static String html(ComparedSprings compared) {
        String style = PageFiles.comparisonStyle();
        String script = PageFiles.comparisonScript();
        return Template.fill(
                PageFiles.comparisonTemplate(),
                Map.of(
                        "title", InlineText.html(compared.rules().season()),
                        "policy", ContentPolicy.of(style, script),
                        "style", style,
                        "data", InlineText.json(ComparisonData.of(compared)),
                        "script", script));
    }
}

package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.List;
import java.util.Map;

/** A plan as one file of HTML that needs no network and nothing beside it. */
public final class SeasonPage {
    /** A page tells by this many bytes of its beginning that it is one. */
    public static final int BEGINNING_BYTES = 4096;

    private SeasonPage() {}

    /** Whether a file that begins so is a page of a plan, not something of the user's own. */
    public static boolean isBegunBy(String beginning) {
        String template = PageFiles.template();
        String title = template.substring(template.indexOf("<title>"), template.indexOf("[[title]]"));
        return beginning.startsWith("<!doctype html>") && beginning.contains(title);
    }

    /**
     * The whole page, ending in a newline. The same season and plan always give the same text.
     *
     * @param season the season that the plan was made from
     * @throws IllegalArgumentException when the plan names a field, place, load or batch that there is not
     */
    public static String html(Season season, Plan plan) {
        return html(season, plan, List.of());
    }

    /**
     * The page of a plan that was made again.
     *
     * @param changes lines that tell what is another than in the plan before
     * @see #html(Season, Plan)
     */
    public static String html(Season season, Plan plan, List<String> changes) {
        JsonNode data = PageData.of(season, plan, changes);
        String style = PageFiles.style();
        String script = PageFiles.script();
        return Template.fill(
                PageFiles.template(),
                Map.of(
                        "title", InlineText.html(season.name()),
                        "policy", ContentPolicy.of(style, script),
                        "style", style,
                        "data", InlineText.json(data),
                        "script", script));
    }
}

package freshfurrow.cli.example;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.List;
import java.util.Map;

/** Names that a file of someone's may hold and that must not become markup, formulas or structure. */
public final class HostileNames {
    public static final List<String> ALL = List.of(
            "</style></title><script>alert(1)</script>",
            "<img src=x onerror=alert(1)>",
            "\" onmouseover=\"alert(1)",
            "Corn & 'beans' \"<b>\" &lt;",
            "=HYPERLINK(\"http://example.org\")",
            "+1+1",
            "-2",
            "@SUM(A1)",
            "\uff1d1+1",
            "\t=1",
            " =1",
            "\u00a0+1",
            "\u2003@SUM(A1)",
            "\u202f\u3000-2",
            "\r=1",
            "One\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:mine",
            "a;b,c\\d\\nE:F",
            "two \"quotes\", a comma",
            "\ud83c\udf31\ud83d\ude9c".repeat(20),
            "\u05e9\u05d3\u05d4 \u05e6\u05e4\u05d5\u05df",
            "\u202egnp.exe",
            "nul\u0000bell\u0007del\u007f",
            "Zürich Ødegård 北の畑");

    private HostileNames() {}

    /** The example's plan, whose season and first field bear a name. */
    public static Plan plan(String name) {
        Plan plan = ExamplePlan.plan();
        Plan.SeasonSource source = plan.season();
        return new Plan(
                new Plan.SeasonSource(
                        name,
                        source.file(),
                        source.sha256(),
                        source.units(),
                        Map.of("N40", name),
                        source.clockChanges()),
                plan.score(),
                plan.totals(),
                plan.planters(),
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }

    /** The example's season, which bears a name as its first field does. */
    public static Season season(String name) {
        Season season = ExampleSeason.season();
        return season.change()
                .name(name)
                .fields(season.fields().stream()
                        .map(field -> field.id().equals("N40")
                                ? field.change().name(name).field()
                                : field)
                        .toList())
                .season();
    }
}

package freshfurrow.cli.sheets;

import freshfurrow.cli.day.Machine;
import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.safety.Hazards;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.stream.Stream;

/** The sheets of a plan's crews: for each day and machine a table of its steps, which begins on a page of its own. */
public final class CrewSheets {
    private final Plan plan;
    private final PlanIndex index;
    private final Figures figures;
    private final Hazards hazards;
    private final Html html = new Html();

    private CrewSheets(Plan plan) {
        this.plan = plan;
        index = new PlanIndex(plan);
        figures = new Figures(plan.season().units());
        hazards = new Hazards(index);
    }

    /**
     * The sheets as a whole HTML document, in the units of the plan. The same plan always gives the same text.
     *
     * @param days those to print, of {@link MachineDay#allOf}
     * @throws IllegalArgumentException when the plan speaks of a load, batch or machine that it does not have
     */
    public static String html(Plan plan, List<MachineDay> days) {
        CrewSheets sheets = new CrewSheets(plan);
        sheets.document(days);
        return sheets.html.toString();
    }

    private void document(List<MachineDay> days) {
        html.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .raw(
                        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n")
                .element("title", "Crew sheets, " + plan.season().name())
                .raw("\n<style>\n" + SheetStyle.CSS + "</style>\n</head>\n<body>\n");
        days.forEach(this::sheet);
        html.raw("</body>\n</html>\n");
    }

    private void sheet(MachineDay day) {
        html.raw(
                "<section class=\"sheet\">\n<table>\n<thead>\n<tr class=\"head\"><th colspan=\"4\" scope=\"colgroup\">");
        boolean isRig = day.machine().kind() == Machine.Kind.RIG;
        html.raw("<h1>")
                .text(isRig ? "Rig " : "Planter ")
                .name(day.machine().id())
                .raw("</h1>");
        html.raw("<p class=\"day\">").text(Figures.longDay(day.date())).raw("</p>");
        html.raw("<p class=\"season\">").name(plan.season().name());
        html.text(isRig ? "" : ", tank " + figures.volume(tankL(day)));
        html.raw("</p><p class=\"crew\">Crew <span class=\"rule\"></span></p></th></tr>\n");
        html.raw("<tr class=\"columns\"><th scope=\"col\">Planned</th><th scope=\"col\">Step</th>")
                .raw("<th scope=\"col\">True time</th><th scope=\"col\">True amount</th></tr>\n</thead>\n<tbody>\n");
        Rows rows = new Rows(index, day.date(), figures);
        Stream.concat(
                        isRig
                                ? Stream.empty()
                                : OnBoard.at(
                                                plan,
                                                day.machine().id(),
                                                day.date().atStartOfDay())
                                        .stream()
                                        .map(rows::fromTheDayBefore),
                        day.activities().stream().map(rows::of))
                .forEach(this::row);
        html.raw("</tbody>\n</table>\n");
        cautions(day);
        html.raw("</section>\n");
    }

    private double tankL(MachineDay day) {
        return plan.planters().get(day.machine().id()).tankL();
    }

    private void row(Row row) {
        boolean isMain = row.weight() == Row.Weight.MAIN;
        html.raw("<tr class=\"" + (isMain ? "main" : "minor") + "\">");
        html.raw("<td class=\"when\"><span class=\"box\"></span>")
                .text(row.when())
                .raw("</td>");
        html.raw("<td class=\"step\"><p><b>").text(row.verb()).raw("</b> ");
        row.subject().forEach(part -> {
            if (part.isName()) {
                html.name(part.text());
            } else {
                html.text(part.text());
            }
        });
        html.raw("</p>");
        row.amounts()
                .forEach(amount -> html.raw("<p class=\"amount\">").text(amount).raw("</p>"));
        row.useBy()
                .ifPresent(time ->
                        html.raw("<p class=\"use-by\">Use by ").text(time).raw("</p>"));
        html.raw("</td><td class=\"true\"><span class=\"rule\"></span></td><td class=\"true\">");
        row.trueAmounts().forEach(blank -> html.raw("<p>")
                .text(blank.of().isEmpty() ? "" : blank.of() + " ")
                .raw("<span class=\"rule\"></span> ")
                .text(blank.unit())
                .raw("</p>"));
        html.raw("</td></tr>\n");
    }

    private void cautions(MachineDay day) {
        Cautions cautions = new Cautions(figures);
        html.raw("<aside class=\"care\"><h2>Care</h2><ul>").element("li", Cautions.FIRST);
        hazards.of(day).forEach(hazard -> html.raw(hazard.isOverLimit() ? "<li class=\"over-limit\">" : "<li>")
                .text(cautions.text(hazard))
                .raw("</li>"));
        html.raw("</ul></aside>\n<p class=\"notes\">Notes <span class=\"rule\"></span></p>\n");
    }
}

package freshfurrow.cli.sheets;

import freshfurrow.cli.day.Loading;
import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.MixOrder;
import freshfurrow.cli.day.OnBoard;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.cli.safety.Hazard;
import freshfurrow.cli.safety.Hazards;
import freshfurrow.cli.text.Cautions;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.LoadingText;
import freshfurrow.cli.text.OrderText;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The sheets of a plan's crews: for each day and machine a table of its steps, which begins on a page of its own. */
public final class CrewSheets {
    private static final String RULE = "<span class=\"rule\"></span>";

    private static final String BOX = "<span class=\"box\"></span>";

    private static final int COLUMNS = 5;

    private final Plan plan;
    private final PlanIndex index;
    private final Figures figures;
    private final Hazards hazards;
    private final Cautions cautions;
    private final Html html = new Html();

    private CrewSheets(Plan plan) {
        this.plan = plan;
        index = new PlanIndex(plan);
        figures = new Figures(plan.season().units());
        hazards = new Hazards(index);
        cautions = new Cautions(figures);
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
        html.raw("<section class=\"sheet " + (isFilled(day) ? "planter" : "rig") + "\">\n<table>\n")
                .raw("<colgroup><col class=\"when\"><col>"
                        + "<col class=\"use-by\"><col class=\"time\"><col class=\"amount\"></colgroup>\n<thead>\n");
        heading(day);
        columns(day);
        html.raw("</thead>\n<tbody>\n");
        orders(day);
        overLimit(day);
        loading(day);
        Rows.of(day, onBoard(day), new Words(index, day.date(), figures)).forEach(this::row);
        care(day);
        html.raw("</tbody>\n</table>\n</section>\n");
    }

    private void heading(MachineDay day) {
        html.raw("<tr class=\"head\"><th colspan=\"" + COLUMNS + "\" scope=\"colgroup\"><div><h1>")
                .text(WorkWords.capital(day.machine().kind().name().toLowerCase(Locale.ROOT)) + " ")
                .name(day.machine().id())
                .raw("</h1><p class=\"day\">")
                .text(figures.longDay(day.date()))
                .raw("</p></div><div><p>")
                .name(plan.season().name())
                .text(isFilled(day) ? ", tank " + figures.volume(tankL(day)) : "")
                .raw("</p><p>Crew <span class=\"rule\"></span></p></div></th></tr>\n");
    }

    private void columns(MachineDay day) {
        html.raw("<tr class=\"columns\">")
                .element("th", "About")
                .element(
                        "th", isFilled(day) ? "Step" : "Step (batch: compost in water; transfer: concentrate + water)");
        html.element("th", "Use by")
                .element("th", "Actual time")
                .element("th", "Actual amount")
                .raw("</tr>\n");
    }

    private Optional<OnBoard> onBoard(MachineDay day) {
        return plan.planters().keySet().stream()
                .filter(id -> PlanIndex.crewOf(plan, id).equals(day.machine().id()))
                .flatMap(id -> OnBoard.at(plan, id, day.date().atStartOfDay()).stream())
                .findFirst();
    }

    private static boolean isFilled(MachineDay day) {
        return !day.machine().kind().isRig();
    }

    private double tankL(MachineDay day) {
        return plan.planters().get(day.machine().id()).tankL();
    }

    private void row(Row row) {
        html.raw(row.isTimed() ? "<tr class=\"main\">" : "<tr class=\"minor\">");
        html.raw("<td class=\"when\">" + (row.isTicked() ? BOX : ""))
                .text(row.when())
                .raw("</td><td>");
        row.what().forEach(this::part);
        html.raw("</td><td>");
        row.useBy()
                .ifPresent(
                        time -> html.raw("<span class=\"use-by\">").text(time).raw("</span>"));
        html.raw("</td><td>").raw(row.isTimed() ? RULE : "").raw("</td><td class=\"true\">");
        for (Row.Blank blank : row.trueAmounts()) {
            html.raw("<span>" + RULE + " ").text(blank.unit()).raw("</span>");
        }
        html.raw("</td></tr>\n");
    }

    private void part(Row.Part part) {
        switch (part.kind()) {
            case TEXT -> html.text(part.text());
            case NAME -> html.name(part.text());
            case VERB -> html.element("b", part.text());
        }
    }

    /** What to do with mix that is made already, which cannot wait. */
    private void orders(MachineDay day) {
        OrderText text = new OrderText(index, figures, figures.crewClock(day.date()));
        MixOrder.on(plan, day.date()).stream()
                .filter(order -> order.machine().equals(day.machine().id()))
                .forEach(order -> html.raw("<tr class=\"order\"><td colspan=\"" + COLUMNS + "\">" + BOX + " <b>")
                        .text(OrderText.HEADING + ". ")
                        .raw("</b>")
                        .text(text.text(order))
                        .raw("</td></tr>\n"));
    }

    private void loading(MachineDay day) {
        if (isFilled(day)) {
            return;
        }
        List<LoadingText.Item> items = new LoadingText(figures).items(Loading.of(day, index), index);
        if (!items.isEmpty()) {
            html.raw("<tr class=\"loading\"><td colspan=\"" + COLUMNS + "\"><h2>Bring</h2><dl>");
            items.forEach(item -> html.raw("<div>")
                    .element("dt", item.what())
                    .raw(" ")
                    .element("dd", item.text())
                    .raw("</div>"));
            html.raw("</dl></td></tr>\n");
        }
    }

    /** What is over a limit stands above the steps, where it is read before the work begins. */
    private void overLimit(MachineDay day) {
        hazards.of(day).stream().filter(Hazard::isOverLimit).forEach(hazard -> html.raw(
                        "<tr class=\"over-limit\"><td colspan=\"" + COLUMNS + "\">")
                .text(cautions.text(hazard))
                .raw("</td></tr>\n"));
    }

    /** A row of the table, so that the heading stands above it even on a page of its own. */
    private void care(MachineDay day) {
        html.raw("<tr class=\"last\"><td colspan=\"" + COLUMNS + "\"><div class=\"care\"><h2>Cautions</h2><ul>")
                .element("li", Cautions.FIRST);
        hazards.of(day).stream()
                .filter(hazard -> !hazard.isOverLimit())
                .forEach(hazard -> html.element("li", cautions.text(hazard)));
        html.raw("</ul></div><p class=\"notes\">Notes " + RULE + "</p></td></tr>\n");
    }
}

package freshfurrow.cli.why;

import freshfurrow.cli.text.Figures;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.Relief;
import freshfurrow.solver.why.Reliefs;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** How much more of what would have a field planted whole and in time. */
final class ReliefText {
    private final FieldExplanation why;
    private final Figures figures;

    ReliefText(FieldExplanation why, Figures figures) {
        this.why = why;
        this.figures = figures;
    }

    List<String> lines(Reliefs reliefs) {
        List<String> lines = new ArrayList<>();
        String lists = "With the lists of this plan as they are"
                + (why.positions().own().isPresent() ? "" : ", and this field at the best position above");
        lines.add(
                reliefs.enough().isEmpty()
                        ? lists + ", no one thing that was tried is enough."
                        : lists + ", any one of these is enough:");
        for (Reliefs.Enough enough : reliefs.enough()) {
            lines.add("  " + text(enough.relief()) + "; then planted by " + finish(enough.plan()) + ", the season "
                    + figures.areaDays(enough.plan().totals().lateHaDays()) + " late instead of "
                    + figures.areaDays(why.plan().totals().lateHaDays()));
        }
        if (!reliefs.inVain().isEmpty()) {
            lines.add("Not enough by itself, the most that was tried of each:");
            reliefs.inVain().forEach(relief -> lines.add("  " + text(relief)));
        }
        lines.add(
                "Each amount was found by playing the lists out again: it is enough, and one step less is not. Lists made");
        lines.add("anew may do with less. A hold time is no more than your extract bears, and crews need their rest.");
        return lines;
    }

    private String finish(Plan plan) {
        return WhyReport.workOn(why.field(), why, plan)
                .end()
                .map(WhyReport::moment)
                .orElse("the season's end");
    }

    private String text(Relief relief) {
        if (relief instanceof Relief.MoreCompost more) {
            return figures.mass(more.kg()) + " more compost in lot " + more.lot();
        }
        if (relief instanceof Relief.CompostSooner sooner) {
            return "lot " + sooner.lot() + " " + Figures.count(sooner.days(), "day", "days") + " sooner, on "
                    + Figures.day(from(sooner.lot()).minusDays(sooner.days()));
        }
        if (relief instanceof Relief.LongerDay longer) {
            return minutes(longer.minutes()) + " more a day for " + longer.planter();
        }
        if (relief instanceof Relief.LongerDayForAll longer) {
            return minutes(longer.minutes()) + " more a day for all planters and rigs";
        }
        if (relief instanceof Relief.MoreRigs rigs) {
            return Figures.count(rigs.count(), "rig", "rigs") + " more like " + rigs.like();
        }
        if (relief instanceof Relief.FasterBatches batches) {
            return "batches that take " + batches.percent() + " % less time";
        }
        if (relief instanceof Relief.FasterWater water) {
            return "water that flows " + water.percent() + " % faster";
        }
        if (relief instanceof Relief.MoreHoses hoses) {
            return Figures.count(hoses.count(), "hose", "hoses") + " more at each water point";
        }
        if (relief instanceof Relief.HigherDailyLimit limit) {
            return limit.percent() + " % more water a day where it is limited";
        }
        if (relief instanceof Relief.LongerHold hold) {
            return "a hold time of " + hold.recipe() + " that is " + minutes(hold.minutes()) + " longer";
        }
        throw new IllegalArgumentException("a relief without words: " + relief);
    }

    private LocalDate from(String lot) {
        return why.season().lot(lot).map(CompostLot::from).orElse(why.season().first());
    }

    private static String minutes(int minutes) {
        return Figures.span(Duration.ofMinutes(minutes));
    }
}

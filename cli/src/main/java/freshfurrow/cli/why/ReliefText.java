package freshfurrow.cli.why;

import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.WorkWords;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CompostLot;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.Relief;
import freshfurrow.solver.why.Reliefs;
import freshfurrow.solver.why.Untreated;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** How much more of what would have a field planted whole and in time, or with extract. */
final class ReliefText {
    private final FieldExplanation why;
    private final Figures figures;
    private final WorkWords words;

    ReliefText(FieldExplanation why, Figures figures) {
        this.why = why;
        this.figures = figures;
        this.words = WorkWords.of(why.field().work());
    }

    /** To have it in time. */
    List<String> inTime(Reliefs reliefs) {
        return lines(
                reliefs,
                why.positions().own().isPresent() ? "" : ", with this field at the best position above",
                ":",
                this::season);
    }

    /** To have all of it planted with extract. */
    List<String> withExtract(Untreated untreated) {
        return lines(
                untreated.reliefs(),
                untreated.atItsPlace().isPresent() ? ", and planting this field with extract" : "",
                " and leave no more " + WorkWords.of(why.season()).undoneOrWithoutExtract() + " elsewhere:",
                totals -> "the season has " + figures.area(totals.untreatedHa()) + " without extract instead of "
                        + figures.area(why.plan().totals().untreatedHa())
                        + (isAsLate(totals) ? "" : ", " + late(totals)));
    }

    private String season(Plan.Totals totals) {
        if (!isAsLate(totals)) {
            return "the season is " + late(totals);
        }
        return totals.lateHaDays() > 0 ? "the season is as late as in the plan" : "nothing is late";
    }

    /** Whether the figures that would be shown of both are the same. */
    private boolean isAsLate(Plan.Totals totals) {
        return figures.areaDays(totals.lateHaDays()).equals(figures.areaDays(inPlan()));
    }

    private String late(Plan.Totals totals) {
        return figures.areaDays(totals.lateHaDays()) + " late instead of " + figures.areaDays(inPlan());
    }

    private double inPlan() {
        return why.plan().totals().lateHaDays();
    }

    private List<String> lines(
            Reliefs reliefs, String field, String besides, Function<Plan.Totals, String> seasonThen) {
        List<String> lines = new ArrayList<>();
        String order = "Keeping the " + words.noun() + " order as it is" + field;
        lines.add(
                reliefs.enough().isEmpty()
                        ? order + ", no single change that was tried would be enough."
                        : order + ", any one of these would be enough" + besides);
        for (Reliefs.Enough enough : reliefs.enough()) {
            lines.add("  " + text(enough.relief()) + "; it is then " + words.done() + " by " + finish(enough.plan())
                    + ", and " + seasonThen.apply(enough.plan().totals()));
        }
        if (!reliefs.inVain().isEmpty()) {
            lines.add("Not enough on its own, even at the most that was tried:");
            reliefs.inVain().forEach(relief -> lines.add("  " + text(relief)));
        }
        lines.add(
                "Each amount was found by simulating the season again with it: it is enough, and one step less is not. A new "
                        + words.noun());
        lines.add(
                "order may need less. Do not set a hold time longer than your extract really keeps, and leave the crew time");
        lines.add("to rest.");
        return lines;
    }

    private String finish(Plan plan) {
        return WhyReport.workOn(why.field(), why, plan)
                .end()
                .map(figures::moment)
                .orElse("the season's end");
    }

    private String text(Relief relief) {
        if (relief instanceof Relief.MoreCompost more) {
            return figures.mass(more.kg()) + " more compost in lot " + more.lot();
        }
        if (relief instanceof Relief.Refilled refilled) {
            return figures.mass(refilled.kg()) + " of compost delivered to lot "
                    + refilled.lot().id() + ", which is used up";
        }
        if (relief instanceof Relief.CompostSooner sooner) {
            return "lot " + sooner.lot() + " " + Figures.count(sooner.days(), "day", "days") + " sooner, on "
                    + Figures.day(from(sooner.lot()).minusDays(sooner.days()));
        }
        if (relief instanceof Relief.LongerDay longer) {
            return longer.planter() + " working " + minutes(longer.minutes()) + " longer each day";
        }
        if (relief instanceof Relief.LongerDayForAll longer) {
            return "all " + WorkWords.of(why.season()).machinesAndRigs() + " working " + minutes(longer.minutes())
                    + " longer each day";
        }
        if (relief instanceof Relief.MoreRigs rigs) {
            return Figures.count(rigs.count(), "more rig", "more rigs") + " like " + rigs.like();
        }
        if (relief instanceof Relief.FasterBatches batches) {
            return "batches that take " + batches.percent() + " % less time";
        }
        if (relief instanceof Relief.FasterWater water) {
            return "water that is drawn " + water.percent() + " % faster";
        }
        if (relief instanceof Relief.MoreHoses hoses) {
            return Figures.count(hoses.count(), "more hose", "more hoses") + " at each water point";
        }
        if (relief instanceof Relief.HigherDailyLimit limit) {
            return limit.percent() % 100 == 0
                    ? "daily water limits " + (limit.percent() / 100 + 1) + " times as high"
                    : "daily water limits " + limit.percent() + " % higher";
        }
        if (relief instanceof Relief.LongerHold hold) {
            return "a hold time " + minutes(hold.minutes()) + " longer for " + hold.recipe();
        }
        if (relief instanceof Relief.LongerWait wait) {
            return wait.planter() + " waiting for a rig " + minutes(wait.minutes()) + " longer than it does";
        }
        throw new IllegalArgumentException("a relief without words: " + relief);
    }

    private LocalDate from(String lot) {
        return why.season().lot(lot).map(CompostLot::from).orElse(why.season().first());
    }

    private static String minutes(int minutes) {
        return Figures.span(Duration.ofMinutes(minutes)).replace(" 00 min", "");
    }
}

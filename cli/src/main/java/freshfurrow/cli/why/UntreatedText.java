package freshfurrow.cli.why;

import freshfurrow.cli.text.Figures;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.timeline.GoneWithout;
import freshfurrow.solver.why.FieldExplanation;
import freshfurrow.solver.why.Untreated;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Why a field is planted without extract, and what planting it with extract would take. */
final class UntreatedText {
    private final FieldExplanation why;
    private final Untreated untreated;
    private final Figures figures;

    UntreatedText(FieldExplanation why, Untreated untreated, Figures figures) {
        this.why = why;
        this.untreated = untreated;
        this.figures = figures;
    }

    /** How much of the field, in short. */
    String howMuch() {
        String area = figures.area(untreated.withoutHa());
        String all = figures.area(why.field().areaHa());
        return "Without extract: " + (area.equals(all) ? "all of it" : area + " of its " + all);
    }

    /** A line for each part that has a reason of its own. */
    List<String> reasons() {
        return untreated.without().stream()
                .map(part -> figures.area(part.areaHa()) + ", " + figures.fromTo(part.start(), part.end()) + ": "
                        + reason(part) + ".")
                .toList();
    }

    private String reason(GoneWithout part) {
        GoneWithout.Reason reason = part.reason();
        if (reason instanceof GoneWithout.Decided) {
            return "by decision of the plan, which makes no load for this field";
        }
        if (reason instanceof GoneWithout.NoCompost none) {
            return none.until()
                    .map(until -> "there is no compost until " + lots(until))
                    .orElse("no compost is left, and no lot is to come");
        }
        if (reason instanceof GoneWithout.NoLoad) {
            return "no rig can bring a load before the season ends";
        }
        if (reason instanceof GoneWithout.LongWait late) {
            return late.rig() + " could start to fill " + part.planter() + " on " + figures.moment(late.fill())
                    + " at the soonest, a wait of " + Figures.span(late.waits()) + ", and it waits "
                    + Figures.span(Duration.ofSeconds(longestWaitS(part.planter()))) + " at most";
        }
        return "no load that is worth a fill could be planted in that time";
    }

    private int longestWaitS(String planter) {
        return why.season().applicators().stream()
                .filter(own -> own.id().equals(planter))
                .map(own -> own.longestWaitS())
                .flatMapToInt(OptionalInt::stream)
                .sum();
    }

    private String lots(LocalDateTime until) {
        String ids = why.season().compost().stream()
                .filter(lot -> lot.from().atStartOfDay().equals(until))
                .map(CompostLot::id)
                .collect(Collectors.joining(" or "));
        return "lot " + ids + " is on hand on " + Figures.day(until.toLocalDate());
    }

    /** What planting it with extract at its place costs, where else it could be, and what would be enough. */
    List<String> remedies() {
        List<String> lines = new ArrayList<>();
        untreated.atItsPlace().ifPresent(alternative -> {
            lines.add("With extract at its own position, and nothing more of anything: "
                    + OtherPositions.planted(why, figures, alternative.plan()));
            lines.addAll(ScoreChange.lines(why, figures, alternative));
            lines.add("");
        });
        untreated.elsewhere().ifPresent(alternative -> {
            lines.add("With extract at another position, and no more area late or without extract elsewhere:");
            lines.add(OtherPositions.place(why, alternative.position()) + ": "
                    + OtherPositions.planted(why, figures, alternative.plan()));
            lines.addAll(ScoreChange.lines(why, figures, alternative));
            lines.add("");
        });
        lines.addAll(new ReliefText(why, figures).withExtract(untreated));
        return lines;
    }
}

package freshfurrow.solver.relaxation;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;

/**
 * A season in which what may be planted past the last hours of a day is hours like all others: each plan of the season is a plan of this
 * one, so that what no plan of this one can do better, none of the season can.
 */
public final class OvertimeAsHours {
    private OvertimeAsHours() {}

    public static CompiledSeason of(CompiledSeason compiled) {
        Season season = compiled.season();
        if (season.applicators().stream().allMatch(planter -> planter.overtimeS() == 0)) {
            return compiled;
        }
        return CompiledSeason.of(season.change()
                .applicators(season.applicators().stream()
                        .map(OvertimeAsHours::longer)
                        .toList())
                .season());
    }

    private static Applicator longer(Applicator planter) {
        return planter.withHours(planter.hours().goingOn(planter.overtimeS()));
    }
}

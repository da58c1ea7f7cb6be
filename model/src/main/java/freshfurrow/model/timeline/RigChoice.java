package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.MIX_DM2;
import static freshfurrow.model.timeline.State.MIX_RECIPE;

/**
 * Which rig serves a request: the one that can start the transfer of the largest load earliest; ties go to less driving, then to
 * the season's order. When none can bring its largest load on the day it is asked for, a load of one batch is asked for as well.
 */
final class RigChoice {
    private final CompiledSeason season;
    private final State state;
    private final Quote quote;
    private final LoadSizer sizer;

    private int best;
    private int bestStart;
    private int bestMetres;
    private Quote.Source bestSource = Quote.Source.BESIDE_PLANTER;

    RigChoice(CompiledSeason season, State state, Quote quote, LoadSizer sizer) {
        this.season = season;
        this.state = state;
        this.quote = quote;
        this.sizer = sizer;
    }

    /** Leaves the chosen rig and where its mix comes from in the quote; false when no rig can bring anything. */
    boolean choose() {
        quote.wholeAfterBreak = false;
        best = -1;
        bestStart = NEVER;
        compare(false);
        int tomorrow = (quote.need / Calendars.DAY_S + 1) * Calendars.DAY_S;
        if (bestStart >= tomorrow) {
            compare(true);
        }
        quote.rig = Math.max(0, best);
        quote.source = bestSource;
        return best >= 0;
    }

    private void compare(boolean oneBatch) {
        for (int r = 0; r < season.rigCount(); r++) {
            quote.rig = r;
            quote.source = source(r);
            long dm2 = sizer.ceiling();
            if (oneBatch) {
                dm2 = Math.min(dm2, season.areaOfCompost(season.batchMg[r], quote.recipe));
            }
            if (dm2 <= 0) {
                continue;
            }
            int start = quote.ask(sizer.loadOf(dm2), dm2);
            if (start < bestStart || (start == bestStart && start < NEVER && quote.metres < bestMetres)) {
                best = r;
                bestStart = start;
                bestMetres = quote.metres;
                bestSource = quote.source;
            }
        }
    }

    private Quote.Source source(int rig) {
        if (!season.extractsAtWater[rig]) {
            return Quote.Source.BESIDE_PLANTER;
        }
        int base = state.rig(rig);
        if (state.v[base + MIX_DM2] > 0 && state.v[base + MIX_RECIPE] == quote.recipe) {
            quote.source = Quote.Source.ON_BOARD;
            long onBoard = sizer.ceiling();
            if (quote.ask(onBoard, onBoard) < quote.deadline) {
                return Quote.Source.ON_BOARD;
            }
        }
        return Quote.Source.AT_WATER;
    }
}

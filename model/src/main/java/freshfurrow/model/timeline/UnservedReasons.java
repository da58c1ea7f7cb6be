package freshfurrow.model.timeline;

import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.journal.ActivityJournal;
import freshfurrow.model.timeline.journal.Left;
import freshfurrow.model.timeline.tables.Scale;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Why fields are not planted in whole, in a sentence each, found on the lists of the plan itself. */
final class UnservedReasons {
    private final CompiledSeason season;
    private final int[][] lists;
    private final int[] sizes;

    UnservedReasons(CompiledSeason season, int[][] lists, int[] sizes) {
        this.season = season;
        this.lists = lists;
        this.sizes = sizes;
    }

    String why(Left left) {
        LocalDate last = season.season().last();
        return switch (left.why()) {
            case COMPOST -> "no compost left after " + date(left.sinceS()) + ": " + compost(left) + " short";
            case SEASON_ENDS -> "no working time left to plant it before the season ends on " + last;
            case NO_LOAD -> "no rig can bring it a load before the season ends on " + last;
            case HOLD_TIME -> "the hold time of " + hold(left) + " ends before a load could be planted";
            case NOT_ALLOWED -> "the planter it is assigned to may not plant it";
            case LEFT_OUT -> "left out: " + whyNotAppended(left);
        };
    }

    /** What stands against planting a field that is in no list: it is tried at the end of each planter's list. */
    private String whyNotAppended(Left left) {
        int field = left.field();
        String reason = "no planter may plant it";
        for (int p = 0; p < season.planterCount(); p++) {
            if (!season.allows(p, field)) {
                continue;
            }
            ActivityJournal journal = new ActivityJournal(season.tables());
            new Timeline(season).play(withField(p, field), withOneMore(p), journal);
            List<Left> found = journal.unserved().stream()
                    .filter(shortfall -> shortfall.field() == field)
                    .toList();
            if (found.isEmpty()) {
                return "it would fit at the end of "
                        + season.season().applicators().get(p).id()
                        + (season.season().goals().byMoney().isPresent()
                                ? "'s planting order, but no plan with it was found that costs less"
                                : "'s planting order, at the cost of other fields or more fills");
            }
            reason = why(found.get(0));
        }
        return reason;
    }

    private int[][] withField(int planter, int field) {
        int[][] longer = lists.clone();
        longer[planter] = Arrays.copyOf(lists[planter], sizes[planter] + 1);
        longer[planter][sizes[planter]] = field;
        return longer;
    }

    private int[] withOneMore(int planter) {
        int[] longer = sizes.clone();
        longer[planter]++;
        return longer;
    }

    private LocalDate date(int s) {
        return season.season().first().plusDays(s / Calendars.DAY_S);
    }

    private String compost(Left left) {
        MassUnit unit = season.season().units().mass();
        SeasonTables tables = season.tables();
        double kg = tables.recipes().compostMg(left.dm2(), tables.fields().recipe(left.field())) / Scale.MG_PER_KG;
        return String.format(Locale.ROOT, "%.0f %s", Math.max(1, unit.fromKilograms(kg)), unit.symbol());
    }

    private String hold(Left left) {
        Recipe recipe = season.season().recipes().get(season.tables().fields().recipe(left.field()));
        Duration hold = Duration.ofSeconds(recipe.holdS());
        long reserveMin = Duration.ofSeconds(recipe.reserveS()).toMinutes();
        String reserve = reserveMin > 0 ? ", less " + reserveMin + " min of reserve" : "";
        return "recipe " + recipe.id() + " (" + hold.toHours() + " h " + hold.toMinutesPart() + " min" + reserve + ")";
    }
}

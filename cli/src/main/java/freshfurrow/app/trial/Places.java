package freshfurrow.app.trial;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** The places of a machine's list that a field may be put at. */
final class Places {
    private final Season season;
    private final CompiledSeason compiled;
    private final Map<String, Begun> begun;

    /** @param plan from which it is seen on which day what is begun */
    Places(CompiledSeason compiled, Plan plan) {
        this.compiled = compiled;
        season = compiled.season();
        begun = Begun.inPlan(plan);
    }

    /** The lists with the field, at the place that is named or the one of those for its day that the timeline likes best. */
    PlantingOrders with(PlantingOrders orders, int field, int machine, Placing placing) {
        FieldLists lists = FieldLists.of(season, orders).without(field);
        List<String> list = lists.ids(season).get(machine);
        if (placing.place().isPresent()) {
            int place = Math.max(0, Math.min(list.size(), placing.place().getAsInt()));
            return lists.with(machine, place, field).orders(season);
        }
        int first = placing.on().map(day -> begunBy(list, day.minusDays(1))).orElse(0);
        int last = placing.on().map(day -> begunBy(list, day)).orElse(list.size());
        return best(lists, field, machine, first, Math.max(first, last)).orders(season);
    }

    private FieldLists best(FieldLists lists, int field, int machine, int first, int last) {
        ListPlayer player = new ListPlayer(compiled);
        FieldLists best = lists.with(machine, first, field);
        PlayedScore score = PlayedScore.of(player.play(best));
        for (int place = first + 1; place <= last; place++) {
            FieldLists next = lists.with(machine, place, field);
            PlayedScore other = PlayedScore.of(player.play(next));
            if (other.isBetterThan(score)) {
                best = next;
                score = other;
            }
        }
        return best;
    }

    /** How many fields at the beginning of a list are begun by the end of a day. */
    private int begunBy(List<String> list, LocalDate day) {
        int count = 0;
        while (count < list.size() && isBegunBy(list.get(count), day)) {
            count++;
        }
        return count;
    }

    private boolean isBegunBy(String field, LocalDate day) {
        Begun its = begun.get(field);
        return its != null && !its.day().isAfter(day);
    }

    private record PlayedScore(long hard, long medium, long soft) {
        static PlayedScore of(Timeline timeline) {
            return new PlayedScore(timeline.hard(), timeline.medium(), timeline.soft());
        }

        boolean isBetterThan(PlayedScore other) {
            if (hard != other.hard) {
                return hard > other.hard;
            }
            return medium == other.medium ? soft > other.soft : medium > other.medium;
        }
    }
}

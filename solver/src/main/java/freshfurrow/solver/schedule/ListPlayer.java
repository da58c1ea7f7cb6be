package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.goals.Counters;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import java.util.List;
import java.util.Optional;

/** Plays lists out on one reused timeline. Not for use by several threads. */
public final class ListPlayer implements ListScorer {
    private final CompiledSeason season;
    private final Timeline timeline;
    private final Scoring scoring;
    private final int[][] lists;
    private final int[] sizes;

    /** Lists whose medium score falls below this are not played out any further. */
    private long leastMedium = Long.MIN_VALUE;

    private long mediumScored;
    private long hardScored;

    /** A player of lists that are worth what the goals of the season say. */
    public ListPlayer(CompiledSeason season) {
        this(season, Scoring.BY_GOALS);
    }

    /** @param scoring what lists are worth */
    public ListPlayer(CompiledSeason season, Scoring scoring) {
        this.season = season;
        this.scoring = scoring;
        this.timeline = new Timeline(season);
        this.lists = new int[season.planterCount()][season.fieldCount()];
        this.sizes = new int[season.planterCount()];
    }

    @Override
    public CompiledSeason season() {
        return season;
    }

    @Override
    public Scoring scoring() {
        return scoring;
    }

    /** The timeline after playing out the schedule's lists from the beginning; valid until the next call. */
    public Timeline play(Schedule schedule) {
        take(schedule);
        timeline.run(lists, sizes);
        return timeline;
    }

    /** Played out from where the lists begin to differ from those of the last step. */
    @Override
    public HardMediumSoftLongScore score(Schedule schedule) {
        take(schedule);
        timeline.rerun(lists, sizes, leastMedium);
        HardMediumSoftLongScore score = scoring.of(timeline);
        mediumScored = score.mediumScore();
        hardScored = score.hardScore();
        return score;
    }

    /**
     * The score of a schedule's lists, played out from where they begin to differ from those of the last step; of lists that are worse on the
     * medium level, any that is worse.
     *
     * @param than breaks no rule, where it is to save anything
     */
    public HardMediumSoftLongScore scoreUnlessWorse(Schedule schedule, HardMediumSoftLongScore than) {
        take(schedule);
        boolean mediumIsNeverMadeGood = scoring.equals(Scoring.BY_GOALS) && than.hardScore() == 0;
        timeline.rerun(lists, sizes, mediumIsNeverMadeGood ? than.mediumScore() : Long.MIN_VALUE);
        return scoring.of(timeline);
    }

    /** What was counted in the lists scored last; valid until the next call. */
    Counters counters() {
        return timeline;
    }

    /** The timeline itself finds what has changed. */
    @Override
    public void listChanged(int planter) {}

    @Override
    public void stepTaken(long mediumWorse) {
        timeline.adopt();
        boolean byGoals = scoring.equals(Scoring.BY_GOALS);
        // where a promise is broken, lists that keep it may be later
        leastMedium = byGoals && hardScored == 0 && mediumWorse < Long.MAX_VALUE
                ? mediumScored - mediumWorse
                : Long.MIN_VALUE;
    }

    private void take(Schedule schedule) {
        List<PlanterList> planters = schedule.lists();
        for (int planter = 0; planter < sizes.length; planter++) {
            List<Visit> visits = planters.get(planter).visits();
            int[] list = lists[planter];
            int size = visits.size();
            for (int i = 0; i < size; i++) {
                list[i] = visits.get(i).entry();
            }
            sizes[planter] = size;
        }
    }

    /** The timeline after playing out the lists; valid until the next call. */
    public Timeline play(FieldLists fields) {
        take(fields);
        timeline.run(lists, sizes);
        return timeline;
    }

    /** The score of the lists, played out from where they begin to differ from those of the last step. */
    public HardMediumSoftLongScore scoreFromChange(FieldLists fields) {
        take(fields);
        timeline.rerun(lists, sizes, Long.MIN_VALUE);
        return scoring.of(timeline);
    }

    /**
     * The timeline after playing out the lists from where they begin to differ from those of the last step; empty as soon as more fields
     * than that are moved from where they were promised to be.
     */
    public Optional<Timeline> playFromChange(FieldLists fields, int mostMoved) {
        take(fields);
        return timeline.rerunUnlessMoved(lists, sizes, mostMoved) ? Optional.of(timeline) : Optional.empty();
    }

    /** When a planter is done with its list in what was played last, seconds since the season's first midnight. */
    public int doneS(int planter) {
        return timeline.doneS(planter);
    }

    private void take(FieldLists fields) {
        for (int planter = 0; planter < sizes.length; planter++) {
            List<Integer> list = fields.of(planter);
            for (int i = 0; i < list.size(); i++) {
                lists[planter][i] = fields.entry(season, list.get(i));
            }
            sizes[planter] = list.size();
        }
    }

    @Override
    public HardMediumSoftLongScore score(FieldLists fields) {
        return scoring.of(play(fields));
    }
}

package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.UnknownGoals;

/**
 * Plays lists out on the timeline, but for those that an estimate finds so much worse than the last step's that a search would hardly
 * accept them: most moves, and a hundred times as fast. Those count as worse than any that a search accepts. Scores of all others
 * are the timeline's. By effort none is dismissed while goals that the estimate knows nothing of make nearly all of that.
 */
public final class ScreenedLists implements ListScorer {
    /** Of the effort, that the unknown may make. */
    private static final double MOST_UNKNOWN = 0.9;

    private final ListPlayer player;
    private final EstimatedLists estimate;
    private final UnknownGoals unknown;
    private final HardMediumSoftLongScore margin;
    private HardMediumSoftLongScore estimated = HardMediumSoftLongScore.ZERO;
    private HardMediumSoftLongScore played = HardMediumSoftLongScore.ZERO;

    // of the last step
    private HardMediumSoftLongScore stepEstimated = HardMediumSoftLongScore.ZERO;
    private HardMediumSoftLongScore stepPlayed = HardMediumSoftLongScore.ZERO;

    /** What lists may be worse by on the medium level and still need an exact score; none are dismissed as long as that is all. */
    private long mediumWorse = Long.MAX_VALUE;

    private boolean tellsEffort;

    /** @param margin by how much, on the medium and on the soft level, lists may look worse than the last step's and still be played out */
    public ScreenedLists(ListPlayer player, EstimatedLists estimate, HardMediumSoftLongScore margin) {
        this.player = player;
        this.estimate = estimate;
        this.unknown = estimate.unknownGoals();
        this.margin = margin;
    }

    @Override
    public CompiledSeason season() {
        return player.season();
    }

    @Override
    public Scoring scoring() {
        return player.scoring();
    }

    @Override
    public HardMediumSoftLongScore score(Schedule schedule) {
        estimated = estimate.score(schedule);
        if (mediumWorse < Long.MAX_VALUE && isHopeless()) {
            return HardMediumSoftLongScore.of(
                    stepPlayed.hardScore(), stepPlayed.mediumScore() - mediumWorse - 1, stepPlayed.softScore());
        }
        played = player.score(schedule);
        return played;
    }

    /** The soft level tells only where the medium level does not look better. */
    private boolean isHopeless() {
        HardMediumSoftLongScore worse = stepEstimated.subtract(estimated);
        return worse.hardScore() >= 0
                && (worse.mediumScore() > margin.mediumScore()
                        || (tellsEffort && worse.mediumScore() >= 0 && worse.softScore() > margin.softScore()));
    }

    @Override
    public HardMediumSoftLongScore score(FieldLists fields) {
        return player.score(fields);
    }

    @Override
    public void listChanged(int planter) {
        estimate.listChanged(planter);
        player.listChanged(planter);
    }

    @Override
    public void stepTaken(long mediumWorse) {
        tellsEffort = unknown.effortMin(player.counters()) <= -MOST_UNKNOWN * played.softScore();
        estimate.stepTaken(mediumWorse);
        player.stepTaken(mediumWorse);
        stepEstimated = estimated;
        stepPlayed = played;
        this.mediumWorse = unknown.outweighEffort() ? Long.MAX_VALUE : mediumWorse;
    }
}

package freshfurrow.solver.schedule;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.Timeline;

/** What lists are worth to a search, by what the timeline made of them. */
@FunctionalInterface
public interface Scoring {
    /** By the goals of the season: the score that a plan shows. */
    Scoring BY_GOALS = played -> HardMediumSoftLongScore.of(played.hard(), played.medium(), played.soft());

    /** More is better. The timeline is read at once and not kept. */
    HardMediumSoftLongScore of(Timeline played);
}

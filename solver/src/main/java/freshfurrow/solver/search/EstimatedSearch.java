package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.estimate.Stops;
import freshfurrow.solver.schedule.EstimatedLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Makes lists better by an estimate, which is much faster than the timeline but has to learn from it how long planters stand: from the
 * lists that it begins with and from those that it finds. So it goes in short passes. Each anneals by the estimate, with the goals as
 * they are and, where nothing is late, with fills counting for more; what it finds is kept only where the timeline says that it is better.
 */
final class EstimatedSearch {
    private static final long MOVES_PER_FIELD = 30;
    private static final int MOST_PASSES = 30;
    private static final int PASSES_IN_VAIN = 2;

    /**
     * Where nothing is late or left, so many times its weight more a fill counts in every second annealing of a pass. Measured in 5 and
     * 25 s: a calm season of 200 fields was left with 2 to 4 % less effort, by the weights as they are, and 3 % fewer refills; others of
     * 50 to 200 fields ended the same.
     */
    private static final double TIMES_MORE_PER_FILL = 3;

    private final CompiledSeason season;
    private final SeasonEstimate estimate;
    private final NearFields near;
    private final long seed;
    private final int tracks;
    private final BiConsumer<FieldLists, HardMediumSoftLongScore> onBetter;

    /**
     * @param tracks annealings in a pass
     * @param onBetter told of better lists and their score
     */
    EstimatedSearch(
            CompiledSeason season,
            SeasonEstimate estimate,
            NearFields near,
            long seed,
            int tracks,
            BiConsumer<FieldLists, HardMediumSoftLongScore> onBetter) {
        this.season = season;
        this.estimate = estimate;
        this.near = near;
        this.seed = seed;
        this.tracks = tracks;
        this.onBetter = onBetter;
    }

    /** The best lists found, {@code start} when none are better. */
    FieldLists improve(FieldLists start, SearchLimits limits, Workers workers) {
        Stops stops = new Stops(season);
        Played found = playOut(start, stops);
        @Nullable Played annealed = null;
        int inVain = 0;
        for (int pass = 0; pass < MOST_PASSES && inVain < PASSES_IN_VAIN; pass++) {
            Optional<TerminationConfig> end =
                    limits.end(Math.min(MOVES_PER_FIELD * season.fieldCount(), limits.movesLeft(0)));
            if (end.isEmpty()) {
                break;
            }
            inVain++;
            for (Schedule ended : workers.each(
                    pass(found, stops, seed + (long) pass * tracks, end.get(), limits.stop()), Supplier::get)) {
                Played next = playOut(ended.fields(), stops);
                if (annealed == null || next.isBetterThan(annealed)) {
                    annealed = next;
                    inVain = 0;
                }
                if (next.isBetterThan(found)) {
                    found = next;
                    onBetter.accept(next.lists(), next.score());
                }
            }
        }
        return found.lists();
    }

    private Played playOut(FieldLists lists, Stops stops) {
        Plan.Score score = stops.learn(lists.orders(season.season())).score();
        return new Played(lists, HardMediumSoftLongScore.of(score.hard(), score.medium(), score.soft()));
    }

    private record Played(FieldLists lists, HardMediumSoftLongScore score) {
        boolean isBetterThan(Played other) {
            return score.compareTo(other.score) > 0;
        }
    }

    private List<Supplier<Schedule>> pass(
            Played best, Stops stops, long firstSeed, TerminationConfig end, StopSignal stop) {
        FieldLists from = best.lists();
        boolean nothingLate = best.score().mediumScore() == 0;
        HardMediumSoftLongScore heat =
                Temperature.of(new EstimatedLists(season, estimate, stops), near, from, firstSeed, stop);
        List<Supplier<Schedule>> runs = new ArrayList<>();
        for (int track = 0; track < tracks; track++) {
            Annealing annealing = new Annealing(estimate, near, EnvironmentMode.NO_ASSERT, stop, (lists, score) -> {});
            EstimatedLists scorer = new EstimatedLists(
                    season, estimate, stops, nothingLate && track % 2 == 1 ? TIMES_MORE_PER_FILL : 0);
            long trackSeed = firstSeed + track;
            runs.add(() -> annealing.run(scorer, from, trackSeed, heat, end));
        }
        return runs;
    }
}

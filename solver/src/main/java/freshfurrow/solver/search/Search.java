package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Scoring;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Makes lists better: first by an estimate of what they come to, then by annealing on the timeline, round after round, each twice as
 * long and not as hot as the one before, until a limit is reached or rounds bring nothing. Each round is gone through twice, by single
 * changes and by ruin and recreate, or in a large season and where fields may go without extract by single changes with different luck, at the same time when there are two
 * threads, and the better lists are where the next one begins. A small season
 * has many rounds in its time, of which the hot ones leave a dead end and the cool ones settle; a large one has one, which cools by
 * its end.
 */
public final class Search {
    private static final int ROUNDS_IN_VAIN = 3;

    /** By the clock, at the most: in large seasons the timeline's own moves are few. */
    private static final double TIME_BY_ESTIMATE = 0.5;

    /** In larger seasons ruin and recreate gets through too few fields in the time that there is. */
    private static final int MOST_FIELDS_REBUILT = 299;

    /** Of a round's moves: each is scored by the timeline, while an estimate dismisses most of the others. */
    private static final double SHARE_OF_REBUILDING = 0.2;

    private final CompiledSeason season;
    private final Scoring scoring;
    private final long seed;
    private final int threads;
    private final EnvironmentMode mode;
    private volatile @Nullable Rounds rounds;

    /**
     * A search by the goals of the season.
     *
     * @param threads 1 or more
     */
    public Search(CompiledSeason season, long seed, int threads) {
        this(season, Scoring.BY_GOALS, seed, threads);
    }

    /**
     * A search for what is worth most.
     *
     * @param threads 1 or more
     */
    public Search(CompiledSeason season, Scoring scoring, long seed, int threads) {
        this(season, scoring, seed, threads, EnvironmentMode.NO_ASSERT);
    }

    Search(CompiledSeason season, Scoring scoring, long seed, int threads, EnvironmentMode mode) {
        this.season = season;
        this.scoring = scoring;
        this.seed = seed;
        this.threads = threads;
        this.mode = mode;
    }

    /**
     * The best lists found, {@code start} when none are better; blocks until a limit.
     *
     * @param onBetter told of better lists, on a thread of the search
     */
    public FieldLists improve(FieldLists start, SearchLimits limits, Consumer<FieldLists> onBetter) {
        return improve(List.of(start), limits, onBetter);
    }

    /**
     * The best lists found, those of {@code starts} among them; blocks until a limit. Lists of another kind than the best may lead further:
     * the first round begins with each of them, and the next where the better one ended.
     *
     * @param starts one or more, the best first; the first round begins with as many of them as it has tracks
     * @param onBetter told of better lists, on a thread of the search
     */
    public FieldLists improve(List<FieldLists> starts, SearchLimits limits, Consumer<FieldLists> onBetter) {
        FieldLists best = starts.get(0);
        if (limits.reached(0)) {
            return best;
        }
        SeasonEstimate estimate = new SeasonEstimate(season);
        NearFields near = new NearFields(estimate);
        ListPlayer player = new ListPlayer(season, scoring);
        HardMediumSoftLongScore bestScore = player.score(best);
        BestSoFar told = new BestSoFar(bestScore, onBetter);
        Rounds following = rounds(estimate, near, limits.stop(), told);
        rounds = following;
        EstimatedSearch estimated = new EstimatedSearch(season, estimate, near, seed, Rounds.TRACKS, told::offer);
        int inVain = 0;
        List<FieldLists> from = starts.subList(0, Math.min(starts.size(), Rounds.TRACKS));
        try (Workers workers = new Workers(Math.min(threads, Rounds.TRACKS), "search")) {
            if (scoring.equals(Scoring.BY_GOALS)) {
                // the estimate knows of nothing else
                from = byEstimate(estimated, from, limits.share(TIME_BY_ESTIMATE), workers);
                for (FieldLists lists : from) {
                    HardMediumSoftLongScore score = player.score(lists);
                    if (score.compareTo(bestScore) > 0) {
                        best = lists;
                        bestScore = score;
                    }
                }
            }
            while (inVain < ROUNDS_IN_VAIN && !limits.reached(following.movesTried())) {
                inVain++;
                for (Found found : workers.each(following.next(from, limits), Supplier::get)) {
                    if (found.score().compareTo(bestScore) > 0) {
                        best = found.lists();
                        bestScore = found.score();
                        inVain = 0;
                    }
                }
                from = List.of(best);
            }
        }
        return best;
    }

    /** Moves tried so far, in rounds that have ended. */
    public long movesTried() {
        Rounds following = rounds;
        return following == null ? 0 : following.movesTried();
    }

    private Rounds rounds(SeasonEstimate estimate, NearFields near, StopSignal stop, BestSoFar best) {
        Track annealing = annealing(estimate, near, stop, best);
        // where fields may go without extract, as little was left untreated with it and effort was 2 to 12 % more
        // a season under way is searched as it was: replans kept fewer promises with it
        boolean underWay = season.season().standing().isPresent();
        boolean rebuilds = !underWay && season.fieldCount() <= MOST_FIELDS_REBUILT && !season.mayGoWithout();
        return rebuilds
                ? rounds(
                        near,
                        annealing,
                        new Rebuilding(season, scoring, estimate, near, best::offer),
                        SHARE_OF_REBUILDING)
                : rounds(near, annealing, annealing(estimate, near, stop, best), 1.0 / Rounds.TRACKS);
    }

    private Rounds rounds(NearFields near, Track first, Track second, double shareOfTheSecond) {
        return new Rounds(season, near, seed, threads, List.of(first, second), shareOfTheSecond);
    }

    private Track annealing(SeasonEstimate estimate, NearFields near, StopSignal stop, BestSoFar best) {
        return new ScreenedAnnealing(
                season, scoring, estimate, mode, new Annealing(estimate, near, mode, stop, best::offer));
    }

    private static List<FieldLists> byEstimate(
            EstimatedSearch estimated, List<FieldLists> starts, SearchLimits limits, Workers workers) {
        List<FieldLists> found = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            found.add(estimated.improve(starts.get(i), limits.share(1.0 / (starts.size() - i)), workers));
        }
        return found;
    }
}

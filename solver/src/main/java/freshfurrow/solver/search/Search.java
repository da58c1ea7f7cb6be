package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.estimate.Stops;
import freshfurrow.solver.schedule.EstimatedLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.ListScorer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.Scoring;
import freshfurrow.solver.schedule.ScreenedLists;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Makes lists better: first by an estimate of what they come to, then by annealing on the timeline, round after round, each twice as
 * long and not as hot as the one before, until a limit is reached or rounds bring nothing. Each round is gone through twice with
 * different luck, at the same time when there are two threads, and the better lists are where the next one begins. A small season
 * has many rounds in its time, of which the hot ones leave a dead end and the cool ones settle; a large one has one, which cools by
 * its end.
 */
public final class Search {
    private static final long MOVES_PER_FIELD = 1_000;
    private static final int ROUNDS_IN_VAIN = 3;

    /**
     * Of the heat of the round before. Measured in 20 s on six invented seasons of 30 to 200 fields: with twice the heat, rounds after the
     * first ones brought hardly anything; with the same heat, or less, none ended worse and most better, an overload by a tenth of its lateness.
     */
    private static final double COOLER = 0.7;

    /** Of the heat that the first round begins with. */
    private static final double LEAST_HEAT = 0.5;

    /** By the clock, at the most: in large seasons the timeline's own moves are few. */
    private static final double TIME_BY_ESTIMATE = 0.5;

    /**
     * So many times the heat lists may look worse by the estimate and still be played out. Measured on nine invented seasons: of the moves
     * that the timeline found better, 96 of 100 or more looked no worse than by that; in one, where a thousand fields share few hoses
     * and any move changes all queues, half.
     */
    static final int PLAYED_OUT_TO = 3;

    /** Annealings in a round, whatever the number of threads: what is found must not depend on that. */
    private static final int TRACKS = 2;

    private final CompiledSeason season;
    private final Scoring scoring;
    private final long seed;
    private final int threads;
    private final EnvironmentMode mode;
    private volatile List<Annealing> tracks = List.of();

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
     * @param starts one or more, the best first; the first round begins with as many of them as it has annealings
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
        tracks = tracks(estimate, near, limits.stop(), told);
        EstimatedSearch estimated = new EstimatedSearch(season, estimate, near, seed, TRACKS, told::offer);
        long roundMoves = MOVES_PER_FIELD * season.fieldCount() / TRACKS;
        int inVain = 0;
        List<FieldLists> from = starts.subList(0, Math.min(starts.size(), TRACKS));
        try (Workers workers = new Workers(Math.min(threads, TRACKS), "search")) {
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
            for (int round = 0; inVain < ROUNDS_IN_VAIN && !limits.reached(movesTried()); round++) {
                List<Supplier<Schedule>> annealings = round(round, from, estimate, near, roundMoves, limits);
                if (annealings.isEmpty()) {
                    break;
                }
                inVain++;
                for (Schedule found : workers.each(annealings, Supplier::get)) {
                    if (found.score().compareTo(bestScore) > 0) {
                        best = found.fields();
                        bestScore = found.score();
                        inVain = 0;
                    }
                }
                from = List.of(best);
                roundMoves *= 2;
            }
        }
        return best;
    }

    /** Moves tried so far, in rounds that have ended. */
    public long movesTried() {
        return tracks.stream().mapToLong(Annealing::movesTried).sum();
    }

    private List<Annealing> tracks(SeasonEstimate estimate, NearFields near, StopSignal stop, BestSoFar best) {
        List<Annealing> made = new ArrayList<>();
        for (int track = 0; track < TRACKS; track++) {
            made.add(new Annealing(estimate, near, mode, stop, best::offer));
        }
        return made;
    }

    private static List<FieldLists> byEstimate(
            EstimatedSearch estimated, List<FieldLists> starts, SearchLimits limits, Workers workers) {
        List<FieldLists> found = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            found.add(estimated.improve(starts.get(i), limits.share(1.0 / (starts.size() - i)), workers));
        }
        return found;
    }

    /** @param starts for the annealings by turns */
    private List<Supplier<Schedule>> round(
            int round,
            List<FieldLists> starts,
            SeasonEstimate estimate,
            NearFields near,
            long roundMoves,
            SearchLimits limits) {
        long firstSeed = seed + (long) round * TRACKS;
        long left = limits.movesLeft(movesTried());
        SearchLimits ofEach = limits.share((double) Math.min(threads, TRACKS) / TRACKS);
        List<Supplier<Schedule>> annealings = new ArrayList<>();
        for (int track = 0; track < TRACKS; track++) {
            FieldLists from = starts.get(track % starts.size());
            HardMediumSoftLongScore heat = Temperature.of(new ListPlayer(season), near, from, firstSeed, limits.stop())
                    .multiply(Math.max(LEAST_HEAT, Math.pow(COOLER, round)));
            Annealing annealing = tracks.get(track);
            ListScorer scorer = scorer(from, estimate, heat.multiply(PLAYED_OUT_TO));
            long annealingSeed = firstSeed + track;
            long share = left / TRACKS + (track < left % TRACKS ? 1 : 0);
            Optional<TerminationConfig> end = ofEach.end(Math.min(roundMoves, share));
            end.ifPresent(until -> annealings.add(() -> annealing.run(scorer, from, annealingSeed, heat, until)));
        }
        return annealings;
    }

    /** The timeline: without an estimate where that knows nothing of what counts, or where every score is to be checked. */
    private ListScorer scorer(FieldLists from, SeasonEstimate estimate, HardMediumSoftLongScore margin) {
        if (!scoring.equals(Scoring.BY_GOALS) || mode != EnvironmentMode.NO_ASSERT) {
            return new ListPlayer(season, scoring);
        }
        Stops stops = new Stops(season);
        stops.learn(from.orders(season.season()));
        return new ScreenedLists(new ListPlayer(season), new EstimatedLists(season, estimate, stops), margin);
    }
}

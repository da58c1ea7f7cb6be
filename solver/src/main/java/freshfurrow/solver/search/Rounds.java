package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Supplier;

/** Rounds of a search: each goes through two tracks, one after the other or at the same time. */
final class Rounds {
    /** Tracks in a round, whatever the number of threads: what is found must not depend on that. */
    static final int TRACKS = 2;

    private static final long MOVES_PER_FIELD = 1_000;

    /**
     * Of the heat of the round before. Measured in 20 s on six invented seasons of 30 to 200 fields: with twice the heat, rounds after the
     * first ones brought hardly anything; with the same heat, or less, none ended worse and most better, an overload by a tenth of its lateness.
     */
    private static final double COOLER = 0.7;

    /** Of the heat that the first round begins with. */
    private static final double LEAST_HEAT = 0.5;

    private final CompiledSeason season;
    private final NearFields near;
    private final long seed;
    private final int threads;
    private final List<Track> tracks;

    /** Of the moves of a round, for the second track. */
    private final double shareOfTheSecond;

    private int round;

    /** @param shareOfTheSecond of the moves of a round, for the second of the two tracks, above 0 and less than 1 */
    Rounds(
            CompiledSeason season,
            NearFields near,
            long seed,
            int threads,
            List<Track> tracks,
            double shareOfTheSecond) {
        this.season = season;
        this.near = near;
        this.seed = seed;
        this.threads = threads;
        this.tracks = List.copyOf(tracks);
        this.shareOfTheSecond = shareOfTheSecond;
    }

    /**
     * The next round, twice as long and not as hot as the one before.
     *
     * @param starts for the tracks by turns
     */
    List<Supplier<Found>> next(List<FieldLists> starts, SearchLimits limits) {
        long firstSeed = seed + (long) round * TRACKS;
        double times = Math.max(LEAST_HEAT, Math.pow(COOLER, round));
        long moves = Math.min((MOVES_PER_FIELD * season.fieldCount()) << round, limits.movesLeft(movesTried()));
        long ofSecond = (long) (moves * shareOfTheSecond);
        round++;
        List<Supplier<Found>> runs = new ArrayList<>();
        for (int track = 0; track < TRACKS; track++) {
            Track next = tracks.get(track);
            FieldLists start = starts.get(track % starts.size());
            long trackSeed = firstSeed + track;
            OptionalLong most = OptionalLong.of(track == 0 ? moves - ofSecond : ofSecond);
            double timeOfTheRest = threads == 1 ? 1.0 / (TRACKS - track) : 1;
            runs.add(() -> {
                StopSignal stop = limits.stop().within(timeOfTheRest);
                HardMediumSoftLongScore heat = Temperature.of(new ListPlayer(season), near, start, firstSeed, stop)
                        .multiply(times);
                return next.run(start, trackSeed, heat, new SearchLimits(stop, most));
            });
        }
        return runs;
    }

    /** Moves tried so far, in rounds that have ended. */
    long movesTried() {
        return tracks.stream().mapToLong(Track::movesTried).sum();
    }
}

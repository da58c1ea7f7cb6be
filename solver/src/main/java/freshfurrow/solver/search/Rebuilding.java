package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.Scoring;
import java.util.Random;
import java.util.function.BiConsumer;

/**
 * Annealing by ruin and recreate on the timeline alone: some fields that belong together are taken out and put back where each is best, and
 * in between single fields and runs are moved. What no single move mends, as a field left out for one of another size, or queues that
 * an estimate does not see, this does. It cools by the same part in equal times, from much hotter to much cooler than the heat it is
 * given, so that it depends little on that.
 */
final class Rebuilding implements Track {
    private static final int MOVES_A_RUIN = 40;

    /** So many times the heat that it is given at its start, and at its end. */
    private static final double HOT = 5;

    private static final double COLD = 0.002;

    /** What is worse by so many times the heat is accepted with a chance of e to the power of -40, 4e-18. */
    private static final double NEVER_ACCEPTED = 40;

    private final CompiledSeason season;
    private final Scoring scoring;
    private final SeasonEstimate estimate;
    private final NearFields near;
    private final BiConsumer<FieldLists, HardMediumSoftLongScore> onBetter;
    private long movesTried;

    /** @param onBetter told of better lists and their score */
    Rebuilding(
            CompiledSeason season,
            Scoring scoring,
            SeasonEstimate estimate,
            NearFields near,
            BiConsumer<FieldLists, HardMediumSoftLongScore> onBetter) {
        this.season = season;
        this.scoring = scoring;
        this.estimate = estimate;
        this.near = near;
        this.onBetter = onBetter;
    }

    @Override
    public Found run(FieldLists start, long seed, HardMediumSoftLongScore heat, SearchLimits limits) {
        ListPlayer player = new ListPlayer(season, scoring);
        Schedule schedule = Schedule.of(player, estimate, near, start);
        WorkingLists lists = new WorkingLists(schedule);
        CountedScores scores = new CountedScores(player, schedule, limits);
        Random random = new Random(seed);
        Ruin ruin = new Ruin(lists, near, random);
        Recreate recreate = new Recreate(lists, near, scores, random);
        NearMoveIterator<Boolean> nearMoves = new NearMoveIterator<>(lists, lists, random);
        HardMediumSoftLongScore neverAccepted = heat.multiply(NEVER_ACCEPTED * HOT);
        HardMediumSoftLongScore current = scores.ofBase();
        Found best = new Found(start, current);
        while (season.fieldCount() > 0 && !scores.areUsedUp()) {
            boolean ruins = random.nextInt(MOVES_A_RUIN) == 0;
            HardMediumSoftLongScore next;
            if (ruins) {
                next = recreate.with(ruin.fields());
            } else if (nearMoves.hasNext() && nearMoves.next()) {
                next = scores.ofTrial(current.subtract(neverAccepted));
            } else {
                scores.skip();
                continue;
            }
            double times = HOT * Math.pow(COLD / HOT, scores.done());
            if (accepts(current, next, heat, times, random)) {
                lists.keep();
                current = scores.ofBase();
                if (current.compareTo(best.score()) > 0) {
                    best = new Found(schedule.fields(), current);
                    onBetter.accept(best.lists(), current);
                }
            } else {
                lists.undo();
                if (ruins) {
                    scores.ofBase();
                }
            }
        }
        movesTried += scores.count();
        return best;
    }

    private static boolean accepts(
            HardMediumSoftLongScore current,
            HardMediumSoftLongScore next,
            HardMediumSoftLongScore heat,
            double times,
            Random random) {
        if (next.compareTo(current) >= 0) {
            return true;
        }
        HardMediumSoftLongScore worse = current.subtract(next);
        double heats = Math.max(0, worse.mediumScore()) / (times * heat.mediumScore())
                + Math.max(0, worse.softScore()) / (times * heat.softScore());
        return worse.hardScore() == 0 && random.nextDouble() < Math.exp(-heats);
    }

    @Override
    public long movesTried() {
        return movesTried;
    }
}

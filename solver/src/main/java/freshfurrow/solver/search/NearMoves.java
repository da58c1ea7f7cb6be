package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.Move;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import ai.timefold.solver.core.impl.score.director.InnerScoreDirector;
import freshfurrow.solver.schedule.Schedule;
import java.util.Iterator;
import java.util.Random;

/** Random moves that bring together fields that are near by road or in their windows. */
public final class NearMoves implements MoveIteratorFactory<Schedule, Move<Schedule>> {
    @Override
    public long getSize(ScoreDirector<Schedule> scoreDirector) {
        long fields = scoreDirector.getWorkingSolution().visits().size();
        return fields * fields;
    }

    @Override
    public Iterator<Move<Schedule>> createOriginalMoveIterator(ScoreDirector<Schedule> scoreDirector) {
        throw new UnsupportedOperationException("near moves are random");
    }

    @Override
    public Iterator<Move<Schedule>> createRandomMoveIterator(ScoreDirector<Schedule> scoreDirector, Random random) {
        return new NearMoveIterator(new Positions((InnerScoreDirector<Schedule, ?>) scoreDirector), random);
    }
}

package freshfurrow.solver.search;

import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Visit;

/**
 * The changes of lists that a search may try. Indexes are those before the move, but for those that something is put at.
 *
 * @param <M> a move
 */
interface ListMoves<M> {
    /** Changes nothing. */
    M none();

    /** Puts a visit that stands in no list at an index. */
    M assign(Visit visit, PlanterList to, int index);

    /** Puts a visit that stands in no list in the place of another. */
    M replace(PlanterList list, int index, Visit by);

    /** Puts a visit at an index of what the list is without it. */
    M change(PlanterList from, int fromIndex, PlanterList to, int index);

    /** Puts a run of visits at an index of what the list is without them, perhaps the other way round. */
    M changeRun(PlanterList from, int fromIndex, int run, PlanterList to, int index, boolean turned);

    M swap(PlanterList one, int oneIndex, PlanterList other, int otherIndex);

    /** Turns round what lies between two indexes, the later one excluded. */
    M turn(PlanterList list, int begin, int end);

    /** Exchanges all that two lists have from an index on. */
    M exchangeRests(PlanterList one, int oneRest, PlanterList other, int otherRest);
}

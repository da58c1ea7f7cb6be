package freshfurrow.solver.search;

import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Visit;
import java.util.Iterator;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Picks a field, a near one that stands in a list, and one of these: put the field beside the near one; swap the two; put
 * the field and some that follow it, or a day's work, beside the near one, in either direction; let the near one follow the
 * field, by turning round what lies between them or by exchanging the rest of two planters' lists. A field that stands in no
 * list is put beside the near one, or in its place. Where fields may be planted without extract, one may also be planted so, or with extract again, or
 * the two may do so by turns.
 *
 * @param <M> a move
 */
final class NearMoveIterator<M> implements Iterator<M> {
    private static final int ATTEMPTS = 20;
    private static final int LONGEST_RUN = 6;
    private static final int ONE_IN_GOES_WITHOUT = 6;

    private final Positions positions;
    private final ListMoves<M> moves;
    private final Random random;
    private final int fields;
    private final boolean anyMayGoWithout;
    private final SeasonEstimate estimate;
    private final NearFields near;

    NearMoveIterator(Positions positions, ListMoves<M> moves, Random random) {
        this.positions = positions;
        this.moves = moves;
        this.random = random;
        this.fields = positions.schedule().season().fieldCount();
        this.anyMayGoWithout = positions.schedule().season().mayGoWithout();
        this.estimate = positions.schedule().estimate();
        this.near = positions.schedule().near();
    }

    @Override
    public boolean hasNext() {
        return fields > 1 || anyMayGoWithout;
    }

    @Override
    public M next() {
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            M move = attempt();
            if (move != null) {
                return move;
            }
        }
        return moves.none();
    }

    private @Nullable M attempt() {
        Visit visit = positions.standing(random.nextInt(fields));
        if (anyMayGoWithout && random.nextInt(ONE_IN_GOES_WITHOUT) == 0) {
            return changeExtract(visit);
        }
        if (fields == 1) {
            return null;
        }
        Visit nearOne = nearTo(visit);
        PlanterList to = positions.listOf(nearOne);
        if (to == null) {
            return null;
        }
        PlanterList from = positions.listOf(visit);
        int toIndex = positions.indexOf(nearOne);
        if (from == null) {
            Visit assigned = mayGoWithout(visit) && random.nextBoolean() ? positions.otherOf(visit) : visit;
            if (!positions.allows(to, assigned)) {
                return null;
            }
            return random.nextBoolean()
                    ? moves.replace(to, toIndex, assigned)
                    : moves.assign(assigned, to, toIndex + random.nextInt(2));
        }
        int fromIndex = positions.indexOf(visit);
        int share = random.nextInt(20);
        if (share < 8) {
            return putBeside(from, fromIndex, 1, to, toIndex);
        } else if (share < 12) {
            return swap(from, fromIndex, to, toIndex);
        } else if (share < 15) {
            return putBeside(from, fromIndex, 2 + random.nextInt(LONGEST_RUN - 1), to, toIndex);
        } else if (share < 16) {
            return putBeside(from, fromIndex, daysWork(from, fromIndex), to, toIndex);
        }
        return letFollow(from, fromIndex, to, toIndex);
    }

    /** About how many visits from an index on a planter has in a day, 1 or more; a few less at the end of a list. */
    private int daysWork(PlanterList list, int index) {
        double left = estimate.workPerDayS(list.planter());
        int end = index;
        while (end < list.visits().size() && left > 0) {
            left -= estimate.plantS(list.planter(), list.visits().get(end).field());
            end++;
        }
        return end - index;
    }

    private Visit nearTo(Visit visit) {
        int[] others = near.near(random.nextInt(near.kinds()), visit.field());
        double nearestMoreOften = random.nextDouble() * random.nextDouble();
        return positions.standing(others[(int) (nearestMoreOften * others.length)]);
    }

    private boolean mayGoWithout(Visit visit) {
        return positions.schedule().season().mayGoWithout(visit.field());
    }

    private @Nullable M changeExtract(Visit visit) {
        PlanterList list = positions.listOf(visit);
        return list == null || !mayGoWithout(visit)
                ? null
                : moves.replace(list, positions.indexOf(visit), positions.otherOf(visit));
    }

    private @Nullable M putBeside(PlanterList from, int fromIndex, int run, PlanterList to, int toIndex) {
        int end = fromIndex + run;
        if (end > from.visits().size() || !positions.allows(to, from, fromIndex, end)) {
            return null;
        }
        int index = toIndex + random.nextInt(2);
        if (from == to) {
            if (toIndex >= fromIndex && toIndex < end) {
                return null;
            }
            if (index > fromIndex) {
                index -= run;
            }
        }
        boolean turned = run > 1 && random.nextBoolean();
        if (from == to && index == fromIndex && !turned) {
            return null;
        }
        return run == 1
                ? moves.change(from, fromIndex, to, index)
                : moves.changeRun(from, fromIndex, run, to, index, turned);
    }

    private @Nullable M swap(PlanterList one, int oneIndex, PlanterList other, int otherIndex) {
        return positions.allows(other, one.visits().get(oneIndex))
                        && positions.allows(one, other.visits().get(otherIndex))
                ? moves.swap(one, oneIndex, other, otherIndex)
                : null;
    }

    private @Nullable M letFollow(PlanterList one, int oneIndex, PlanterList other, int otherIndex) {
        int oneRest = oneIndex + 1;
        if (one == other) {
            return oneRest < otherIndex ? moves.turn(one, oneRest, otherIndex + 1) : null;
        }
        return positions.allows(other, one, oneRest, one.visits().size())
                        && positions.allows(
                                one, other, otherIndex, other.visits().size())
                ? moves.exchangeRests(one, oneRest, other, otherIndex)
                : null;
    }
}

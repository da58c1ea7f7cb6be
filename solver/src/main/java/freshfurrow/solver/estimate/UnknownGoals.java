package freshfurrow.solver.estimate;

import freshfurrow.model.goals.Counters;
import freshfurrow.model.goals.Goal;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.goals.Level;
import java.util.List;

/** The goals of a season of which an estimate sees nothing, however much lists differ in them. */
public final class UnknownGoals {
    private final List<Goal> goals;

    /** @param shortOfCompost whether some fields may be planted without extract for want of it, which depends on who comes first */
    public UnknownGoals(GoalSet all, boolean shortOfCompost) {
        goals = all.goals().stream()
                .filter(goal -> goal.cost(new OnlyUnknown(shortOfCompost)) > 0)
                .toList();
    }

    /** By their names. */
    public List<String> names() {
        return goals.stream().map(Goal::name).toList();
    }

    /** Whether some outweigh any effort. */
    public boolean outweighEffort() {
        return goals.stream().anyMatch(goal -> goal.level() != Level.SOFT);
    }

    /** The effort that they make of what was counted, min. */
    public double effortMin(Counters played) {
        double cost = 0;
        for (Goal goal : goals) {
            cost += goal.level() == Level.SOFT ? goal.cost(played) : 0;
        }
        return cost;
    }

    /** Counts nothing but what is unknown: what costs anything then reads it. */
    private record OnlyUnknown(boolean shortOfCompost) implements KnownInPart {
        @Override
        public int unknown() {
            return Integer.MAX_VALUE;
        }

        @Override
        public int forbiddenFields() {
            return 0;
        }

        @Override
        public int brokenPromises() {
            return 0;
        }

        @Override
        public long unservedDm2() {
            return 0;
        }

        @Override
        public long lateMilliDm2Days() {
            return 0;
        }

        @Override
        public long untreatedMilliDm2() {
            return shortOfCompost ? unknown() : 0;
        }

        @Override
        public long lateDm2Days() {
            return 0;
        }

        @Override
        public long untreatedDm2() {
            return shortOfCompost ? unknown() : 0;
        }

        @Override
        public int fills() {
            return 0;
        }

        @Override
        public long idleS() {
            return 0;
        }

        @Override
        public long driveS() {
            return 0;
        }

        @Override
        public int movedFields() {
            return 0;
        }

        @Override
        public long earlyDm2Days() {
            return 0;
        }
    }
}

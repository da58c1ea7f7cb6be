package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import freshfurrow.solver.linear.LinearProgram;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A season eased to a linear program that places areas of groups of fields on days: what cannot be done there cannot be done in
 * the season. Its variables are, by group and day, the area Y planted by the end of the day and the late area L that is still to
 * be planted then. Overtime is eased before: {@link OvertimeAsHours}. Where fields may be planted without extract, there is the area T that is
 * treated by the end of the day too; else all that is planted is.
 *
 * <p>Proof that every plan keeps to it. Take any season played out, and for Y and L what it has. Y never shrinks and never
 * exceeds the area whose windows have opened. Of the area whose windows have closed by the end of day d at most Y(d) is
 * planted by then, and what is never planted is area - Y(last day); the rest is late at the end of the day:
 *
 * <p>L(d) &gt;= due(d) - Y(d) - (area - Y(last day)).
 *
 * <p>What is treated on a day is planted on it, so T never shrinks, and grows no faster than Y. What is planted and not treated by the last day, Y - T,
 * is untreated, and weighs at least as much as the least weight of the group's fields.
 *
 * <p>An area planted n days after its window is late at the end of n days, so the sum of L over days is the late area-days.
 * What planters, rigs, compost and water allow stands in {@link PlanterRoom}, {@link PlanterMoves}, {@link RigRoom} and {@link Stocks}. No other
 * rule of the season is looked at.
 *
 * <p>Fields with different windows share a group, as of the areas of a group that may be planted on a day it is always
 * best to plant what is due first, and the rows ask for no more than that.
 */
public final class Relaxation {
    /** Windows that closed earlier than this before the season began add no lateness here. */
    private static final int DAYS_BEFORE_SEASON = 60;

    private final List<FieldGroup> groups;
    private final int days;
    private final LinearProgram program = new LinearProgram();
    private final int[][] plantedBy;
    private final int[][] treatedBy;

    private Relaxation(CompiledSeason season, List<FieldGroup> groups, Aim aim) {
        this.groups = groups;
        days = season.season().days();
        plantedBy = new int[groups.size()][days];
        treatedBy = season.mayGoWithout() ? new int[groups.size()][days] : plantedBy;
        WorkingTime time = new WorkingTime(season);
        for (int g = 0; g < groups.size(); g++) {
            addPlanted(g, time);
            if (season.mayGoWithout()) {
                addTreated(g, aim.costOfUntreated(groups.get(g)));
            }
            if (aim.lateCounts()) {
                addLate(g, aim.costOfLateDay(groups.get(g)));
            }
            int plantedInAll = planted(g, days - 1);
            if (plantedInAll >= 0) {
                program.addCost(plantedInAll, -aim.costOfUnserved());
            }
        }
        PlanterRoom planters = new PlanterRoom(season, time, this);
        planters.addRows();
        new PlanterMoves(season, this, planters).addRows();
        new RigRoom(season, time, this).addRows();
        new Stocks(season, time, this).addRows();
    }

    /**
     * The program of what an aim makes least.
     *
     * @param groups of the fields that may be planted: {@link FieldGroups}
     */
    public static Relaxation of(CompiledSeason season, List<FieldGroup> groups, Aim aim) {
        Relaxation relaxation = new Relaxation(season, groups, aim);
        aim.addRows(relaxation);
        return relaxation;
    }

    /** What the aim comes to, but for a constant, at the least: areas in dm2. */
    public LinearProgram program() {
        return program;
    }

    List<FieldGroup> groups() {
        return groups;
    }

    int days() {
        return days;
    }

    /** The first day on which anything may be planted; the number of days when there is none. */
    int firstDay() {
        return (int) IntStream.range(0, days)
                .takeWhile(day -> IntStream.range(0, groups.size()).allMatch(g -> planted(g, day) < 0))
                .count();
    }

    /** Area of a group planted from one day to another, both included, as an expression times a factor. */
    void addPlantedFromTo(LinearProgram.Sum sum, double factor, int group, int firstDay, int lastDay) {
        int until = planted(group, lastDay);
        int before = planted(group, firstDay - 1);
        if (until != before) {
            plus(sum, factor, until);
            plus(sum, -factor, before);
        }
    }

    /** The same of what is treated of it. */
    void addTreatedFromTo(LinearProgram.Sum sum, double factor, int group, int firstDay, int lastDay) {
        int until = treated(group, lastDay);
        int before = treated(group, firstDay - 1);
        if (until != before) {
            plus(sum, factor, until);
            plus(sum, -factor, before);
        }
    }

    /** Area of a group planted from one day to another, that which is treated times one factor and the rest times another. */
    void addPlantedFromTo(
            LinearProgram.Sum sum, double ofTreated, double ofUntreated, int group, int firstDay, int lastDay) {
        if (treatedBy == plantedBy) {
            addPlantedFromTo(sum, ofTreated, group, firstDay, lastDay);
        } else {
            addPlantedFromTo(sum, ofUntreated, group, firstDay, lastDay);
            addTreatedFromTo(sum, ofTreated - ofUntreated, group, firstDay, lastDay);
        }
    }

    /** A row, unless the expression never comes to more. */
    void addAtMost(LinearProgram.Sum sum, double most) {
        if (program.largest(sum) > most) {
            program.atMost(sum, most);
        }
    }

    /** The groups that only planters of the set may plant. */
    List<Integer> groupsWithin(BitSet planters) {
        return IntStream.range(0, groups.size())
                .filter(g -> {
                    BitSet others = (BitSet) groups.get(g).planters().clone();
                    others.andNot(planters);
                    return others.isEmpty();
                })
                .boxed()
                .toList();
    }

    /** The first moment of a day at which a planter may plant anything; the end of the day when there is none. */
    int plantableFrom(int day, WorkingTime time) {
        return groups.stream()
                .flatMapToInt(group -> group.planters().stream()
                        .flatMap(p -> group.samples().stream().mapToInt(f -> time.plantableFrom(p, f, day))))
                .min()
                .orElse((day + 1) * DAY_S);
    }

    /** The end of the last time of a day at which a planter may plant anything; the start of the day when there is none. */
    int plantableUntil(int day, WorkingTime time) {
        return groups.stream()
                .flatMapToInt(group -> group.planters().stream()
                        .flatMap(p -> group.samples().stream().mapToInt(f -> time.plantableUntil(p, f, day))))
                .max()
                .orElse(day * DAY_S);
    }

    private static void plus(LinearProgram.Sum sum, double factor, int variable) {
        if (variable >= 0) {
            sum.plus(factor, variable);
        }
    }

    /** The variable of the area planted by the end of a day; -1 when none can be. */
    int planted(int group, int day) {
        return day < 0 ? -1 : plantedBy[group][day];
    }

    private void addPlanted(int g, WorkingTime time) {
        FieldGroup group = groups.get(g);
        int before = -1;
        for (int day = 0; day < days; day++) {
            if (day >= group.firstOpening() && plantable(group, day, time)) {
                int variable = program.variable((double) group.opened(day));
                if (before >= 0) {
                    program.atLeast(new LinearProgram.Sum().plus(1, variable).plus(-1, before), 0);
                }
                before = variable;
            }
            plantedBy[g][day] = before;
        }
    }

    /** The variable of the area treated by the end of a day; -1 when none can be. */
    private int treated(int group, int day) {
        return day < 0 ? -1 : treatedBy[group][day];
    }

    private void addTreated(int g, double costOfUntreated) {
        int before = -1;
        for (int day = 0; day < days; day++) {
            int planted = planted(g, day);
            if (planted != planted(g, day - 1)) {
                int variable = program.variable((double) groups.get(g).opened(day));
                LinearProgram.Sum untreated =
                        new LinearProgram.Sum().plus(1, planted).plus(-1, variable);
                if (before >= 0) {
                    program.atLeast(new LinearProgram.Sum().plus(1, variable).plus(-1, before), 0);
                    untreated.plus(-1, planted(g, day - 1)).plus(1, before);
                }
                program.atLeast(untreated, 0);
                before = variable;
            }
            treatedBy[g][day] = before;
        }
        if (before >= 0) {
            program.addCost(planted(g, days - 1), costOfUntreated);
            program.addCost(before, -costOfUntreated);
        }
    }

    private static boolean plantable(FieldGroup group, int day, WorkingTime time) {
        return group.planters().stream()
                .anyMatch(p -> group.samples().stream().anyMatch(f -> time.plantableS(p, f, day) > 0));
    }

    private void addLate(int g, double costPerDay) {
        FieldGroup group = groups.get(g);
        int late = -1;
        long dueBefore = 0;
        for (int day = Math.max(group.firstClosing(), -DAYS_BEFORE_SEASON); day < days - 1; day++) {
            long due = group.due(day);
            boolean asBefore = late >= 0 && due == dueBefore && planted(g, day) == planted(g, day - 1);
            if (due > 0 && !asBefore) {
                late = program.variable((double) due);
                addLateRow(g, late, day, due);
            }
            if (due > 0) {
                program.addCost(late, costPerDay);
            }
            dueBefore = due;
        }
    }

    private void addLateRow(int g, int late, int day, long due) {
        LinearProgram.Sum sum = new LinearProgram.Sum().plus(1, late);
        plus(sum, 1, planted(g, day));
        plus(sum, -1, planted(g, days - 1));
        program.atLeast(sum, (double) (due - groups.get(g).area()));
    }
}

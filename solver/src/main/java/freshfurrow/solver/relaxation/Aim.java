package freshfurrow.solver.relaxation;

import freshfurrow.solver.linear.LinearProgram;

/**
 * What a {@link Relaxation} makes least.
 *
 * @param costOfUnserved of a dm2 that is not planted, in the unit of the aim
 * @param costOfLateDay of a dm2 that is planted a day late and whose field has a weight of 1, in the unit of the aim
 * @param untreatedDays of a dm2 that is planted without extract and whose field has a weight of 1, in the unit of the aim
 */
public record Aim(
        Kind kind, double costOfUnserved, double costOfLateDay, double untreatedDays, double mostUnservedDm2) {
    private static final double WEIGHT_ONE = 1000;

    enum Kind {
        SCORE,
        BILL,
        UNSERVED,
        LATE,
        EARLY
    }

    /** Late, untreated and unserved area as the score weighs them, dm2-days. */
    public static Aim score(double costOfUnserved, double untreatedDays) {
        return new Aim(Kind.SCORE, costOfUnserved, 1, untreatedDays, Double.MAX_VALUE);
    }

    /** Late and unserved area as a bill has them, money x dm2/ha: whatever the weights of fields. */
    public static Aim bill(double costOfUnserved, double costOfLateDay) {
        return new Aim(Kind.BILL, costOfUnserved, costOfLateDay, 0, Double.MAX_VALUE);
    }

    /** Area not planted, dm2. */
    public static Aim unserved() {
        return new Aim(Kind.UNSERVED, 1, 0, 0, Double.MAX_VALUE);
    }

    /** Unweighted late area, dm2-days, with no more than so much left unplanted. */
    public static Aim late(double mostUnservedDm2) {
        return new Aim(Kind.LATE, 0, 1, 0, mostUnservedDm2);
    }

    /** Planted area times the days from the season's first to its planting, dm2-days, with no more than so much left unplanted. */
    public static Aim early(double mostUnservedDm2) {
        return new Aim(Kind.EARLY, 0, 0, 0, mostUnservedDm2);
    }

    boolean lateCounts() {
        return kind == Kind.SCORE || kind == Kind.BILL || kind == Kind.LATE;
    }

    double costOfLateDay(FieldGroup group) {
        return kind == Kind.SCORE ? costOfLateDay * group.weight() / WEIGHT_ONE : costOfLateDay;
    }

    double costOfUntreated(FieldGroup group) {
        return untreatedDays * group.extractWeight() / WEIGHT_ONE;
    }

    void addRows(Relaxation relaxation) {
        if (kind == Kind.EARLY) {
            addDays(relaxation);
        }
        if (kind == Kind.LATE || kind == Kind.EARLY) {
            LinearProgram.Sum planted = new LinearProgram.Sum();
            double area = 0;
            for (int g = 0; g < relaxation.groups().size(); g++) {
                relaxation.addPlantedFromTo(planted, 1, g, 0, relaxation.days() - 1);
                area += relaxation.groups().get(g).area();
            }
            relaxation.program().atLeast(planted, area - mostUnservedDm2);
        }
    }

    /** What is planted on a day costs as many days. */
    private static void addDays(Relaxation relaxation) {
        for (int g = 0; g < relaxation.groups().size(); g++) {
            for (int day = 1; day < relaxation.days(); day++) {
                int by = relaxation.planted(g, day);
                int before = relaxation.planted(g, day - 1);
                if (by != before) {
                    relaxation.program().addCost(by, day);
                    if (before >= 0) {
                        relaxation.program().addCost(before, -day);
                    }
                }
            }
        }
    }
}

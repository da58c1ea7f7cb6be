package freshfurrow.solver.estimate;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.timeline.CompiledSeason;

/**
 * About what planters' lists come to when each planter stops as in a plan before, whatever the others do, and loads are as large as
 * they can be. A list is worked out from where it begins to differ from the one kept. Not for use by several threads.
 */
public final class ListEstimate implements KnownInPart {
    /** Part of a load that a change of recipe costs: on the average the last one is used by half. */
    private static final double LOADS_FOR_A_CHANGE = 0.5;

    // how things stand before a field of a list, or at its end
    private static final int DAY = 0;
    private static final int SINCE_MORNING_S = 1;
    private static final int RECIPE = 2;
    private static final int FILLS = 3;
    private static final int DRIVE_S = 4;
    private static final int PLANTED_DM2 = 5;
    private static final int LATE_MILLI_DM2_DAYS = 6;
    private static final int EARLY_DM2_DAYS = 7;
    private static final int MOVED_FIELDS = 8;
    private static final int FORBIDDEN_FIELDS = 9;
    private static final int UNTREATED_MILLI_DM2 = 10;
    private static final int FIXED_KEPT = 11;
    private static final int LATE_DM2_DAYS = 12;
    private static final int UNTREATED_DM2 = 13;
    private static final int COMPOST_MG = 14;
    private static final int IDLE_S = 15;
    // the longest time that it stood for a closed field and, as far as was seen, could have planted none: day, s of
    // that day, to before a day
    private static final int STOOD_FROM_DAY = 16;
    private static final int STOOD_SINCE_S = 17;
    private static final int STOOD_UNTIL_DAY = 18;
    private static final int SIZE = 19;

    private final CompiledSeason season;
    private final SeasonEstimate estimate;
    private final double[][] stopPerDm2S;
    private final double[] stopPerFillS;
    /** By planter, ground and day. */
    private final double[][][] plantableS;

    private final int[] ground;
    private final double totalDm2;
    private final Compost compost;
    private final Lists kept;
    private final Lists tried;
    /** The tried lists are those kept before this index, by planter. */
    private final int[] same;

    /** At the end of the tried lists, by figure and planter: side by side, as they are added up after each try. */
    private final double[][] figures;

    /** @param stops of lists like those to be tried */
    public ListEstimate(CompiledSeason season, SeasonEstimate estimate, Stops stops) {
        this.season = season;
        this.estimate = estimate;
        stopPerDm2S = stops.perDm2S();
        stopPerFillS = stops.perFillS();
        int planters = season.planterCount();
        int fields = season.fieldCount();
        ground = new int[fields];
        plantableS = new double[planters][season.groundCount()][];
        double total = 0;
        for (int field = 0; field < fields; field++) {
            ground[field] = estimate.ground(field);
            total += season.areaDm2(field);
            for (int planter = 0; planter < planters; planter++) {
                if (plantableS[planter][ground[field]] == null) {
                    plantableS[planter][ground[field]] = plantableS(planter, field);
                }
            }
        }
        totalDm2 = total;
        compost = new Compost(season);
        kept = new Lists(planters, fields);
        tried = new Lists(planters, fields);
        same = new int[planters];
        figures = new double[SIZE][planters];
        for (int planter = 0; planter < planters; planter++) {
            kept.states[planter][DAY] = season.beginsOnDay();
            kept.states[planter][RECIPE] = season.tankRecipe(planter);
            System.arraycopy(kept.states[planter], 0, tried.states[planter], 0, SIZE);
        }
    }

    private double[] plantableS(int planter, int field) {
        double[] onDay = new double[season.days()];
        for (int day = 0; day < onDay.length; day++) {
            onDay[day] = season.plantableS(planter, field, day * DAY_S, (day + 1) * DAY_S);
        }
        return onDay;
    }

    /** Tries a list of a planter in place of the one it had. The figures are those of the lists that all planters have now. */
    public void tryList(int planter, int[] list, int size) {
        int[] before = kept.fields[planter];
        int common = 0;
        int most = Math.min(size, kept.sizes[planter]);
        while (common < most && list[common] == before[common]) {
            common++;
        }
        double[] states = tried.states[planter];
        System.arraycopy(kept.states[planter], common * SIZE, states, common * SIZE, SIZE);
        System.arraycopy(list, common, tried.fields[planter], common, size - common);
        tried.sizes[planter] = size;
        same[planter] = common;
        for (int i = common; i < size; i++) {
            int from = i == 0 ? SeasonEstimate.START : season.named(list[i - 1]);
            plant(planter, from, list[i], states, i * SIZE, (i + 1) * SIZE);
        }
        for (int figure = 0; figure < SIZE; figure++) {
            figures[figure][planter] = states[size * SIZE + figure];
        }
    }

    /** Keeps the lists tried last: the next ones differ from them by little. */
    public void keep() {
        for (int planter = 0; planter < same.length; planter++) {
            int from = same[planter];
            int size = tried.sizes[planter];
            System.arraycopy(tried.fields[planter], from, kept.fields[planter], from, size - from);
            System.arraycopy(
                    tried.states[planter], from * SIZE, kept.states[planter], from * SIZE, (size + 1 - from) * SIZE);
            kept.sizes[planter] = size;
            same[planter] = size;
        }
    }

    private void plant(int planter, int from, int entry, double[] states, int before, int after) {
        int field = season.named(entry);
        boolean without = season.isWithout(entry);
        double recipe = without ? states[before + RECIPE] : estimate.recipe(field);
        long areaDm2 = season.areaDm2(field);
        double[] plantable = plantableS[planter][ground[field]];
        double[] stopsS = stopPerDm2S[planter];
        double plantingS = estimate.plantS(planter, field) / areaDm2;
        int lastDay = estimate.closes(field);
        int opens = estimate.opens(field);

        double fills = without ? 0 : (double) areaDm2 / Math.max(1, season.largestLoadDm2(planter, (int) recipe));
        int day = (int) states[before + DAY];
        double sinceMorningS = states[before + SINCE_MORNING_S] + estimate.moveS(planter, from, field);
        if (recipe != states[before + RECIPE]) {
            fills += LOADS_FOR_A_CHANGE;
            sinceMorningS += LOADS_FOR_A_CHANGE * stopPerFillS[planter];
        }
        int freeOnDay = day;
        double freeSinceS = sinceMorningS;
        if (day < opens) {
            day = opens;
            sinceMorningS = 0;
        }
        int begun = -1;
        double left = areaDm2;
        double late = 0;
        double early = 0;
        while (left > 0 && day < plantable.length) {
            double roomS = plantable[day] - sinceMorningS;
            if (roomS <= 0) {
                day++;
                sinceMorningS = 0;
                continue;
            }
            if (begun < 0) {
                begun = day;
            }
            double perDm2S = without ? plantingS : plantingS + stopsS[day];
            double neededS = left * perDm2S;
            double piece = neededS <= roomS ? left : roomS / perDm2S;
            sinceMorningS += Math.min(neededS, roomS);
            left = neededS <= roomS ? 0 : left - piece;
            early += piece * day;
            late += piece * Math.max(0, day - lastDay);
        }

        states[after + IDLE_S] = states[before + IDLE_S] + idleS(states, before, plantable, opens);
        states[after + STOOD_FROM_DAY] = states[before + STOOD_FROM_DAY];
        states[after + STOOD_SINCE_S] = states[before + STOOD_SINCE_S];
        states[after + STOOD_UNTIL_DAY] =
                Math.min(states[before + STOOD_UNTIL_DAY], Math.max(states[before + STOOD_FROM_DAY], opens));
        boolean stands = opens > freeOnDay || begun > freeOnDay + 1;
        double stoodDays = states[after + STOOD_UNTIL_DAY] - states[after + STOOD_FROM_DAY];
        if (stands && begun - freeOnDay >= stoodDays) {
            states[after + STOOD_FROM_DAY] = freeOnDay;
            states[after + STOOD_SINCE_S] = freeSinceS;
            states[after + STOOD_UNTIL_DAY] = begun;
        }
        states[after + DAY] = day;
        states[after + SINCE_MORNING_S] = sinceMorningS;
        states[after + RECIPE] = recipe;
        states[after + FILLS] = states[before + FILLS] + fills;
        states[after + DRIVE_S] = states[before + DRIVE_S] + estimate.driveS(planter, from, field);
        states[after + PLANTED_DM2] = states[before + PLANTED_DM2] + areaDm2 - left;
        states[after + LATE_MILLI_DM2_DAYS] =
                states[before + LATE_MILLI_DM2_DAYS] + late * season.lateWeightThousandths(field);
        states[after + COMPOST_MG] =
                states[before + COMPOST_MG] + (without ? 0 : (areaDm2 - left) * compost.mgPerDm2(field));
        states[after + LATE_DM2_DAYS] = states[before + LATE_DM2_DAYS] + late;
        states[after + UNTREATED_DM2] = states[before + UNTREATED_DM2] + (without ? areaDm2 - left : 0);
        states[after + EARLY_DM2_DAYS] = states[before + EARLY_DM2_DAYS] + early;
        states[after + UNTREATED_MILLI_DM2] = states[before + UNTREATED_MILLI_DM2]
                + (without ? (areaDm2 - left) * season.extractWeightThousandths(field) : 0);
        boolean moved = begun >= 0 && season.breaksPromise(planter, field, begun);
        states[after + MOVED_FIELDS] = states[before + MOVED_FIELDS] + (moved ? 1 : 0);
        boolean kept = begun >= 0 && season.isFixedTo(field, begun);
        states[after + FIXED_KEPT] = states[before + FIXED_KEPT] + (kept ? 1 : 0);
        boolean forbidden = !season.allows(planter, field);
        states[after + FORBIDDEN_FIELDS] = states[before + FORBIDDEN_FIELDS] + (forbidden ? 1 : 0);
    }

    /** How long a planter could have planted such a field while it stood for one that was closed, s. */
    private static double idleS(double[] states, int before, double[] plantable, int opens) {
        int from = (int) states[before + STOOD_FROM_DAY];
        double idleS = 0;
        for (int day = Math.max(from, opens); day < states[before + STOOD_UNTIL_DAY]; day++) {
            idleS += day > from ? plantable[day] : Math.max(0, plantable[day] - states[before + STOOD_SINCE_S]);
        }
        return idleS;
    }

    @Override
    public int brokenPromises() {
        return season.fixedDays() - (int) sum(FIXED_KEPT);
    }

    private double sum(int figure) {
        double sum = 0;
        for (double ofPlanter : figures[figure]) {
            sum += ofPlanter;
        }
        return sum;
    }

    @Override
    public int forbiddenFields() {
        return (int) sum(FORBIDDEN_FIELDS);
    }

    @Override
    public long unservedDm2() {
        double plantedDm2 = sum(PLANTED_DM2);
        return Math.round(totalDm2 - plantedDm2 * (1 - compost.shareLacking(sum(COMPOST_MG))));
    }

    @Override
    public long lateMilliDm2Days() {
        return Math.round(sum(LATE_MILLI_DM2_DAYS));
    }

    /** Only of fields that are planted so by decision: when compost runs short is not looked at. */
    @Override
    public long untreatedMilliDm2() {
        return Math.round(sum(UNTREATED_MILLI_DM2));
    }

    @Override
    public long lateDm2Days() {
        return Math.round(sum(LATE_DM2_DAYS));
    }

    /** As {@link #untreatedMilliDm2}. */
    @Override
    public long untreatedDm2() {
        return Math.round(sum(UNTREATED_DM2));
    }

    @Override
    public int fills() {
        return (int) Math.round(sum(FILLS));
    }

    @Override
    public int unknown() {
        return 0;
    }

    @Override
    public long idleS() {
        return Math.round(sum(IDLE_S));
    }

    /** Of planters only. */
    @Override
    public long driveS() {
        return Math.round(sum(DRIVE_S));
    }

    @Override
    public int movedFields() {
        return (int) sum(MOVED_FIELDS);
    }

    @Override
    public long earlyDm2Days() {
        return Math.round(sum(EARLY_DM2_DAYS));
    }

    /** Fields of each planter's list, and how things stand before each of them and at the end. */
    private static final class Lists {
        final int[][] fields;
        final int[] sizes;
        final double[][] states;

        Lists(int planters, int fieldCount) {
            fields = new int[planters][fieldCount];
            sizes = new int[planters];
            states = new double[planters][(fieldCount + 1) * SIZE];
        }
    }
}

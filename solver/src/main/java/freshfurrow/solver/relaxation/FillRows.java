package freshfurrow.solver.relaxation;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.linear.LinearProgram;
import freshfurrow.solver.linear.ProvenBound;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/** The rows of one {@link FillProgram}, whose proof stands there. */
final class FillRows {
    private static final double WEIGHT_ONE = 1000;
    private static final double ROUNDING = 1 + 1e-9;

    private final CompiledSeason season;
    private final List<FieldGroup> groups;
    private final LargestLoads largest;
    private final List<AlikePlanters> kinds;
    private final DayBlocks blocks;
    private final FillsOfDays fillsOfDays;
    private final LinearProgram program = new LinearProgram();
    private final Map<Integer, LinearProgram.Sum> leftOfRecipe = new LinkedHashMap<>();
    private final LinearProgram.Sum harm = new LinearProgram.Sum();
    private final int[][][] treated;
    private final double perFill;
    private final double unitDm2;

    FillRows(FillProgram of, FillProgram.NoWorse than, double perFill, double perDm2Day) {
        season = of.season;
        groups = of.groups;
        largest = of.largest;
        kinds = of.kinds;
        blocks = of.blocks;
        fillsOfDays = of.fillsOfDays;
        this.perFill = perFill;
        unitDm2 = IntStream.range(0, season.planterCount())
                .mapToDouble(planter -> largest.dm2(planter, 0))
                .max()
                .orElse(1);
        treated = new int[kinds.size()][season.season().recipes().size()][blocks.count()];
        addFields(than, perDm2Day);
        addSets();
    }

    double least() {
        return ProvenBound.of(program).doubleValue() / unitDm2 - perFill * inTanks();
    }

    private double inTanks() {
        return IntStream.range(0, season.planterCount())
                .mapToDouble(planter -> season.tankDm2(planter) / largest.dm2(planter, season.tankRecipe(planter)))
                .sum();
    }

    private void addFields(FillProgram.NoWorse than, double perDm2Day) {
        LinearProgram.Sum[][] ofRecipe =
                new LinearProgram.Sum[season.season().recipes().size()][blocks.count()];
        Map<List<Object>, List<FieldGroup>> byKind = new LinkedHashMap<>();
        groups.forEach(
                group -> byKind.computeIfAbsent(List.of(group.recipe(), group.weight()), none -> new ArrayList<>())
                        .add(group));
        LinearProgram.Sum left = new LinearProgram.Sum();
        byKind.values().forEach(alike -> addFields(alike, than, perDm2Day, ofRecipe, left));
        addPlanters(ofRecipe);
        program.atMost(left, than.leftDm2() * ROUNDING);
        if (Double.isFinite(than.mostHarmDm2Days()) && !harm.isEmpty()) {
            program.atMost(harm, than.mostHarmDm2Days());
        }
    }

    private void addFields(
            List<FieldGroup> alike,
            FillProgram.NoWorse than,
            double perDm2Day,
            LinearProgram.Sum[][] ofRecipe,
            LinearProgram.Sum left) {
        int recipe = alike.get(0).recipe();
        double area = alike.stream().mapToDouble(FieldGroup::area).sum();
        int unplanted = program.variable(Math.min(area, than.leftDm2()));
        left.plus(1, unplanted);
        harm.plus(than.harmPerLeftDm2(), unplanted);
        leftOfRecipe.computeIfAbsent(recipe, none -> new LinearProgram.Sum()).plus(1, unplanted);
        LinearProgram.Sum byNow = new LinearProgram.Sum().plus(1, unplanted);
        LinearProgram.Sum opened = new LinearProgram.Sum();
        for (int b = 0; b < blocks.count(); b++) {
            DaySpans.Span block = blocks.get(b);
            double open = sum(alike, group -> group.opened(block.last()));
            if (open > 0) {
                int planted = program.variable(open);
                program.addCost(planted, perDm2Day * unitDm2 * block.first());
                byNow.plus(1, planted);
                opened.plus(1, planted);
                program.atMost(opened, open);
                if (ofRecipe[recipe][b] == null) {
                    ofRecipe[recipe][b] = new LinearProgram.Sum();
                }
                ofRecipe[recipe][b].plus(-1, planted);
            }
            if (Double.isFinite(than.mostHarmDm2Days())) {
                addLate(alike, block, byNow);
            }
        }
        program.atLeast(byNow, area);
    }

    private void addLate(List<FieldGroup> alike, DaySpans.Span block, LinearProgram.Sum byNow) {
        double dueFirst = sum(alike, group -> group.due(block.first()));
        double dueLast = sum(alike, group -> group.due(block.last()));
        boolean isLast = block.last() == season.days() - 1;
        int daysAsFirst = block.last() - block.first();
        if (dueFirst == dueLast) {
            addLate(alike, dueFirst, daysAsFirst + (isLast ? 0 : 1), byNow);
        } else {
            addLate(alike, dueFirst, daysAsFirst, byNow);
            addLate(alike, dueLast, isLast ? 0 : 1, byNow);
        }
    }

    private void addLate(List<FieldGroup> alike, double due, int days, LinearProgram.Sum byNow) {
        if (due > 0 && days > 0) {
            int late = program.variable(due);
            harm.plus(days * alike.get(0).weight() / WEIGHT_ONE, late);
            program.atLeast(byNow.copy().plus(1, late), due);
        }
    }

    private double sum(List<FieldGroup> alike, ToLongFunction<FieldGroup> area) {
        return alike.stream().mapToLong(area).sum();
    }

    private void addPlanters(LinearProgram.Sum[][] ofRecipe) {
        for (int k = 0; k < kinds.size(); k++) {
            for (int b = 0; b < blocks.count(); b++) {
                int[] ofBlock = new int[ofRecipe.length];
                for (int r = 0; r < ofRecipe.length; r++) {
                    double most = fillsOfDays.mostDm2(kinds.get(k), blocks.get(b), r);
                    ofBlock[r] = ofRecipe[r][b] == null || most == 0 ? -1 : program.variable(most);
                    treated[k][r][b] = ofBlock[r];
                    if (ofBlock[r] >= 0) {
                        ofRecipe[r][b].plus(1, ofBlock[r]);
                    }
                }
                fillsOfDays.addRows(program, kinds.get(k), blocks.get(b), ofBlock, perFill, unitDm2);
            }
        }
        for (LinearProgram.Sum[] ofBlocks : ofRecipe) {
            for (LinearProgram.Sum ofBlock : ofBlocks) {
                if (ofBlock != null) {
                    program.atLeast(ofBlock, 0);
                }
            }
        }
    }

    private void addSets() {
        Set<BitSet> sets = new LinkedHashSet<>();
        groups.forEach(group -> sets.add(group.planters()));
        for (BitSet set : sets) {
            if (kinds.stream().anyMatch(kind -> kind.planters().stream().noneMatch(set::get))) {
                for (int r = 0; r < season.season().recipes().size(); r++) {
                    addSet(set, r);
                }
            }
        }
    }

    private void addSet(BitSet set, int recipe) {
        double area = groups.stream()
                .filter(group -> group.recipe() == recipe && isWithin(group.planters(), set))
                .mapToDouble(FieldGroup::area)
                .sum();
        LinearProgram.Sum leftOf = leftOfRecipe.get(recipe);
        if (area == 0 || leftOf == null) {
            return;
        }
        LinearProgram.Sum sum = leftOf.copy();
        for (int k = 0; k < kinds.size(); k++) {
            for (int b = 0; b < blocks.count(); b++) {
                if (treated[k][recipe][b] >= 0
                        && kinds.get(k).planters().stream().anyMatch(set::get)) {
                    sum.plus(1, treated[k][recipe][b]);
                }
            }
        }
        program.atLeast(sum, area);
    }

    private static boolean isWithin(BitSet some, BitSet all) {
        BitSet others = (BitSet) some.clone();
        others.andNot(all);
        return others.isEmpty();
    }
}

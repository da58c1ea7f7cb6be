package freshfurrow.solver.bounds;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import java.time.temporal.ChronoUnit;

/**
 * What compost and water allow.
 *
 * <p>Proof. Compost: a load's batches are made before it is planted, out of lots that are there by then; so the compost of all that is
 * planted by the end of a day is at most what the lots weigh that are there by then, and what is in mix on board when the season
 * begins to be played out. It is enough to say so for the last day before each
 * delivery and for the season's last day. Water: where every point has a daily limit, what is planted from one day to another is mixed
 * with water drawn on these days, of which there are the limits of the days on which a rig works, or with what the rigs' nurse
 * tanks and the planters' tanks hold when the first of these days begins; on the season's first day they are empty,
 * unless it is already under way.
 */
final class Stocks {
    private static final double ROUNDING = 1 + 1e-9;
    private static final double MG_PER_KG = 1e6;

    private final CompiledSeason season;
    private final WorkingTime time;
    private final Relaxation relaxation;
    private final LargestLoads loads;

    Stocks(CompiledSeason season, WorkingTime time, Relaxation relaxation) {
        this.season = season;
        this.time = time;
        this.relaxation = relaxation;
        this.loads = new LargestLoads(season);
    }

    void addRows() {
        season.season().compost().stream()
                .mapToInt(this::day)
                .filter(day -> day > 0 && day < relaxation.days())
                .distinct()
                .forEach(day -> addCompost(day - 1));
        addCompost(relaxation.days() - 1);
        if (season.season().waterPoints().stream()
                .allMatch(point -> point.dailyLimitL().isPresent())) {
            DaySpans.of(relaxation.days()).forEach(span -> addWater(span.first(), span.last()));
        }
    }

    private int day(CompostLot lot) {
        return (int) ChronoUnit.DAYS.between(season.season().first(), lot.from());
    }

    private void addCompost(int lastDay) {
        double mostMgPerDm2 = 0;
        for (FieldGroup group : relaxation.groups()) {
            mostMgPerDm2 = Math.max(mostMgPerDm2, loads.compostMgPerDm2(group.recipe()));
        }
        LinearProgram.Sum used = new LinearProgram.Sum();
        for (int g = 0; g < relaxation.groups().size(); g++) {
            double mg = loads.compostMgPerDm2(relaxation.groups().get(g).recipe());
            if (mg > 0) {
                relaxation.addPlantedFromTo(used, mg / mostMgPerDm2, g, 0, lastDay);
            }
        }
        double thereMg = season.season().compost().stream()
                .filter(lot -> day(lot) <= lastDay)
                .mapToDouble(lot -> lot.massKg() * MG_PER_KG + 1)
                .sum();
        relaxation.addAtMost(used, (thereMg + onBoardMg()) / mostMgPerDm2 * ROUNDING);
    }

    private void addWater(int firstDay, int lastDay) {
        LinearProgram.Sum used = new LinearProgram.Sum();
        double mostLPerDm2 = 0;
        for (FieldGroup group : relaxation.groups()) {
            mostLPerDm2 = Math.max(mostLPerDm2, loads.mixLPerDm2(group.recipe()));
        }
        for (int g = 0; g < relaxation.groups().size(); g++) {
            int recipe = relaxation.groups().get(g).recipe();
            double share = season.season().rigs().stream()
                    .mapToDouble(rig -> loads.drawnShare(rig, recipe))
                    .min()
                    .orElse(0);
            relaxation.addPlantedFromTo(used, share * loads.mixLPerDm2(recipe) / mostLPerDm2, g, firstDay, lastDay);
        }
        double limitL = season.season().waterPoints().stream()
                .mapToDouble(Stocks::dailyLimitL)
                .sum();
        double litres = limitL * daysWithRig(firstDay, lastDay)
                + (firstDay == 0 && season.season().standing().isEmpty() ? 0 : tanksL());
        relaxation.addAtMost(used, litres / mostLPerDm2 * ROUNDING);
    }

    private double onBoardMg() {
        double mg = 0;
        for (int p = 0; p < season.planterCount(); p++) {
            mg += season.tankDm2(p) * loads.compostMgPerDm2(season.tankRecipe(p));
        }
        for (int r = 0; r < season.season().rigs().size(); r++) {
            mg += season.rigMixDm2(r) * loads.compostMgPerDm2(season.rigMixRecipe(r));
        }
        return mg;
    }

    private static double dailyLimitL(WaterPoint point) {
        return point.dailyLimitL().orElseThrow() + 0.001;
    }

    private double tanksL() {
        return season.season().rigs().stream().mapToDouble(Rig::nurseTankL).sum()
                + season.season().planters().stream()
                        .mapToDouble(planter -> planter.tankL() + 1)
                        .sum();
    }

    private int daysWithRig(int firstDay, int lastDay) {
        int days = 0;
        for (int day = firstDay; day <= lastDay; day++) {
            for (int r = 0; r < season.season().rigs().size(); r++) {
                if (time.rigS(r, day * WorkingTime.DAY_S, (day + 1) * WorkingTime.DAY_S) > 0) {
                    days++;
                    break;
                }
            }
        }
        return days;
    }
}

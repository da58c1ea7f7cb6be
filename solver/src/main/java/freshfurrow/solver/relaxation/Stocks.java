package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.solver.linear.LinearProgram;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What compost and water allow.
 *
 * <p>Proof. Compost: a load's batches are made before it is planted, out of lots that are there by then; so the compost of all that is
 * treated by the end of a day is at most what the lots weigh that are there by then, and what is in mix on board when the season
 * begins to be played out. It is enough to say so for the last day before each
 * delivery and for the season's last day. Water: what is treated from one day to another is mixed
 * with water drawn on these days ({@link WaterRoom}), or with what the rigs' nurse tanks hold when the first of these days begins, and the tanks of
 * planters whose loads would still be fresh; on the season's first day they are empty, unless it is already under way. A load may
 * lack ten grams of compost where it takes all that there is, so once a lot at the most; and it takes at least {@link
 * LargestLoads#LEAST_SHARE} of its water.
 */
final class Stocks {
    private static final double ROUNDING = 1 + 1e-9;
    /** The timeline counts whole mg. */
    private static final double LACKING_MG = Leeway.MOST_LACKING_MG + 1;

    private final CompiledSeason season;
    private final WaterRoom water;
    private final OvernightLoads overnight;
    private final Relaxation relaxation;
    private final LargestLoads loads;
    private final double mostLPerDm2;

    Stocks(CompiledSeason season, WorkingTime time, Relaxation relaxation) {
        this.season = season;
        water = new WaterRoom(season, time);
        overnight = new OvernightLoads(season, time);
        this.relaxation = relaxation;
        this.loads = new LargestLoads(season);
        mostLPerDm2 = relaxation.groups().stream()
                .mapToDouble(group -> loads.mixLPerDm2(group.recipe()))
                .max()
                .orElse(0);
    }

    void addRows() {
        season.season().compost().stream()
                .mapToInt(this::day)
                .filter(day -> day > 0 && day < relaxation.days())
                .distinct()
                .forEach(day -> addCompost(day - 1));
        addCompost(relaxation.days() - 1);
        for (int lastDay = 0; lastDay < relaxation.days(); lastDay++) {
            addWater(0, lastDay);
        }
        Set<DaySpans.Span> later = new LinkedHashSet<>(DaySpans.of(relaxation.days()));
        later.addAll(DaySpans.fromDay(relaxation.firstDay(), relaxation.days()));
        later.stream().filter(span -> span.first() > 0).forEach(span -> addWater(span.first(), span.last()));
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
                relaxation.addTreatedFromTo(used, loads.leastShareOfCompost() * mg / mostMgPerDm2, g, 0, lastDay);
            }
        }
        double thereMg = season.season().compost().stream()
                .filter(lot -> day(lot) <= lastDay)
                .mapToDouble(lot -> lot.massKg() * MG_PER_KG + loads.timesUsedUp() * LACKING_MG)
                .sum();
        relaxation.addAtMost(used, (thereMg + onBoardMg()) / mostMgPerDm2 * ROUNDING);
    }

    private void addWater(int firstDay, int lastDay) {
        double litres = drawnL(firstDay, lastDay)
                + (firstDay == 0 && season.season().standing().isEmpty() ? 0 : tanksL(firstDay));
        LinearProgram.Sum used = new LinearProgram.Sum();
        for (int g = 0; g < relaxation.groups().size(); g++) {
            int recipe = relaxation.groups().get(g).recipe();
            relaxation.addTreatedFromTo(
                    used, LargestLoads.LEAST_SHARE * loads.mixLPerDm2(recipe) / mostLPerDm2, g, firstDay, lastDay);
        }
        relaxation.addAtMost(used, litres / mostLPerDm2 * ROUNDING);
    }

    private double drawnL(int firstDay, int lastDay) {
        return IntStream.range(0, season.season().waterPoints().size())
                .mapToDouble(point -> water.litres(point, firstDay, lastDay))
                .sum();
    }

    private double onBoardMg() {
        double mg = 0;
        for (int p = 0; p < season.planterCount(); p++) {
            mg += season.tankDm2(p) * loads.compostMgPerDm2(season.tankRecipe(p));
        }
        for (int r = 0; r < season.season().rigs().size(); r++) {
            mg += season.rigMixDm2(r) * loads.compostMgPerDm2(season.rigMixRecipe(r));
            if (season.fetchesCompost()) {
                mg += season.rigCompostMg(r) + LACKING_MG;
            }
        }
        return mg;
    }

    /** What rigs and planters may have on board when a day begins, L. */
    private double tanksL(int day) {
        return season.season().rigs().stream().mapToDouble(Rig::nurseTankL).sum()
                + IntStream.range(0, season.planterCount())
                        .filter(planter -> overnight.mayBeKept(planter, day))
                        .mapToDouble(planter ->
                                season.season().applicators().get(planter).tankL() * (1 + Leeway.SHARE) + 1)
                        .sum();
    }
}

package freshfurrow.model.timeline;

import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.PlaceIndex;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.travel.RoadTable;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A season as arrays of whole numbers, made once and shared by any number of timelines and threads. Fields, planters, rigs,
 * water points and recipes are indices in the season's order; areas are dm2, volumes mL, masses mg, times seconds since the
 * season's first midnight, distances m.
 */
public final class CompiledSeason {
    static final double DM2_PER_HA = 1e6;
    static final double ML_PER_L = 1e3;
    static final double MG_PER_KG = 1e6;

    /** A late weight of 1, so that weights are whole numbers. */
    static final int WEIGHT_ONE = 1000;

    private final Season season;
    final int days;
    final int places;
    final String[] placeIds;
    private final RoadTable roads;

    final long[] areaDm2;
    final int[] recipeOf;
    final int[] openS;
    final int[] lastDay;
    final int[] lateWeight;
    private final boolean[][] allowed;

    final double[] mlPerDm2;
    final double[] mgPerDm2;
    final int[] holdS;
    final ClockChanges clock;

    final double[] capacityDm2PerS;
    final int[] fillSetupS;
    final int[] moveTimeS;
    final double[] planterSPerM;
    final Calendar[] planterHours;
    /** By planter and drainage class: few, so that they stay in the cache. */
    private final Calendar[][] plantable;

    private final byte[] drainageOf;
    /** The largest area whose mix the tank holds, by planter and recipe. */
    final long[][] tankDm2;

    final long[] batchMg;
    final double[] batchesPerMg;
    final int[] batchS;
    final int[] cleanS;
    final long[] drumMl;
    final long[] nurseMl;
    /** The largest area whose mix, or the water for it, the nurse tank holds, by rig and recipe. */
    final long[][] nurseDm2;

    final double[] transferSPerMl;
    final double[] rigSPerM;
    final boolean[] extractsAtWater;
    final Calendar[] rigHours;
    /** The first rig that would make the same load anew wherever it stands and whatever water it has left, by rig. */
    final int[] firstAlike;
    /** When a rig may begin to get ready for a load asked for on a day: on its last working day before, by rig and day, s. */
    final int[][] readyFromS;

    final double[] drawSPerMl;
    final int[] treatmentS;
    final int[] hoses;
    final long[] dailyLimitMl;
    final long largestDailyLimitMl;
    final Calendar[] pointHours;
    final int[] pointAt;
    /** To the nearest water point, by place, m; {@link Calendar#NEVER} when there is none. */
    final int[] metresToWater;

    final long[] lotMg;
    final int[] lotFromS;
    final String[] lotIds;

    /** What a fill, a draw and a minute of waiting weigh, minutes. */
    final double refillMin;

    final double waterTripMin;
    final double waitMinPerMin;

    final Beginning beginning;
    final Promised promised;

    public static CompiledSeason of(Season season) {
        return new CompiledSeason(season);
    }

    private CompiledSeason(Season season) {
        this.season = season;
        days = season.days();
        Calendars calendars = new Calendars(season);

        List<Field> fields = season.fields();
        List<WaterPoint> points = season.waterPoints();
        PlaceIndex index = PlaceIndex.of(season);
        placeIds = index.ids().toArray(String[]::new);
        places = placeIds.length;
        roads = RoadTable.of(index.ids(), season.distances());

        List<Recipe> recipes = season.recipes();
        mlPerDm2 = recipes.stream()
                .mapToDouble(recipe -> recipe.mixLPerHa() * ML_PER_L / DM2_PER_HA)
                .toArray();
        mgPerDm2 = recipes.stream()
                .mapToDouble(recipe -> recipe.compostKgPerHa() * MG_PER_KG / DM2_PER_HA)
                .toArray();
        clock = season.clockChanges();
        holdS = recipes.stream().mapToInt(Recipe::holdS).toArray();

        areaDm2 = fields.stream()
                .mapToLong(field -> Math.max(1, Math.round(field.areaHa() * DM2_PER_HA)))
                .toArray();
        List<String> recipeIds = recipes.stream().map(Recipe::id).toList();
        recipeOf = fields.stream()
                .mapToInt(field -> recipeIds.indexOf(field.recipe()))
                .toArray();
        openS = fields.stream()
                .mapToInt(field -> Math.max(0, day(field.window().first()) * Calendars.DAY_S))
                .toArray();
        lastDay = fields.stream().mapToInt(field -> day(field.window().last())).toArray();
        lateWeight = fields.stream()
                .mapToInt(field -> (int) Math.round(field.lateWeight() * WEIGHT_ONE))
                .toArray();

        List<Planter> planters = season.planters();
        capacityDm2PerS = planters.stream()
                .mapToDouble(planter -> planter.fieldCapacityM2PerS() * 100)
                .toArray();
        fillSetupS = planters.stream().mapToInt(Planter::fillSetupS).toArray();
        moveTimeS = planters.stream().mapToInt(Planter::moveTimeS).toArray();
        planterSPerM = planters.stream()
                .mapToDouble(planter -> 1 / planter.roadSpeedMPerS())
                .toArray();
        planterHours = planters.stream()
                .map(planter -> calendars.machine(planter.id(), planter.hours()))
                .toArray(Calendar[]::new);
        List<Drainage> drainages = List.of(Drainage.values());
        drainageOf = new byte[fields.size()];
        for (int f = 0; f < drainageOf.length; f++) {
            drainageOf[f] = (byte) drainages.indexOf(fields.get(f).drainage());
        }
        plantable = new Calendar[planters.size()][drainages.size()];
        allowed = new boolean[planters.size()][fields.size()];
        tankDm2 = new long[planters.size()][recipes.size()];
        for (int p = 0; p < planters.size(); p++) {
            for (int d = 0; d < drainages.size(); d++) {
                plantable[p][d] = calendars.planting(planterHours[p], drainages.get(d));
            }
            for (int f = 0; f < fields.size(); f++) {
                allowed[p][f] = fields.get(f).allows(planters.get(p).id());
            }
            for (int r = 0; r < recipes.size(); r++) {
                tankDm2[p][r] = areaOf(Math.round(planters.get(p).tankL() * ML_PER_L), r);
            }
        }

        List<Rig> rigs = season.rigs();
        batchMg = rigs.stream()
                .mapToLong(rig -> Math.round(rig.batchCompostKg() * MG_PER_KG))
                .toArray();
        batchesPerMg = Arrays.stream(batchMg).mapToDouble(mg -> 1.0 / mg).toArray();
        batchS = rigs.stream().mapToInt(Rig::batchTimeS).toArray();
        cleanS = rigs.stream().mapToInt(Rig::cleanTimeS).toArray();
        drumMl = rigs.stream()
                .mapToLong(rig -> Math.round(rig.drumL() * ML_PER_L))
                .toArray();
        nurseMl = rigs.stream()
                .mapToLong(rig -> Math.round(rig.nurseTankL() * ML_PER_L))
                .toArray();
        nurseDm2 = new long[rigs.size()][recipes.size()];
        for (int r = 0; r < rigs.size(); r++) {
            for (int recipe = 0; recipe < recipes.size(); recipe++) {
                nurseDm2[r][recipe] = areaOf(nurseMl[r], recipe);
            }
        }
        transferSPerMl = rigs.stream()
                .mapToDouble(rig -> 1 / (rig.transferLPerS() * ML_PER_L))
                .toArray();
        rigSPerM = rigs.stream().mapToDouble(rig -> 1 / rig.roadSpeedMPerS()).toArray();
        extractsAtWater = new boolean[rigs.size()];
        for (int r = 0; r < rigs.size(); r++) {
            extractsAtWater[r] = rigs.get(r).extractAt() == ExtractAt.WATER;
        }
        rigHours = rigs.stream()
                .map(rig -> calendars.machine(rig.id(), rig.hours()))
                .toArray(Calendar[]::new);

        readyFromS = new int[rigs.size()][days + 1];
        for (int r = 0; r < rigs.size(); r++) {
            for (int day = 0; day <= days; day++) {
                int lastWork = Math.max(0, rigHours[r].latest(day * Calendars.DAY_S, 1) - 1);
                readyFromS[r][day] = lastWork / Calendars.DAY_S * Calendars.DAY_S;
            }
        }

        drawSPerMl = points.stream()
                .mapToDouble(point -> 1 / (point.flowLPerS() * ML_PER_L))
                .toArray();
        treatmentS = points.stream().mapToInt(WaterPoint::treatmentS).toArray();
        hoses = points.stream().mapToInt(WaterPoint::hoses).toArray();
        dailyLimitMl = points.stream()
                .mapToLong(point -> point.dailyLimitL().isPresent()
                        ? Math.round(point.dailyLimitL().getAsDouble() * ML_PER_L)
                        : Long.MAX_VALUE)
                .toArray();
        long largestLimit = 0;
        for (long limit : dailyLimitMl) {
            largestLimit = Math.max(largestLimit, limit);
        }
        largestDailyLimitMl = largestLimit;
        firstAlike = new int[rigs.size()];
        for (int r = 0; r < rigs.size(); r++) {
            while (firstAlike[r] < r && !alike(firstAlike[r], r)) {
                firstAlike[r]++;
            }
        }
        pointHours = points.stream()
                .map(point -> calendars.waterPoint(point.hours()))
                .toArray(Calendar[]::new);
        pointAt =
                points.stream().mapToInt(point -> index.positionOf(point.id())).toArray();

        metresToWater = new int[places];
        for (int place = 0; place < places; place++) {
            metresToWater[place] = Calendar.NEVER;
            for (int point : pointAt) {
                metresToWater[place] = Math.min(metresToWater[place], metres(place, point));
            }
        }

        List<CompostLot> lots = season.compost().stream()
                .sorted(Comparator.comparing(CompostLot::from))
                .toList();
        lotMg = lots.stream()
                .mapToLong(lot -> Math.round(lot.massKg() * MG_PER_KG))
                .toArray();
        lotFromS = lots.stream()
                .mapToInt(lot -> Math.max(0, Math.min(days, day(lot.from()))) * Calendars.DAY_S)
                .toArray();
        lotIds = lots.stream().map(CompostLot::id).toArray(String[]::new);
        refillMin = season.goals().refillMin();
        waterTripMin = season.goals().waterTripMin();
        waitMinPerMin = season.goals().waitMinPerMin();
        beginning = new Beginning(season, index);
        promised = new Promised(season);
    }

    private boolean alike(int rig, int other) {
        return batchMg[rig] == batchMg[other]
                && batchS[rig] == batchS[other]
                && cleanS[rig] == cleanS[other]
                && transferSPerMl[rig] == transferSPerMl[other]
                && nurseMl[rig] == nurseMl[other]
                && nurseMl[rig] <= largestDailyLimitMl
                && extractsAtWater[rig] == extractsAtWater[other];
    }

    public Season season() {
        return season;
    }

    public int fieldCount() {
        return areaDm2.length;
    }

    public int planterCount() {
        return capacityDm2PerS.length;
    }

    /** Whether the planter may plant the field. */
    public boolean allows(int planter, int field) {
        return allowed[planter][field];
    }

    /** All distances by road as they are played, in whole metres, without measuring any of them again. */
    public Distances roads() {
        return roads;
    }

    /** Distance by road between two fields, m, rounded up. */
    public int metresBetweenFields(int a, int b) {
        return metres(a, b);
    }

    /** Distance by road from where a planter stands to begin with to a field, m, rounded up. */
    public int metresFromStart(int planter, int field) {
        return metres(beginning.planterPlace[planter], field);
    }

    /** Days from the season's first day to the last day of the field's window; may lie outside the season. */
    public int windowLastDay(int field) {
        return lastDay[field];
    }

    /** Days from the season's first day to the day the field's window opens, 0 or more. */
    public int windowFirstDay(int field) {
        return openS[field] / Calendars.DAY_S;
    }

    /** Index of the field's recipe. */
    public int recipeIndex(int field) {
        return recipeOf[field];
    }

    /** Days of the season. */
    public int days() {
        return days;
    }

    /** A planter's working time between two times, s. */
    public int workS(int planter, int fromS, int untilS) {
        return planterHours[planter].work(fromS, untilS);
    }

    /** A planter's working time between two times in which a field, its window apart, may be planted, s. */
    public int plantableS(int planter, int field, int fromS, int untilS) {
        return plantable(planter, field).work(fromS, untilS);
    }

    /** Whether a field was promised for the days ahead otherwise than to be begun by that planter on that day. */
    public boolean breaksPromise(int planter, int field, int day) {
        return promised.isBrokenBy(planter, field, day * Calendars.DAY_S);
    }

    /** The planter that a field was promised to for the days ahead; -1 when it was promised to none of the season. */
    public int promisedPlanter(int field) {
        return promised.planter(field);
    }

    /** Late weight of a field, thousandths. */
    public int lateWeightThousandths(int field) {
        return lateWeight[field];
    }

    /** Area of a field, dm2. */
    public long areaDm2(int field) {
        return areaDm2[field];
    }

    /**
     * The largest area that a planter can plant out of one load of a recipe, dm2: no more than its tank holds the mix for, and
     * no more than it plants in the hold time less its fill setup and the pumping at the fastest rig's rate. Batches older
     * than the transfer, moves and breaks make loads smaller.
     */
    public long largestLoadDm2(int planter, int recipe) {
        return Math.min(tankDm2[planter][recipe], RefillBound.withinHold(this, planter, recipe));
    }

    /** No load is larger, dm2: {@link #largestLoadDm2} with a tank that lets in a thousandth more where that saves a fill. */
    public long mostOfALoadDm2(int planter, int recipe) {
        return RefillBound.largestLoad(this, planter, recipe);
    }

    /** The day on which the season begins to be played out, counted from its first: 0, unless it is already under way. */
    public int beginsOnDay() {
        return beginning.nowS / Calendars.DAY_S;
    }

    /** Area for which a planter has mix in its tank to begin with, dm2; 0 for none. */
    public long tankDm2(int planter) {
        return beginning.tankDm2[planter];
    }

    /** Recipe of the mix in a planter's tank to begin with; meaningless when there is none. */
    public int tankRecipe(int planter) {
        return beginning.tankRecipe[planter];
    }

    /** When the hold time of the mix in a planter's tank is over, s since the season's first midnight. */
    public int tankDeadlineS(int planter) {
        return beginning.tankDeadlineS[planter];
    }

    /** Area for which a rig has mix to begin with, dm2; 0 for none. */
    public long rigMixDm2(int rig) {
        return beginning.mixDm2[rig];
    }

    /** Recipe of the mix that a rig has to begin with; meaningless when it has none. */
    public int rigMixRecipe(int rig) {
        return beginning.mixRecipe[rig];
    }

    /** Water that is not in a mix on board a rig to begin with, mL. */
    public long rigWaterMl(int rig) {
        return beginning.waterMl[rig];
    }

    int rigCount() {
        return batchMg.length;
    }

    int pointCount() {
        return pointAt.length;
    }

    int lotCount() {
        return lotMg.length;
    }

    /** Distance by road, m; water points and places come last. */
    int metres(int from, int to) {
        return roads.metres(from, to);
    }

    /** When a planter may plant a field, window apart. */
    Calendar plantable(int planter, int field) {
        return plantable[planter][drainageOf[field]];
    }

    /** The shortest way from one place to another by a water point, m; {@link Calendar#NEVER} when there is none. */
    int metresByWater(int from, int to) {
        int shortest = Calendar.NEVER;
        for (int point : pointAt) {
            shortest = Math.min(shortest, metres(from, point) + metres(point, to));
        }
        return shortest;
    }

    /** Finished mix for an area, mL, rounded up. */
    long mixMl(long dm2, int recipe) {
        return (long) Math.ceil(dm2 * mlPerDm2[recipe]);
    }

    /** Compost for an area, mg, rounded up. */
    long compostMg(long dm2, int recipe) {
        return (long) Math.ceil(dm2 * mgPerDm2[recipe]);
    }

    /** The largest area that a volume of mix serves, dm2. */
    long areaOf(long ml, int recipe) {
        return largestWithin(ml, mlPerDm2[recipe]);
    }

    /** The largest area that a mass of compost serves, dm2. */
    long areaOfCompost(long mg, int recipe) {
        return largestWithin(mg, mgPerDm2[recipe]);
    }

    private static long largestWithin(long amount, double perDm2) {
        if (amount >= Long.MAX_VALUE / 2) {
            return Long.MAX_VALUE / 2;
        }
        long dm2 = (long) Math.floor(amount / perDm2);
        while (dm2 > 0 && Math.ceil(dm2 * perDm2) > amount) {
            dm2--;
        }
        return dm2;
    }

    private int day(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(season.first(), date);
    }
}

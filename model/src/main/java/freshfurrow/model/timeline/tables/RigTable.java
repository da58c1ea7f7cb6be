package freshfurrow.model.timeline.tables;

import freshfurrow.model.quantity.Factors;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.calendar.MachineHours;
import java.util.Arrays;
import java.util.List;

/** Rigs: their batches, tanks, pumps, hours and roads. By index in the season's order. */
public final class RigTable {
    private final long[] batchMg;
    private final double[] batchesPerMg;
    private final int[] batchS;
    private final int[] leastBatchS;
    private final int[] cleanS;
    private final long[] drumMl;
    private final long[] nurseMl;
    /** By rig and recipe. */
    private final long[][] nurseDm2;

    private final double[] transferSPerMl;
    private final double fastestTransferSPerMl;
    private final double[] sPerM;
    private final boolean[] extractsAtWater;
    private final long[] mostCompostMg;
    private final double[] loadingSPerMg;
    private final MachineHours[] machineHours;
    private final Calendar[] hours;
    private final int[] firstAlike;

    RigTable(Season season, Calendars calendars, RecipeTable recipes, WaterTable water) {
        List<Rig> rigs = season.rigs();
        batchMg = rigs.stream().mapToLong(rig -> Scale.mg(rig.batchCompostKg())).toArray();
        batchesPerMg = Arrays.stream(batchMg).mapToDouble(mg -> 1.0 / mg).toArray();
        batchS = rigs.stream().mapToInt(Rig::batchTimeS).toArray();
        leastBatchS = rigs.stream().mapToInt(Rig::leastBatchTimeS).toArray();
        cleanS = rigs.stream().mapToInt(Rig::cleanTimeS).toArray();
        drumMl = rigs.stream().mapToLong(rig -> Scale.ml(rig.drumL())).toArray();
        nurseMl = rigs.stream().mapToLong(rig -> Scale.ml(rig.nurseTankL())).toArray();
        nurseDm2 = new long[rigs.size()][recipes.count()];
        extractsAtWater = new boolean[rigs.size()];
        for (int r = 0; r < rigs.size(); r++) {
            for (int recipe = 0; recipe < recipes.count(); recipe++) {
                nurseDm2[r][recipe] = recipes.areaOfMix(nurseMl[r], recipe);
            }
            extractsAtWater[r] = rigs.get(r).extractAt() == ExtractAt.WATER;
        }
        transferSPerMl = rigs.stream()
                .mapToDouble(rig -> 1 / (rig.transferLPerS() * Scale.ML_PER_L))
                .toArray();
        fastestTransferSPerMl = Arrays.stream(transferSPerMl).min().orElse(Double.MAX_VALUE);
        sPerM = rigs.stream().mapToDouble(rig -> 1 / rig.roadSpeedMPerS()).toArray();
        mostCompostMg =
                rigs.stream().mapToLong(rig -> Scale.mg(rig.mostCompostKg())).toArray();
        loadingSPerMg = rigs.stream()
                .mapToDouble(rig -> rig.compostLoadingMinPerKg() * Factors.MINUTE_S / Scale.MG_PER_KG)
                .toArray();
        machineHours = rigs.stream().map(calendars::machine).toArray(MachineHours[]::new);
        hours = Arrays.stream(machineHours).map(MachineHours::work).toArray(Calendar[]::new);
        firstAlike = firstAlike(water.largestDailyLimitMl());
    }

    private int[] firstAlike(long largestDailyLimitMl) {
        int[] first = new int[hours.length];
        for (int r = 0; r < first.length; r++) {
            while (first[r] < r && !alike(first[r], r, largestDailyLimitMl)) {
                first[r]++;
            }
        }
        return first;
    }

    private boolean alike(int rig, int other, long largestDailyLimitMl) {
        return batchMg[rig] == batchMg[other]
                && batchS[rig] == batchS[other]
                && leastBatchS[rig] == leastBatchS[other]
                && cleanS[rig] == cleanS[other]
                && transferSPerMl[rig] == transferSPerMl[other]
                && nurseMl[rig] == nurseMl[other]
                && nurseMl[rig] <= largestDailyLimitMl
                && extractsAtWater[rig] == extractsAtWater[other];
    }

    public int count() {
        return hours.length;
    }

    /** Compost of a full batch. */
    public long batchMg(int rig) {
        return batchMg[rig];
    }

    /** Full batches that a mass of compost makes, and the part of one. */
    public double batches(int rig, long mg) {
        return mg * batchesPerMg[rig];
    }

    /** A full batch, s. */
    public int batchS(int rig) {
        return batchS[rig];
    }

    /** No batch takes less, s. */
    public int leastBatchS(int rig) {
        return leastBatchS[rig];
    }

    /** A clean, s. */
    public int cleanS(int rig) {
        return cleanS[rig];
    }

    /** Water of a full drum. */
    public long drumMl(int rig) {
        return drumMl[rig];
    }

    /** What the nurse tank holds. */
    public long nurseMl(int rig) {
        return nurseMl[rig];
    }

    /** The largest area whose mix, or the water for it, the nurse tank holds. */
    public long nurseDm2(int rig, int recipe) {
        return nurseDm2[rig][recipe];
    }

    /** The most compost on board. */
    public long mostCompostMg(int rig) {
        return mostCompostMg[rig];
    }

    /** To load compost where it lies, at least 1, s. */
    public int loadingS(int rig, long mg) {
        return Math.max(1, (int) Math.ceil(mg * loadingSPerMg[rig]));
    }

    /** To pump a volume out, s. */
    public int pumpS(int rig, long ml) {
        return (int) Math.ceil(ml * transferSPerMl[rig]);
    }

    /** Of the rig that pumps fastest; larger than any where there is no rig. */
    double fastestTransferSPerMl() {
        return fastestTransferSPerMl;
    }

    /** s. */
    public int driveS(int rig, int metres) {
        return (int) Math.ceil(metres * sPerM[rig]);
    }

    /** The same rounded down: no way of so much, in one part or two, takes less, s. */
    public int leastDriveS(int rig, int metres) {
        return (int) (metres * sPerM[rig]);
    }

    /** Whether it makes mix at the water point, and not beside the planter. */
    public boolean extractsAtWater(int rig) {
        return extractsAtWater[rig];
    }

    /** When it works, without what its days begin and end with. */
    public Calendar hours(int rig) {
        return hours[rig];
    }

    /** The same, and when it is there. */
    public MachineHours machineHours(int rig) {
        return machineHours[rig];
    }

    /** The first rig that would make the same load anew wherever it stands and whatever water it has left, if it has the compost. */
    public int firstAlike(int rig) {
        return firstAlike[rig];
    }

    /** When it may begin to get ready for a load asked for at a time: on its last working day before, s. */
    public int readyFromS(int rig, int needS) {
        return hours[rig].lastWorkDayS(needS);
    }
}

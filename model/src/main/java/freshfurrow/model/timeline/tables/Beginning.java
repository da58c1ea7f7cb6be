package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.calendar.Calendars;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where a season begins to be played out: at its first midnight with empty tanks, or where its machines stand. By planter, rig and
 * water point, in the units of {@link Scale}.
 */
public final class Beginning {
    private static final int NEVER_FILLED = -1;
    /** Of lines: no mix has gone through them since they were flushed. */
    public static final int CLEAN = -1;

    private final Season season;
    private final PlaceTable places;

    private final int nowS;

    private final int[] planterPlace;
    private final int[] planterFreeS;
    private final int[] fillDay;
    private final long[] tankDm2;
    private final int[] tankRecipe;
    private final int[] tankDeadlineS;
    private final int[] linesRecipe;
    private final int[] linesAppliedS;

    private final int[] rigPlace;
    private final int[] rigFreeS;
    private final OptionalInt[] rigSetUpS;
    private final long[] waterMl;
    private final long[] mixDm2;
    private final int[] mixRecipe;
    private final int[] mixDeadlineS;
    private final boolean[] cleanDue;
    private final long[] compostMg;
    private final long[] drawnMl;

    Beginning(Season season, PlaceTable places) {
        this.season = season;
        this.places = places;
        int planters = season.applicators().size();
        planterPlace = new int[planters];
        planterFreeS = new int[planters];
        fillDay = new int[planters];
        tankDm2 = new long[planters];
        tankRecipe = new int[planters];
        tankDeadlineS = new int[planters];
        linesRecipe = new int[planters];
        linesAppliedS = new int[planters];
        int rigs = season.rigs().size();
        rigPlace = new int[rigs];
        rigFreeS = new int[rigs];
        rigSetUpS = new OptionalInt[rigs];
        waterMl = new long[rigs];
        mixDm2 = new long[rigs];
        mixRecipe = new int[rigs];
        mixDeadlineS = new int[rigs];
        cleanDue = new boolean[rigs];
        compostMg = new long[rigs];
        drawnMl = new long[season.waterPoints().size()];

        nowS = season.standing().map(standing -> seconds(standing.now())).orElse(0);
        Arrays.fill(planterFreeS, nowS);
        Arrays.fill(rigFreeS, nowS);
        Arrays.fill(fillDay, NEVER_FILLED);
        Arrays.fill(linesRecipe, CLEAN);
        Arrays.fill(rigSetUpS, OptionalInt.empty());
        for (int p = 0; p < planters; p++) {
            planterPlace[p] = places.positionOf(season.applicators().get(p).at());
        }
        for (int r = 0; r < rigs; r++) {
            rigPlace[r] = places.positionOf(season.rigs().get(r).at());
        }
        season.standing().ifPresent(standing -> take(standing));
        for (int p = 0; p < planters; p++) {
            int planter = p;
            season.applicators()
                    .get(p)
                    .on()
                    .ifPresent(rig -> mounted(planter, season.rigs().indexOf(season.rig(rig))));
        }
    }

    /** A machine that is mounted on a rig is where that is. */
    private void mounted(int planter, int rig) {
        planterPlace[planter] = rigPlace[rig];
        planterFreeS[planter] = rigFreeS[rig];
    }

    /** By recipe, whether a rig has mix of it to begin with. */
    boolean[] hasMadeByRecipe(int recipes) {
        boolean[] made = new boolean[recipes];
        for (int r = 0; r < mixDm2.length; r++) {
            made[mixRecipe[r]] |= mixDm2[r] > 0;
        }
        return made;
    }

    private void take(Standing standing) {
        for (int p = 0; p < planterPlace.length; p++) {
            int planter = p;
            Optional.ofNullable(
                            standing.planters().get(season.applicators().get(p).id()))
                    .ifPresent(its -> planter(planter, its));
        }
        for (int r = 0; r < rigPlace.length; r++) {
            int rig = r;
            Optional.ofNullable(standing.rigs().get(season.rigs().get(r).id())).ifPresent(its -> rig(rig, its));
        }
        for (int w = 0; w < drawnMl.length; w++) {
            String point = season.waterPoints().get(w).id();
            drawnMl[w] = Scale.ml(standing.drawnL().getOrDefault(point, 0.0));
        }
    }

    private void planter(int p, Standing.OfPlanter its) {
        planterPlace[p] = places.positionOf(its.at());
        planterFreeS[p] = Math.max(nowS, seconds(its.freeFrom()));
        fillDay[p] = its.filledOn()
                .map(date -> (int) ChronoUnit.DAYS.between(season.first(), date))
                .orElse(NEVER_FILLED);
        its.lines().ifPresent(lines -> {
            linesRecipe[p] = season.recipes().indexOf(season.recipe(lines.recipe()));
            linesAppliedS[p] = seconds(lines.applied());
        });
        its.tank().map(Standing.Tank::mix).ifPresent(mix -> {
            tankRecipe[p] = recipe(mix);
            tankDm2[p] = Scale.dm2(mix.areaHa());
            tankDeadlineS[p] = seconds(mix.deadline());
        });
    }

    private void rig(int r, Standing.OfRig its) {
        rigPlace[r] = places.positionOf(its.at());
        rigFreeS[r] = Math.max(nowS, seconds(its.freeFrom()));
        waterMl[r] = Scale.ml(its.waterL());
        cleanDue[r] = its.cleanDue();
        compostMg[r] = its.compostKg().values().stream().mapToLong(Scale::mg).sum();
        rigSetUpS[r] = its.setUpAt().stream().mapToInt(this::seconds).findFirst();
        its.mix().ifPresent(mix -> {
            mixRecipe[r] = recipe(mix);
            mixDm2[r] = Scale.dm2(mix.areaHa());
            mixDeadlineS[r] = seconds(mix.deadline());
        });
    }

    private int recipe(Mix mix) {
        return season.recipes().indexOf(season.recipe(mix.recipe()));
    }

    private int seconds(LocalDateTime time) {
        return (int) season.time().seconds(time);
    }

    /** Nothing begins before this, s. */
    public int nowS() {
        return nowS;
    }

    /** The day of that, counted from the season's first. */
    public int day() {
        return nowS / Calendars.DAY_S;
    }

    public int planterPlace(int planter) {
        return planterPlace[planter];
    }

    public int planterFreeS(int planter) {
        return planterFreeS[planter];
    }

    /** Of a planter's last fill; -1 when it has none yet. */
    public int fillDay(int planter) {
        return fillDay[planter];
    }

    /** Area of what is in a planter's tank; 0 when it is empty. */
    public long tankDm2(int planter) {
        return tankDm2[planter];
    }

    /** Meaningless when it is empty. */
    public int tankRecipe(int planter) {
        return tankRecipe[planter];
    }

    /** When the hold time of that is over. */
    public int tankDeadlineS(int planter) {
        return tankDeadlineS[planter];
    }

    /** What went through a planter's lines since they were flushed; {@link #CLEAN} when nothing has. */
    public int linesRecipe(int planter) {
        return linesRecipe[planter];
    }

    /** When that was; meaningless when nothing has. */
    public int linesAppliedS(int planter) {
        return linesAppliedS[planter];
    }

    public int rigPlace(int rig) {
        return rigPlace[rig];
    }

    public int rigFreeS(int rig) {
        return rigFreeS[rig];
    }

    /** When it was set up and not closed up since. */
    public OptionalInt rigSetUpS(int rig) {
        return rigSetUpS[rig];
    }

    /** Water on board that is in no mix. */
    public long waterMl(int rig) {
        return waterMl[rig];
    }

    /** Area of what a rig has extracted and not passed on; 0 when there is none. */
    public long mixDm2(int rig) {
        return mixDm2[rig];
    }

    /** Meaningless when there is none. */
    public int mixRecipe(int rig) {
        return mixRecipe[rig];
    }

    public int mixDeadlineS(int rig) {
        return mixDeadlineS[rig];
    }

    public boolean isCleanDue(int rig) {
        return cleanDue[rig];
    }

    /** Compost on board. */
    public long compostMg(int rig) {
        return compostMg[rig];
    }

    /** Compost on board of all rigs, mg. */
    public long compostMg() {
        return Arrays.stream(compostMg).sum();
    }

    /** Drawn on the date of now. */
    public long drawnMl(int point) {
        return drawnMl[point];
    }
}

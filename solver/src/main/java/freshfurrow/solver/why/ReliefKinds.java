package freshfurrow.solver.why;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** What could be tried to have a field planted in time, as far as it makes sense in its season. */
final class ReliefKinds {
    private static final int STEP_MIN = 5;
    private static final int LONGEST_HOLD_MORE_MIN = DAY_S / MINUTE_S;
    private static final int STEP_PERCENT = 5;
    private static final int FASTEST_BATCH_PERCENT = 90;
    /** Ten times as much. */
    private static final int MOST_WATER_PERCENT = 900;

    private static final int MOST_RIGS = 3;

    private final Season season;
    private final Season whole;
    private final List<ReliefKind> kinds = new ArrayList<>();

    /** To have the field planted with extract: the same, and more patience. */
    static List<ReliefKind> forExtract(Season season, Season whole, Applicator planter, Field field) {
        ReliefKinds all = new ReliefKinds(season, whole);
        all.kinds.addAll(of(season, whole, planter, field));
        planter.longestWaitS()
                .ifPresent(longest -> all.add(
                        (DAY_S - longest) / MINUTE_S / STEP_MIN,
                        steps -> new Relief.LongerWait(planter.id(), steps * STEP_MIN)));
        return all.kinds;
    }

    private ReliefKinds(Season season, Season whole) {
        this.season = season;
        this.whole = whole;
    }

    /**
     * All that there could be more of.
     *
     * @param season what is left of the whole one
     * @param planter the one that is to plant the field
     */
    static List<ReliefKind> of(Season season, Season whole, Applicator planter, Field field) {
        ReliefKinds all = new ReliefKinds(season, whole);
        all.compost();
        all.hours(planter);
        all.rigs();
        all.water();
        all.add(LONGEST_HOLD_MORE_MIN / STEP_MIN, steps -> new Relief.LongerHold(field.recipe(), steps * STEP_MIN));
        return all.kinds;
    }

    private void compost() {
        MassUnit unit = season.units().mass();
        double needKg = season.fields().stream()
                .mapToDouble(
                        field -> field.areaHa() * season.recipe(field.recipe()).compostKgPerHa())
                .sum();
        int most = (int) Math.ceil(unit.fromKilograms(needKg));
        double stepKg = 1 / unit.fromKilograms(1);
        LocalDate earliest =
                season.standing().map(standing -> standing.now().toLocalDate()).orElse(season.first());
        usedUp().ifPresent(lot -> add(most, steps -> new Relief.Refilled(lot, steps * stepKg)));
        for (CompostLot lot : season.compost()) {
            add(most, steps -> new Relief.MoreCompost(lot.id(), steps * stepKg));
            add(
                    (int) ChronoUnit.DAYS.between(earliest, lot.from()),
                    steps -> new Relief.CompostSooner(lot.id(), steps));
        }
    }

    /** The lot of which nothing is left that was on hand last. */
    private Optional<CompostLot> usedUp() {
        return whole.compost().stream()
                .filter(lot -> season.lot(lot.id()).isEmpty())
                .max(Comparator.comparing(CompostLot::from));
    }

    private void hours(Applicator planter) {
        add(
                LongerHours.most(planter.hours()) / STEP_MIN,
                steps -> new Relief.LongerDay(planter.id(), steps * STEP_MIN));
        int most = season.applicators().stream()
                .mapToInt(own -> LongerHours.most(own.hours()))
                .min()
                .orElse(0);
        int mostOfRigs = season.rigs().stream()
                .mapToInt(own -> LongerHours.most(own.hours()))
                .min()
                .orElse(0);
        add(Math.min(most, mostOfRigs) / STEP_MIN, steps -> new Relief.LongerDayForAll(steps * STEP_MIN));
    }

    private void rigs() {
        for (Rig rig : season.rigs()) {
            add(MOST_RIGS, steps -> new Relief.MoreRigs(rig.id(), steps));
        }
        add(FASTEST_BATCH_PERCENT / STEP_PERCENT, steps -> new Relief.FasterBatches(steps * STEP_PERCENT));
    }

    private void water() {
        add(MOST_WATER_PERCENT / STEP_PERCENT, steps -> new Relief.FasterWater(steps * STEP_PERCENT));
        add(season.rigs().size() - 1, Relief.MoreHoses::new);
        if (season.waterPoints().stream().anyMatch(point -> point.dailyLimitL().isPresent())) {
            add(MOST_WATER_PERCENT / STEP_PERCENT, steps -> new Relief.HigherDailyLimit(steps * STEP_PERCENT));
        }
    }

    private void add(int most, IntFunction<Relief> steps) {
        if (most > 0) {
            kinds.add(new ReliefKind(most, steps));
        }
    }
}

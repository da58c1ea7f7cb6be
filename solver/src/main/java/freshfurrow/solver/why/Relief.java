package freshfurrow.solver.why;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

/** More of one thing that a season is planted with, all else as it is. */
public sealed interface Relief {
    /** The season with this much more. */
    Season addedTo(Season season);

    /**
     * More compost in one lot.
     *
     * @param kg more in the lot than there is, above 0
     */
    record MoreCompost(String lot, double kg) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return changed(season, lot, own -> own.withMassKg(own.massKg() + kg));
        }
    }

    /**
     * More compost in a lot that was used up before the plan began.
     *
     * @param lot as the whole season has it
     * @param kg that come into it again, above 0
     */
    record Refilled(CompostLot lot, double kg) implements Relief {
        @Override
        public Season addedTo(Season season) {
            List<CompostLot> lots = new ArrayList<>(List.of(lot.withMassKg(kg)));
            lots.addAll(season.compost());
            return season.change().compost(lots).season();
        }
    }

    /**
     * A lot of compost that comes sooner.
     *
     * @param days by which the lot is there sooner, above 0
     */
    record CompostSooner(String lot, int days) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return changed(season, lot, own -> own.withFrom(own.from().minusDays(days)));
        }
    }

    /**
     * Longer working days of one planter, and of the rig that it is mounted on.
     *
     * @param minutes by which the planter's every day is longer, above 0
     */
    record LongerDay(String planter, int minutes) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return season.change()
                    .applicators(
                            each(season.applicators(), own -> own.id().equals(planter) ? longer(own, minutes) : own))
                    .rigs(each(
                            season.rigs(),
                            own -> season.oneWith(planter).contains(own.id()) ? longer(own, minutes) : own))
                    .season();
        }
    }

    /**
     * Longer working days of all planters and rigs.
     *
     * @param minutes by which every day of all planters and rigs is longer, above 0
     */
    record LongerDayForAll(int minutes) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return season.change()
                    .applicators(each(season.applicators(), own -> longer(own, minutes)))
                    .rigs(each(season.rigs(), own -> longer(own, minutes)))
                    .season();
        }
    }

    /**
     * Another rig or several.
     *
     * @param count rigs more that are like that one and stand where it does, above 0
     */
    record MoreRigs(String like, int count) implements Relief {
        @Override
        public Season addedTo(Season season) {
            List<Rig> rigs = new ArrayList<>(season.rigs());
            for (int i = 1; i <= count; i++) {
                rigs.add(season.rig(like).change().id(like + "+" + i).rig());
            }
            return season.change().rigs(rigs).season();
        }
    }

    /**
     * Batches that take less time, on every rig.
     *
     * @param percent of its time by which every batch is ready sooner, above 0 and below 100
     */
    record FasterBatches(int percent) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return season.change()
                    .rigs(each(season.rigs(), own -> own.change()
                            .batchTimeS(Math.max(1, (int) Math.round(own.batchTimeS() * (100 - percent) / 100.0)))
                            .rig()))
                    .season();
        }
    }

    /**
     * Water that flows faster.
     *
     * @param percent by which water flows faster at every point, above 0
     */
    record FasterWater(int percent) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return changed(season, own -> own.change()
                    .flowLPerS(own.flowLPerS() * share(percent))
                    .waterPoint());
        }
    }

    /**
     * More hoses, so that more rigs draw at once.
     *
     * @param count hoses more at every water point, above 0
     */
    record MoreHoses(int count) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return changed(
                    season, own -> own.change().hoses(own.hoses() + count).waterPoint());
        }
    }

    /**
     * More water a day where it is limited.
     *
     * @param percent by which every daily limit of water is higher, above 0
     */
    record HigherDailyLimit(int percent) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return changed(
                    season,
                    own -> own.dailyLimitL().isEmpty()
                            ? own
                            : own.change()
                                    .dailyLimitL(
                                            OptionalDouble.of(own.dailyLimitL().getAsDouble() * share(percent)))
                                    .waterPoint());
        }
    }

    /**
     * A longer hold time.
     *
     * @param minutes by which extract of the recipe stays worth applying longer, above 0
     */
    record LongerHold(String recipe, int minutes) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return season.change()
                    .recipes(each(
                            season.recipes(),
                            own -> own.id().equals(recipe) ? own.withHoldS(own.holdS() + MINUTE_S * minutes) : own))
                    .season();
        }
    }

    /**
     * A planter that waits longer for a rig before it goes on without extract.
     *
     * @param minutes longer than it does, above 0
     */
    record LongerWait(String planter, int minutes) implements Relief {
        @Override
        public Season addedTo(Season season) {
            return season.change()
                    .applicators(each(
                            season.applicators(),
                            own -> own instanceof Planter its && its.id().equals(planter) ? patient(its) : own))
                    .season();
        }

        private Planter patient(Planter its) {
            OptionalInt longest = its.longestWaitS();
            return longest.isEmpty()
                    ? its
                    : its.change()
                            .longestWaitS(OptionalInt.of(longest.getAsInt() + MINUTE_S * minutes))
                            .planter();
        }
    }

    private static double share(int percentMore) {
        return 1 + percentMore / 100.0;
    }

    private static Applicator longer(Applicator planter, int minutes) {
        return planter.withHours(LongerHours.of(planter.hours(), minutes));
    }

    private static Rig longer(Rig rig, int minutes) {
        return rig.change().hours(LongerHours.of(rig.hours(), minutes)).rig();
    }

    private static Season changed(Season season, String lot, UnaryOperator<CompostLot> change) {
        return season.change()
                .compost(each(season.compost(), own -> own.id().equals(lot) ? change.apply(own) : own))
                .season();
    }

    private static Season changed(Season season, UnaryOperator<WaterPoint> change) {
        return season.change().waterPoints(each(season.waterPoints(), change)).season();
    }

    private static <T> List<T> each(List<T> things, UnaryOperator<T> change) {
        return things.stream().map(change).toList();
    }
}

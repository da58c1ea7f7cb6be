package freshfurrow.solver.why;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** More of one thing that a season is planted with, all else as it is. */
public sealed interface Relief {
    /** The means of the season, and this much more. */
    Means addedTo(Means means);

    /**
     * More compost in one lot.
     *
     * @param kg more in the lot than there is, above 0
     */
    record MoreCompost(String lot, double kg) implements Relief {
        /** So that no whole kilogram or pound more is asked for where the timeline rounds milligrams up. */
        private static final double ROUNDING_KG = 0.001;

        @Override
        public Means addedTo(Means means) {
            return means.withCompost(each(
                    means.compost(),
                    own -> own.id().equals(lot)
                            ? new CompostLot(own.id(), own.massKg() + kg + ROUNDING_KG, own.from())
                            : own));
        }
    }

    /**
     * A lot of compost that comes sooner.
     *
     * @param days by which the lot is there sooner, above 0
     */
    record CompostSooner(String lot, int days) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withCompost(each(
                    means.compost(),
                    own -> own.id().equals(lot)
                            ? new CompostLot(own.id(), own.massKg(), own.from().minusDays(days))
                            : own));
        }
    }

    /**
     * Longer working days of one planter.
     *
     * @param minutes by which the planter's every day is longer, above 0
     */
    record LongerDay(String planter, int minutes) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withPlanters(each(
                    means.planters(),
                    own -> own.id().equals(planter) ? Copies.with(own, LongerHours.of(own.hours(), minutes)) : own));
        }
    }

    /**
     * Longer working days of all planters and rigs.
     *
     * @param minutes by which every day of all planters and rigs is longer, above 0
     */
    record LongerDayForAll(int minutes) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withPlanters(
                            each(means.planters(), own -> Copies.with(own, LongerHours.of(own.hours(), minutes))))
                    .withRigs(each(
                            means.rigs(),
                            own -> Copies.with(own, own.batchTimeS(), LongerHours.of(own.hours(), minutes))));
        }
    }

    /**
     * Another rig or several.
     *
     * @param count rigs more that are like that one and stand where it does, above 0
     */
    record MoreRigs(String like, int count) implements Relief {
        @Override
        public Means addedTo(Means means) {
            List<Rig> rigs = new ArrayList<>(means.rigs());
            means.rigs().stream().filter(rig -> rig.id().equals(like)).forEach(rig -> {
                for (int i = 1; i <= count; i++) {
                    rigs.add(rig.named(rig.id() + "+" + i));
                }
            });
            return means.withRigs(rigs);
        }
    }

    /**
     * Batches that take less time, on every rig.
     *
     * @param percent of its time by which every batch is ready sooner, above 0 and below 100
     */
    record FasterBatches(int percent) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withRigs(each(
                    means.rigs(),
                    rig -> Copies.with(
                            rig,
                            Math.max(1, (int) Math.round(rig.batchTimeS() * (100 - percent) / 100.0)),
                            rig.hours())));
        }
    }

    /**
     * Water that flows faster.
     *
     * @param percent by which water flows faster at every point, above 0
     */
    record FasterWater(int percent) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withWaterPoints(each(
                    means.waterPoints(),
                    point -> Copies.with(
                            point, point.flowLPerS() * share(percent), point.hoses(), point.dailyLimitL())));
        }
    }

    /**
     * More hoses, so that more rigs draw at once.
     *
     * @param count hoses more at every water point, above 0
     */
    record MoreHoses(int count) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withWaterPoints(each(
                    means.waterPoints(),
                    point -> Copies.with(point, point.flowLPerS(), point.hoses() + count, point.dailyLimitL())));
        }
    }

    /**
     * More water a day where it is limited.
     *
     * @param percent by which every daily limit of water is higher, above 0
     */
    record HigherDailyLimit(int percent) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withWaterPoints(each(
                    means.waterPoints(),
                    point -> Copies.with(
                            point,
                            point.flowLPerS(),
                            point.hoses(),
                            point.dailyLimitL().isPresent()
                                    ? OptionalDouble.of(point.dailyLimitL().getAsDouble() * share(percent))
                                    : OptionalDouble.empty())));
        }
    }

    /**
     * A longer hold time.
     *
     * @param minutes by which extract of the recipe stays worth applying longer, above 0
     */
    record LongerHold(String recipe, int minutes) implements Relief {
        @Override
        public Means addedTo(Means means) {
            return means.withRecipes(each(
                    means.recipes(),
                    own -> own.id().equals(recipe)
                            ? new Recipe(own.id(), own.mixLPerHa(), own.compostKgPerHa(), own.holdS() + 60 * minutes)
                            : own));
        }
    }

    private static double share(int percentMore) {
        return 1 + percentMore / 100.0;
    }

    private static <T> List<T> each(List<T> things, UnaryOperator<T> change) {
        return things.stream().map(change).toList();
    }
}

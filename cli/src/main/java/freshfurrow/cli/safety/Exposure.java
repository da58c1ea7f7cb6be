package freshfurrow.cli.safety;

import freshfurrow.cli.day.PlanIndex;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import java.util.EnumSet;
import java.util.Set;

/** What people are exposed to who do a kind of work. */
enum Exposure {
    ROAD,
    DRINKING_WATER,
    COMPOST,
    DUST_AND_MIST,
    PRESSURE,
    OLD_MIX,
    FOOD_CROP;

    /** All that some activities bring. */
    static Set<Exposure> of(Iterable<Activity> activities, PlanIndex index) {
        Set<Exposure> all = EnumSet.noneOf(Exposure.class);
        var ofOne = new OfActivity(index);
        activities.forEach(activity -> all.addAll(activity.accept(ofOne)));
        return all;
    }

    private record OfActivity(PlanIndex index) implements ActivityVisitor<Set<Exposure>> {
        @Override
        public Set<Exposure> visit(Activity.Move move) {
            return EnumSet.of(ROAD);
        }

        @Override
        public Set<Exposure> visit(Activity.Wait wait) {
            return EnumSet.noneOf(Exposure.class);
        }

        @Override
        public Set<Exposure> visit(Activity.Fill fill) {
            return EnumSet.of(PRESSURE);
        }

        @Override
        public Set<Exposure> visit(Activity.Plant plant) {
            return EnumSet.of(OLD_MIX, FOOD_CROP);
        }

        @Override
        public Set<Exposure> visit(Activity.PlantWithout planting) {
            return EnumSet.noneOf(Exposure.class);
        }

        @Override
        public Set<Exposure> visit(Activity.Flush flush) {
            return EnumSet.of(DUST_AND_MIST);
        }

        @Override
        public Set<Exposure> visit(Activity.Draw draw) {
            return EnumSet.of(DRINKING_WATER);
        }

        @Override
        public Set<Exposure> visit(Activity.LoadCompost loading) {
            return EnumSet.of(COMPOST, DUST_AND_MIST);
        }

        @Override
        public Set<Exposure> visit(Activity.Extract extract) {
            return index.batch(extract.batch()).compostKg() > 0
                    ? EnumSet.of(COMPOST, DUST_AND_MIST, OLD_MIX)
                    : EnumSet.noneOf(Exposure.class);
        }

        @Override
        public Set<Exposure> visit(Activity.Clean clean) {
            return EnumSet.of(DUST_AND_MIST);
        }

        @Override
        public Set<Exposure> visit(Activity.Transfer transfer) {
            return EnumSet.of(PRESSURE, OLD_MIX);
        }

        @Override
        public Set<Exposure> visit(Activity.Dump dump) {
            return EnumSet.of(PRESSURE);
        }

        @Override
        public Set<Exposure> visit(Activity.SetUp setUp) {
            return EnumSet.noneOf(Exposure.class);
        }

        @Override
        public Set<Exposure> visit(Activity.CloseUp closeUp) {
            return EnumSet.of(DUST_AND_MIST);
        }
    }
}

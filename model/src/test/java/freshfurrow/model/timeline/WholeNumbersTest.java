package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.WorkedSeason.day;
import static freshfurrow.model.timeline.WorkedSeason.hours;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.WorkHours;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * Random seasons of whole numbers, in which things end on the very second, kilogram and litre at which others begin: what is right
 * up to a unit shows here. {@link WorkedSeason#plan} audits them.
 */
class WholeNumbersTest {
    private static final List<String> HOURS = List.of(
            "07:00/19:00",
            "07:00/12:00 12:30/19:00",
            "07:00/08:36:40 08:40/12:00",
            "06:00/20:00",
            "00:00/12:00 13:00/24:00",
            "07:00/08:56:40");

    @Property(tries = 300)
    void aSeasonOfWholeNumbersHolds(@ForAll long seed) {
        WorkedPlan plan = plan(new Random(seed));

        assertThat(plan.plan().loads())
                .allSatisfy(load -> assertThat(load.litres()).isPositive());
        assertThat(plan.plan().score().hard()).isZero();
    }

    /** 19.99 kg make a mix for 1.999 ha, of which two loads of 200 L, for 1 ha each, are taken. */
    @Test
    void theLastLoadOfAMixMayBeAThousandthMoreThanIsLeft() {
        assertThat(plan(new Random(27_775)).plan().score().hard()).isZero();
    }

    private static WorkedPlan plan(Random random) {
        WorkedSeason season = new WorkedSeason()
                .days(2 + random.nextInt(4))
                .hold(oneOf(random, 1500, 3050, 5800, 18_000, 90_000))
                .recipe("strong", 100, 20, oneOf(random, 3600, 18_000, 43_200));
        int planters = 1 + random.nextInt(3);
        for (int i = 1; i <= planters; i++) {
            String span = HOURS.get(random.nextInt(HOURS.size()));
            double tank = oneOf(random, 200, 400, 700, 1000, 2000);
            season.planter("P" + i, planter -> planter.tank(tank).hours(span.split(" ", -1)));
        }
        int rigs = 1 + random.nextInt(3);
        for (int i = 1; i <= rigs; i++) {
            String span = HOURS.get(random.nextInt(HOURS.size()));
            double batchKg = oneOf(random, 5, 10, 20, 50);
            double nurse = oneOf(random, 300, 1000, 2000);
            boolean atTheWater = random.nextBoolean();
            season.rig("R" + i, rig -> (atTheWater ? rig.atTheWater() : rig)
                    .batchCompost(batchKg)
                    .nurseTank(nurse)
                    .hours(span.split(" ", -1)));
        }
        season.waterPoint(
                "well",
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(oneOf(random, 300, 1000, 2500)),
                random.nextBoolean() ? WorkHours.ALWAYS : hours("07:00/18:00"),
                oneOf(random, 0, 300));
        if (random.nextBoolean()) {
            season.waterPoint("pond", OptionalDouble.empty(), WorkHours.ALWAYS, 0)
                    .road("pond", "F1", 6000);
        }
        if (random.nextBoolean()) {
            season.lots(
                    new CompostLot("old", oneOf(random, 20, 50, 100), day(1)),
                    new CompostLot("new", oneOf(random, 20, 100, 1000), day(1 + random.nextInt(3))));
        }
        if (random.nextBoolean()) {
            season.rain(1 + random.nextInt(2), oneOf(random, 0, 1) == 0 ? "08:20" : "00:00", oneOf(random, 5, 10, 20));
        }
        StringBuilder[] lists = new StringBuilder[planters];
        for (int p = 0; p < planters; p++) {
            lists[p] = new StringBuilder();
        }
        int fields = 1 + random.nextInt(10);
        for (int i = 1; i <= fields; i++) {
            int opens = 1 + random.nextInt(2);
            String recipe = oneOf(random, 0, 0, 1) == 0 ? "standard" : "strong";
            Drainage drainage = random.nextBoolean() ? Drainage.WELL : Drainage.MODERATE;
            season.field(
                    "F" + i,
                    oneOf(random, 1, 2, 5, 10) * oneOf(random, 1, 1, 2) / 2.0,
                    field -> field.recipe(recipe).drainage(drainage).window(opens, opens));
            StringBuilder list = lists[random.nextInt(planters)];
            list.append(list.isEmpty() ? "" : " ").append("F").append(i);
        }
        return season.plan(List.of(lists).stream().map(StringBuilder::toString).toArray(String[]::new));
    }

    private static int oneOf(Random random, int... values) {
        return values[random.nextInt(values.length)];
    }
}

package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Sprayer;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.Swath;
import freshfurrow.model.season.Work;
import freshfurrow.model.season.WorkHours;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.example.RandomPlans;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where rigs do not come to fields, or bring to them what works there, no bound may count otherwise. */
class RigsAndFieldsTest {
    private static final int DAYS = 10;
    private static final double FAR_M = 36_000;

    /**
     * A planter takes its load where it stands, and drives on with it: no rig comes to the field that it plants then. Each day the planter takes a load by the well, plants a field there and one that is 10 h from it for a rig and 2 h for the planter. So the rig, which
     * works 2 h a day, never leaves the well.
     */
    @Test
    void aRigNeedNotComeToEachField() {
        TwoFieldsADay fields = new TwoFieldsADay(1);
        IntStream.range(0, 2 * DAYS).forEach(i -> fields.field(0, DAYS - 1, 1));

        inOrderNothingIsLateNorProvenToBe(nearAndFar(fields.season(DAYS)));
    }

    /** A boom on a rig sprays two fields a day, each out of a load of its own: it comes to them with the rig, and takes no time to move. */
    @Test
    void whatIsMountedOnARigTakesNoTimeToMove() {
        TwoFieldsADay fields = new TwoFieldsADay(1);
        IntStream.range(0, 2 * DAYS).forEach(i -> fields.field(0, i / 2, 1));

        inOrderNothingIsLateNorProvenToBe(sprayed(fields.season(DAYS)));
    }

    /** A load of 4.004 ha may lack a thousandth of its 400.4 L: 400 L that are on board are enough, and nobody draws. */
    @Test
    void waterOnBoardServesAThousandthMore() {
        Season season = new TwoFieldsADay(1)
                .aThousandthLarger()
                .field(0, 1, 1)
                .field(0, 1, 1)
                .season(2);
        LocalDateTime now = season.first().atTime(6, 0);
        Standing.OfRig rig = new Standing.OfRig("yard", now, 400, Optional.empty(), false);
        CompiledSeason underWay = CompiledSeason.of(season.change()
                .standing(Optional.of(new Standing(now, Map.of(), Map.of("R0", rig), Map.of(), Map.of(), 0, 0)))
                .season());
        Plan plan = RandomPlans.record(underWay, List.of(List.of("F0", "F1")));

        assertThat(plan.totals().unservedHa()).isZero();
        assertThat(plan.totals().waterTrips()).isZero();
        assertThat(SeasonBounds.of(underWay).forPlan(plan).waterTrips()).isZero();
    }

    private static Season sprayed(Season season) {
        WorkHours hours = new WorkHours(List.of(new DaySpan(8 * 3600, 8 * 3600 + 4_650)));
        Sprayer boom = new Sprayer(
                        "P0", new Swath.Boom(10, 2, 0.5), 200, 0.1, 5, 60, 2_080, 0, "yard", hours, WorkHours.ALWAYS)
                .change()
                .on(Optional.of("R0"))
                .sprayer();
        return season.change()
                .applicators(List.of(boom))
                .rigs(season.rigs().stream()
                        .map(rig -> rig.change().nurseTankL(200).hours(hours).rig())
                        .toList())
                .fields(season.fields().stream()
                        .map(field -> field.change().work(Work.SPRAY).field())
                        .toList())
                .season();
    }

    private static Season nearAndFar(Season season) {
        int planted = 8 * 3600 + 160 + 2_000 + 7_200 + 2_000;
        WorkHours planters = new WorkHours(List.of(new DaySpan(6 * 3600, planted)));
        WorkHours rigs = new WorkHours(List.of(new DaySpan(7 * 3600, 9 * 3600)));
        return season.change()
                .applicators(season.applicators().stream()
                        .<Applicator>map(planter ->
                                ((Planter) planter).change().hours(planters).planter())
                        .toList())
                .recipes(List.of(new Recipe("standard", 100, 2, 6 * 3600, OptionalInt.of(0))))
                .rigs(season.rigs().stream()
                        .map(rig -> rig.change()
                                .at("well")
                                .nurseTankL(400)
                                .roadSpeedMPerS(1)
                                .hours(rigs)
                                .rig())
                        .toList())
                .distances((from, to) -> isFar(from) == isFar(to) ? 0 : FAR_M)
                .season();
    }

    private static boolean isFar(String place) {
        return place.equals("yard") || (place.startsWith("F") && Integer.parseInt(place.substring(1)) % 2 == 1);
    }

    private static void inOrderNothingIsLateNorProvenToBe(Season twoFieldsADay) {
        CompiledSeason season = CompiledSeason.of(twoFieldsADay);
        Plan plan = RandomPlans.record(
                season,
                List.of(IntStream.range(0, 2 * DAYS).mapToObj(i -> "F" + i).toList()));

        assertThat(plan.score().medium()).isZero();
        assertThat(SeasonBounds.of(season).forPlan(plan).medium()).isZero();
    }
}

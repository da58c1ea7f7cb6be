package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What no crew is told to do, in seasons at random. */
class CrewDaysTest {
    /** But letting out what is left at the season's end, when no hours are left for it. */
    @Property(tries = 200)
    void nothingTakesNoTime(@ForAll long seed) {
        assertThat(activities(plan(seed)).filter(activity -> !(activity instanceof Activity.Dump)))
                .allSatisfy(activity -> assertThat(activity.end()).isAfter(activity.start()));
    }

    @Property(tries = 200)
    void noBatchIsOfLessThanAGram(@ForAll long seed) {
        assertThat(plan(seed).batches())
                .allSatisfy(batch -> assertThat(batch.compostKg()).isGreaterThanOrEqualTo(0.001));
    }

    /** Before a break, that is; what is left of a load or a field is planted however little it is. */
    @Property(tries = 200)
    void noPieceIsBegunForLessThanAHundredSquareMetres(@ForAll long seed) {
        plan(seed).planters().values().forEach(planter -> {
            List<Activity.Plant> pieces = planter.activities().stream()
                    .filter(Activity.Plant.class::isInstance)
                    .map(Activity.Plant.class::cast)
                    .toList();
            for (int i = 1; i < pieces.size(); i++) {
                Activity.Plant piece = pieces.get(i - 1);
                Activity.Plant next = pieces.get(i);
                if (piece.load().equals(next.load()) && piece.field().equals(next.field())) {
                    assertThat(piece.areaHa()).isGreaterThanOrEqualTo(0.01);
                }
            }
        });
    }

    @Example
    void aBreakInAFewSecondsIsWaitedFor() {
        noPieceIsBegunForLessThanAHundredSquareMetres(-84);
    }

    @Example
    void aLoadEndsWithAFieldRatherThanAFewSquareMetresIntoTheNext() {
        assertThat(activities(plan(-23))
                        .filter(Activity.Plant.class::isInstance)
                        .map(Activity.Plant.class::cast))
                .allSatisfy(plant -> assertThat(plant.areaHa()).isGreaterThanOrEqualTo(0.01));
    }

    private static Plan plan(long seed) {
        Season season = RandomSeasons.season(seed);
        List<List<String>> lists = RandomSeasons.lists(season, seed);
        return PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, lists),
                new Plan.SeasonSource(season.name(), "season.yaml", "00", DisplayUnits.METRIC));
    }

    private static Stream<Activity> activities(Plan plan) {
        return Stream.concat(
                plan.planters().values().stream().flatMap(planter -> planter.activities().stream()),
                plan.rigs().values().stream().flatMap(rig -> rig.activities().stream()));
    }
}

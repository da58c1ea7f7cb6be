package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What no crew is told to do by a plan of a whole season. */
public final class CrewDays {
    private final Season season;
    private final Plan plan;

    public CrewDays(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
    }

    public void areSound() {
        nothingTakesNoTime();
        noBatchIsTooSmallOrTooShort();
        noPieceIsBegunForLessThanAHundredSquareMetres();
        noLoadEndsInsideItsReserve();
        rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
    }

    /** But letting out what is left at the season's end, when no hours are left for it. */
    void nothingTakesNoTime() {
        Stream<Activity> activities = Stream.concat(
                plan.planters().values().stream().flatMap(planter -> planter.activities().stream()),
                plan.rigs().values().stream().flatMap(rig -> rig.activities().stream()));
        assertThat(activities.filter(activity -> !(activity instanceof Activity.Dump)))
                .allSatisfy(activity -> assertThat(activity.end()).isAfter(activity.start()));
    }

    void noBatchIsTooSmallOrTooShort() {
        Map<String, Rig> rigs = season.rigs().stream().collect(Collectors.toMap(Rig::id, Function.identity()));
        assertThat(plan.batches()).allSatisfy(batch -> {
            assertThat(batch.compostKg()).isGreaterThanOrEqualTo(0.001);
            assertThat(Duration.between(batch.start(), batch.end()).toSeconds())
                    .isGreaterThanOrEqualTo(rigs.get(batch.rig()).leastBatchTimeS());
        });
    }

    /** Before a break, that is; what is left of a load or a field is planted however little it is. */
    void noPieceIsBegunForLessThanAHundredSquareMetres() {
        plan.planters().values().forEach(planter -> {
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

    void noLoadEndsInsideItsReserve() {
        Map<String, Recipe> recipes =
                season.recipes().stream().collect(Collectors.toMap(Recipe::id, Function.identity()));
        assertThat(plan.loads()).allSatisfy(load -> {
            assertThat(load.intoReserve()).isFalse();
            assertThat(plan.margin(load).toSeconds())
                    .isGreaterThanOrEqualTo(recipes.get(load.recipe()).reserveS());
        });
    }

    /**
     * A day on which a rig is out and does nothing for a load is the one before the next on which it does, and all of that, in one piece from
     * its first hour on, would not be done in time.
     */
    void rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise() {
        new DaysBefore(season, plan).areNeeded();
    }
}

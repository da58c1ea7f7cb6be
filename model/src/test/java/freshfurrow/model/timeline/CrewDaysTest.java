package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What no crew is told to do, in seasons at random. */
class CrewDaysTest {
    @Property(tries = 200)
    void nothingTakesNoTime(@ForAll long seed) {
        days(seed).nothingTakesNoTime();
    }

    @Property(tries = 200)
    void noBatchIsTooSmallOrTooShort(@ForAll long seed) {
        days(seed).noBatchIsTooSmallOrTooShort();
    }

    @Property(tries = 200)
    void noPieceIsBegunForLessThanAHundredSquareMetres(@ForAll long seed) {
        days(seed).noPieceIsBegunForLessThanAHundredSquareMetres();
    }

    @Property(tries = 200)
    void noLoadEndsInsideItsReserve(@ForAll long seed) {
        days(seed).noLoadEndsInsideItsReserve();
    }

    @Property(tries = 200)
    void rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise(@ForAll long seed) {
        days(seed).rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
    }

    @Example
    void aBreakInAFewSecondsIsWaitedFor() {
        noPieceIsBegunForLessThanAHundredSquareMetres(-84);
    }

    @Example
    void aLoadEndsWithAFieldRatherThanAFewSquareMetresIntoTheNext() {
        assertThat(plan(RandomSeasons.season(-23), -23).planters().values().stream()
                        .flatMap(planter -> planter.activities().stream())
                        .filter(Activity.Plant.class::isInstance)
                        .map(Activity.Plant.class::cast))
                .allSatisfy(plant -> assertThat(plant.areaHa()).isGreaterThanOrEqualTo(0.01));
    }

    /** A rig that waits at a lot for its first day takes no more there than one that comes on that day. */
    @Example
    void noRigComesTheDayBeforeForMoreCompost() {
        days(1307274013L).rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
    }

    /** In the evening another water point is the sooner one than in the morning, and nearer to the field, so that mix from it is fresher. */
    @Example
    void noRigComesTheDayBeforeForTheSakeOfAnotherWaterPoint() {
        days(-722957602).rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
        days(846759684).rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
    }

    /** Found by a load that was put off until all of its batches could be made after the night, and meets the break at noon. */
    @Example
    void noRigComesTheDayBeforeForALoadThatIsPutOffBehindABreak() {
        days(-1280712381).rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
    }

    /** It fetched compost on that day, or the day before that, in a field that rain closes on the day of the load. */
    @Example
    void aRigComesTheDayBeforeForCompostThatItDoesNotGetOnTheDay() {
        days(592390437).rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
        days(1321700599).rigsComeOutTheDayBeforeOnlyWhereTheyWouldComeTooLateOtherwise();
    }

    private static CrewDays days(long seed) {
        Season season = RandomSeasons.season(seed);
        return new CrewDays(season, plan(season, seed));
    }

    private static Plan plan(Season season, long seed) {
        return PlanRecorder.record(
                CompiledSeason.of(season),
                RandomSeasons.orders(season, RandomSeasons.lists(season, seed)),
                new Plan.SeasonSource(season.name(), "season.yaml", "00", DisplayUnits.METRIC));
    }
}

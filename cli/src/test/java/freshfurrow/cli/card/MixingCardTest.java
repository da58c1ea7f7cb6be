package freshfurrow.cli.card;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.season.LoadRoom;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.mixing.LabCount;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class MixingCardTest {
    private static final Season SEASON = ExampleSeason.season();

    private static MixingOrder order(double areaHa, Optional<LocalTime> start, Optional<LabCount> count) {
        return new MixingOrder(0, 0, 0, areaHa, "as asked for", OptionalDouble.of(5), start, count);
    }

    private static String card(MixingOrder order) {
        return String.join("\n", MixingCard.lines(SEASON, order, new LoadRoom(SEASON, 0, 0, 0)));
    }

    private static List<String> whyNot(Season season, double areaHa) {
        return MixingCard.whyNot(
                season, order(areaHa, Optional.empty(), Optional.empty()), new LoadRoom(season, 0, 0, 0));
    }

    @Test
    void aLoadIsToldWithItsArithmetic() {
        // 9 ha x 2 kg/ha = 18 kg: a batch of 16 kg in 900 s, one of 2 kg in 112.5 s, rounded up to 113 s.
        // 360 s + 1800 L / 2.5 L/s = 1080 s; 9 ha / 7.2 ha/h = 4500 s. Old 900 s + 5 h after 22:00:00.
        assertThat(card(order(9, Optional.of(LocalTime.of(22, 0)), Optional.empty())))
                .startsWith("""
                        MIXING CARD   season example
                        Recipe standard: 200 L/ha of mix, 2 kg/ha of compost, hold time 5 h
                        Rig R1: drum 150 L, full batch 16 kg in 15 min, cleaning 3 min. Planter P1: tank 2,000 L

                        Can this rig make it? Yes: its concentrate is at least as strong as the mix, so it can be diluted
                          Concentrate  0.1067 kg/L  = 16 kg / 150 L
                          Mix          0.01 kg/L    = 2 kg/ha / 200 L/ha

                        One load for 9 ha (as asked for)
                          Mix            1,800 L               = 9 ha x 200 L/ha
                          Compost        18 kg                 = 9 ha x 2 kg/ha
                          Batches        2                     = 18 kg / 16 kg, rounded up
                          Buckets        3 full and 3 kg more  (5 kg a bucket)
                          Concentrate    168.8 L               = 18 kg x 150 L / 16 kg
                          Make-up water  1,631 L               = 1,800 L - 168.8 L
                          Dilution       1 to 9.667            1 part concentrate to 9.667 parts water (168.8 L + 1,631 L)
                          Extracting     19 min 54 s           = 1 x (8 min 27 s + 3 min of cleaning) + 8 min 27 s; then 3 min of cleaning
                          Filling        18 min                = 6 min setup + 1,800 L / 150 L/min
                          Planting       1 h 15 min            = 9 ha / 7.2 ha/h

                        Batches
                          No.  From      To        Compost  Buckets               Drum water
                          1    22:00     22:08:27  9 kg     1 full and 4 kg more  84.38 L
                          2    22:11:27  22:19:54  9 kg     1 full and 4 kg more  84.38 L

                        Clock, first batch at 22:00
                          First batch done  22:08:27           = 22:00 + 8 min 27 s
                          Last batch done   22:19:54           = 22:00 + 19 min 54 s
                          In the tank       22:37:54           = 22:19:54 + 18 min
                          Planted           23:52:54           = 22:37:54 + 1 h 15 min
                          USE BY            03:08:27 next day  = 22:08:27 + 5 h of hold time, which runs from the end of the first batch
                        """)
                .contains("air gap", "23 kg is the recommended limit", "microbes", "Food crops")
                .endsWith(
                        "Local codes, manufacturers' manuals and licensed professionals come first. See docs/safety.md.")
                .doesNotContain("Organisms");
    }

    @Test
    void withoutAStartTheClockRunsFromTheFirstBatch() {
        assertThat(card(order(9, Optional.empty(), Optional.empty())))
                .contains("Clock, from the start of the first batch", "USE BY            + 5 h 8 min 27 s");
    }

    @Test
    void aLoadThatIsTooLargeForAgeTankAndRigIsRefusedWithTheLargest() {
        // 80 kg: 5 x 900 s + 4 x 180 s = 5220 s; 360 s + 8000 L / 2.5 L/s = 3560 s; 20,000 s. 28,780 s less 18,900 s.
        // The largest: 2000 L / 200 L/ha = 10 ha, in the ground well within 5 h.
        assertThat(whyNot(SEASON, 40))
                .containsExactly(
                        "Does not fit: a load for 40 ha is 8,000 L of mix, but P1's tank holds 2,000 L; make 4 loads, each for 10 ha or less",
                        "Does not fit: a load for 40 ha is 8,000 L of mix, but R1's nurse tank holds 3,000 L; make 4 loads, each for 10 ha or less",
                        "Takes too long: the last of a load for 40 ha would be in the ground 2 h 44 min 40 s after its use-by time; make 4 loads, each for 10 ha or less");
    }

    @Test
    void theLargestLoadIsNotTooLarge() {
        assertThat(whyNot(SEASON, new LoadRoom(SEASON, 0, 0, 0).largestHa())).isEmpty();
    }

    @Test
    void aCountIsFollowedIntoTheFurrow() {
        // 2 kg/ha x 1000 g x 4e8 = 8e11 a hectare; / 200 L = 4e9; / 10,000 m2 = 8e7
        assertThat(card(order(9, Optional.empty(), Optional.of(new LabCount(5e8, 0.8)))))
                .contains(
                        "Delivered         4.00e8 a gram  = 5.00e8 a gram x 0.8",
                        "Per ha            8.00e11        = 2 kg/ha x 1,000 g/kg x 4.00e8 a gram",
                        "Per litre of mix  4.00e9         = 8.00e11 / 200 L/ha",
                        "Per square metre  8.00e7         = 8.00e11 / 10,000 m2");
    }

    @Test
    void aFullBucketIsAskedForAndNotAssumed() {
        MixingOrder weighed = order(9, Optional.empty(), Optional.empty());
        MixingOrder unweighed = new MixingOrder(
                0, 0, 0, 9, weighed.areaFrom(), OptionalDouble.empty(), weighed.start(), weighed.count());

        assertThat(card(unweighed).replaceAll(" +", " "))
                .contains(
                        "Buckets not known (weigh a full one, take off the empty one, and give the rest with --bucket or as"
                                + " the rig's `bucket`)",
                        "No. From To Compost Drum water",
                        "Weigh a full bucket before you lift by the bucket")
                .doesNotContain("3 full", "a bucket)");
    }

    @Test
    void aRecipeStrongerThanTheDrumIsRefusedWithWhatWouldHelp() {
        // 16 kg / 150 L = 0.1067 kg/L; 30 kg/ha / 200 L/ha = 0.15; 150 L x 0.15 = 22.5 kg; 16 kg / 0.15 = 106.7 L
        Season strong = withRecipe(WithDefaults.recipe("standard", 200, 30, 18_000));

        assertThat(whyNot(strong, 9))
                .containsExactly(
                        "R1 cannot make standard: its concentrate has 16 kg / 150 L = 0.1067 kg/L, but the mix needs 30 kg/ha"
                                + " / 200 L/ha = 0.15 kg/L; put at least 22.5 kg of compost in a batch, or at most 106.7 L of water"
                                + " in the drum");
        assertThat(whyNot(SEASON, 9)).isEmpty();
    }

    private static Season withRecipe(Recipe recipe) {
        return SEASON.change().recipes(List.of(recipe)).season();
    }
}

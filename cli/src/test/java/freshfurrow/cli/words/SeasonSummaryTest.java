package freshfurrow.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.season.CheckedSeason;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class SeasonSummaryTest {
    @Test
    void aSeasonIsSummedUpBeforeItIsPlanned() {
        // Days: 14 ha at 72 ha a day. The tank of 2,000 L lasts for 10 ha at 200 L/ha.
        assertThat(String.join("\n", SeasonSummary.lines(CheckedSeason.of(ExampleSeason.season()))))
                .isEqualTo("""
                        Season example, Mon 2027-04-19 to Sun 2027-04-25

                        Crop     Fields      Area  Compost    Water  Days needed  Days available  Windows
                        corn          1   8.00 ha    16 kg  1,600 L          0.1               6  Mon 2027-04-19 to Sun 2027-04-25
                        soybean       2   6.00 ha    12 kg  1,200 L          0.1               4  Mon 2027-04-19 to Thu 2027-04-22
                        all           3  14.00 ha    28 kg  2,800 L          0.2               6  Mon 2027-04-19 to Sun 2027-04-25

                        Planters
                          P1: field capacity 7.20 ha/h, 10 h 00 min a day: 72.00 ha a day

                        Largest load that the tank and the hold time allow
                          P1 with standard: 2,000 L for 10.00 ha, tank full, hold time 5 h 00 min

                        Compost
                          By Tue 2027-04-20: 8 kg needed for fields whose windows close by then, 20 kg on hand
                          Whole season: 28 kg needed, 26 kg on hand

                        Rigs, loaded with a full nurse tank and the compost for one batch
                          R1: 3,000 kg of water + 16 kg of compost = 3,016 kg, payload 3,500 kg
                          Not counted: tanks, drum, pump, hoses, fuel and people.
                          R1: to count its compost in buckets, weigh a full one, take off the empty one, and give the rest as its `bucket`.

                        Taken where the season file says nothing (see docs/season-file.md)
                          R1: no batch takes less than 5 min (`leastBatchTime`)
                          P1: no fill of less than 10 % of the tank, but to finish something (`leastFill`)
                          Setting rigs up and closing them up takes no time (`setUp`, `closeUp`)
                          Planters are not flushed (`flush`)
                          Hooking up for a draw takes no time (`hookUp`)
                          A day on which less than 1.00 ha of a larger field is planted weighs as much as 45 min of work (`scrap`, `leastPiece`)
                          A day on which a machine comes out for no load weighs as much as 60 min of work (`callOut`)

                        Cautions
                          Compost is 2 kg short.
                          R1: that leaves 484 kg of payload for tanks, drum, pump, fuel and people. Weigh the loaded rig before it goes on the road.

                        Days needed: area / (effective field capacity x hours a day), all planters at work. Fills, driving, waiting
                        and rain are not included here; `plan` works them in.
                        Safety: Local codes, manufacturers' manuals and licensed professionals come first. See docs/safety.md.""");
    }

    @Test
    void whatIsTakenForARecipeAndARigIsToldToTheSecond() {
        Season season = ExampleSeason.season();
        Rig quick = season.rigs().get(0).change().batchTimeS(600).rig();
        Recipe silent = new Recipe("silent", 200, 2, 18_000, OptionalInt.empty());

        assertThat(SeasonSummary.lines(CheckedSeason.of(season.change()
                        .rigs(List.of(quick))
                        .recipes(List.of(season.recipes().get(0), silent))
                        .season())))
                .contains(
                        "  silent: loads are planned 30 min short of their use-by time (`reserve`)",
                        "  R1: no batch takes less than 3 min 20 s (`leastBatchTime`)");
    }

    /** Ten batches of 16 kg, and 16 kg at 0.1 min/kg. */
    @Test
    void whatIsTakenForCompostThatIsFetchedIsTold() {
        Season season = ExampleSeason.season();

        assertThat(SeasonSummary.lines(CheckedSeason.of(season.change()
                        .compost(season.compost().stream()
                                .map(lot -> lot.withAt(Optional.of("yard")))
                                .toList())
                        .season())))
                .contains(
                        "Rigs, loaded with a full nurse tank and all the compost that they hold",
                        "  R1: 3,000 kg of water + 160 kg of compost = 3,160 kg, payload 3,500 kg",
                        "  R1: has no more than 160 kg of compost on board (`compostLoad`)",
                        "  R1: to load that of one full batch, 16 kg, takes 1 min 36 s (`compostLoading`)",
                        "  A compost trip weighs as much as 20 min of work (`compostTrip`)");
    }

    @Test
    void noBucketIsAskedForWhereOneWasWeighed() {
        Season season = ExampleSeason.season();
        Rig weighed =
                season.rigs().get(0).change().bucketKg(OptionalDouble.of(11)).rig();

        assertThat(SeasonSummary.lines(
                        CheckedSeason.of(season.change().rigs(List.of(weighed)).season())))
                .noneMatch(line -> line.contains("bucket"));
    }

    @Test
    void aNightInWhichClocksGoBackIsToldOf() {
        LocalDate saturday = LocalDate.of(2027, 11, 6);
        assertThat(SeasonSummary.lines(CheckedSeason.of(ExampleSeason.season()
                                .change()
                                .timezone(ZoneId.of("America/Chicago"))
                                .first(saturday)
                                .last(saturday.plusDays(2))
                                .season()))
                        .stream()
                        .map(String::strip)
                        .collect(Collectors.joining(" ")))
                .contains(
                        "Clocks go back on Sun 2027-11-07 at 02:00, to 01:00: use-by times after that are in the new time."
                                + " Check the time twice.");
    }
}
